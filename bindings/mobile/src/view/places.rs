//! Where a point is among those of its bay, as on the bay's photo.

use crate::Picture;
use baywalk_domain::ids::PointId;
use baywalk_domain::rig::{Book, Pin};
use baywalk_domain::walk::WalkState;
use baywalk_shapes::places::{Spot, places as draw};

/// The places of a bay's points, the one of a point large; none where it has no pin.
pub(super) fn places((book, walk): (&Book, Option<&WalkState>), point: &str) -> Option<Picture> {
    let here: PointId = point.parse().ok()?;
    let bay = book.bay_of(book.point(here)?)?;
    let photo = book.bay_photo(bay)?;
    let done = |id| {
        let record = walk.and_then(|walk| walk.point(id));
        record.is_some_and(|record| record.is_done())
    };
    let spot = |pin: Pin| Spot {
        across: pin.across(),
        down: pin.down(),
        done: done(pin.point()),
    };
    let points = book.points_of(bay);
    let others = points.iter().filter(|point| point.id != here);
    let others: Vec<Spot> = others
        .filter_map(|point| photo.pin(point.id))
        .map(spot)
        .collect();
    Some(draw(&others, spot(photo.pin(here)?)).into())
}
