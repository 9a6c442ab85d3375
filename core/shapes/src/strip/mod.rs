//! The strip: the rig from the side, nose left, its bays at their stations.
//!
//! A motorhome and a trailer are drawn by the same function. The viewer stands at the left of the
//! rig, so bays that are reached from the right are dashed.

mod bay;
mod beneath;
mod body;
mod leaders;
mod place;
mod rows;
mod scale;
mod standing;
mod stretches;
mod tags;

pub use standing::Standing;

use crate::Drawing;
use baywalk_domain::ids::BayId;
use baywalk_domain::rig::Book;
use place::Placed;
use scale::Scale;
use std::collections::BTreeMap;

/// Narrowest strip on which a bay can be told from the next.
pub const LEAST_WIDTH: f64 = 240.0;

/// Draws the strip over a width of at least [`LEAST_WIDTH`]. A bay of which no standing is given is
/// to do. Tags carry the codes of the bays; they and their words are pushed apart and never overlap:
/// where one row has no room for all, they stand in several. Where the power of any bay is told, the
/// line lies beneath, nose to tail, one stretch for neighbours of the same power.
///
/// # Example
/// ```
/// use baywalk_domain::ids::RigId;
/// use baywalk_domain::rig::{Book, Rig, RigKind, ServiceKind, YearlyRule};
/// use baywalk_shapes::strip::strip;
/// # let id = RigId::new(uuid::Uuid::nil());
/// let rig = Rig {
///     id,
///     name: "Alder".into(),
///     kind: RigKind::Trailer,
///     service: ServiceKind::Amp30,
///     rule: YearlyRule { months: 12, distance: None },
///     note: String::new(),
/// };
/// let empty = strip(&Book::new(rig), &std::collections::BTreeMap::new(), 328.0);
/// assert!((empty.width - 328.0).abs() < 1e-9);
/// ```
#[must_use]
pub fn strip(book: &Book, standings: &BTreeMap<BayId, Standing>, width: f64) -> Drawing {
    let width = width.max(LEAST_WIDTH);
    let to_do = Standing::default();
    let standing = |bay: BayId| standings.get(&bay).unwrap_or(&to_do);
    let bays = book.bays_in_order();
    let count = |bay: BayId| standing(bay).total.max(book.points_of(bay).len());
    let placed = place::place(&bays, &count, Scale::new(width, 0.0), book.rig.kind);
    let (above, below): (Vec<&Placed<'_>>, Vec<&Placed<'_>>) =
        placed.iter().partition(|placed| placed.lane.is_above());
    let above = tags::arrange(&above, &standing, width);
    let below = tags::arrange(&below, &standing, width);
    let scale = Scale::new(width, above.height());
    let foot = scale.foot() + below.height();
    let mut drawing = Drawing::new(width, foot);
    body::draw(&mut drawing, book.rig.kind, scale);
    leaders::above(&mut drawing, &above, scale);
    for placed in &placed {
        bay::draw(&mut drawing, placed, standing(placed.bay.id), scale);
    }
    leaders::below(&mut drawing, &below, scale);
    tags::above(&mut drawing, &above);
    tags::below(&mut drawing, &below, scale);
    beneath::draw(&mut drawing, &bays, &standing);
    drawing
}

/// What stands at each bay of a row of tags.
type StandingOf<'a> = dyn Fn(BayId) -> &'a Standing + 'a;
