//! The places of a bay's points as they lie on its photo, and the one where the hand goes now.

use crate::{Drawing, Path, Role};

/// Width and height of the frame.
const FRAME: (f64, f64) = (96.0, 72.0);
/// How far a place stays inside the frame.
const INSET: f64 = 9.0;

/// A place on a photo, in thousandths of its width and height from the upper left.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Spot {
    /// Of the width.
    pub across: u16,
    /// Of the height.
    pub down: u16,
    /// Whether its point has been gone through.
    pub done: bool,
}

/// A frame with the places of the other points, small, and one place, large.
///
/// # Example
/// ```
/// use baywalk_shapes::places::{Spot, places};
/// let spot = |across, down| Spot { across, down, done: false };
/// let drawing = places(&[spot(100, 100), spot(900, 100)], spot(500, 800));
/// assert_eq!((drawing.width, drawing.height), (96.0, 72.0));
/// ```
#[must_use]
pub fn places(others: &[Spot], here: Spot) -> Drawing {
    let mut drawing = Drawing::new(FRAME.0, FRAME.1);
    let frame = Path::rectangle(1.0, 1.0, FRAME.0 - 2.0, FRAME.1 - 2.0);
    drawing.stroke(Role::Ink, 2.0, frame);
    for other in others {
        let (x, y) = at(*other);
        if other.done {
            drawing.fill(Role::Ink, Path::circle(x, y, 4.0));
        } else {
            drawing.stroke(Role::Ink, 1.4, Path::circle(x, y, 3.3));
        }
    }
    let (x, y) = at(here);
    drawing.fill(Role::Next, Path::circle(x, y, 7.0));
    drawing
}

fn at(spot: Spot) -> (f64, f64) {
    let along = |part: u16, whole: f64| INSET + f64::from(part) / 1000.0 * (whole - 2.0 * INSET);
    (along(spot.across, FRAME.0), along(spot.down, FRAME.1))
}
