//! A screw as found: its slot against the mark on the body.
//!
//! Right-hand threads back off anticlockwise, so the slot leans that way by the angle it moved.

use crate::{Drawing, Path, Role};
use baywalk_domain::walk::Angle;

/// Side of the box of a screw.
pub const BOX: f64 = 48.0;
/// The middle of the head.
const HEAD: (f64, f64) = (24.0, 25.0);
/// Radius of the head.
const RADIUS: f64 = 15.0;
/// Half the width of its slot.
const SLOT: f64 = 2.6;
/// Radius of the arc that tells how far.
const ARC: f64 = 20.5;
/// Where the slot leans when the angle is not known, in degrees.
const UNKNOWN_LEAN: f64 = 40.0;

/// Held: the slot upright, in line with the mark.
#[must_use]
pub fn held() -> Drawing {
    let mut drawing = marked(HEAD.0);
    drawing.fill(Role::Ink, head(RADIUS, SLOT).placed(HEAD.0, HEAD.1, 1.0));
    drawing
}

/// Moved: the slot leans by the angle, and an arc tells how far; without an arc where the angle is
/// not known. After a whole turn the slot is upright again and the arc goes all but round.
///
/// # Example
/// ```
/// use baywalk_domain::walk::Angle;
/// use baywalk_shapes::screw;
/// assert_eq!(screw::moved(Some(Angle::Eighth)).parts.len(), 3);
/// assert_eq!(screw::moved(None).parts.len(), 2);
/// ```
#[must_use]
pub fn moved(angle: Option<Angle>) -> Drawing {
    let degrees = angle.map(|angle| f64::from(angle.degrees()));
    let lean = match angle {
        Some(Angle::Turn) => 0.0,
        _ => degrees.unwrap_or(UNKNOWN_LEAN),
    };
    let slot = head(RADIUS, SLOT).turned(-lean);
    let mut drawing = marked(HEAD.0);
    drawing.fill(Role::Ink, slot.placed(HEAD.0, HEAD.1, 1.0));
    if let Some(degrees) = degrees {
        drawing.stroke(Role::Ink, 3.4, how_far(degrees));
    }
    drawing
}

/// Loose: a small head that rattles in its seat and does not touch it.
#[must_use]
pub fn loose() -> Drawing {
    let mut drawing = marked(HEAD.0);
    drawing.stroke(Role::Ink, 2.6, Path::circle(HEAD.0, HEAD.1, 15.5));
    let rattling = head(8.6, 2.0).turned(62.0).placed(27.0, 22.5, 1.0);
    drawing.fill(Role::Ink, rattling);
    drawing
}

/// Apart: the seat empty, the wire beside it at the lower left.
#[must_use]
pub fn apart() -> Drawing {
    let mut drawing = marked(30.0);
    drawing.stroke(Role::Ink, 2.6, Path::circle(30.0, HEAD.1, 14.5));
    drawing.stroke(Role::Ink, 8.0, Path::line((14.2, 46.3), (9.0, 35.0)));
    let strands = Path::line((10.6, 35.0), (10.4, 24.0))
        .and(Path::line((9.0, 35.0), (5.4, 23.0)))
        .and(Path::line((7.4, 35.6), (1.2, 26.8)));
    drawing.stroke(Role::Ink, 2.0, strands);
    drawing
}

/// The mark on the body, at twelve o'clock.
fn marked(x: f64) -> Drawing {
    let mut drawing = Drawing::new(BOX, BOX);
    drawing.stroke(Role::Ink, 4.0, Path::line((x, 1.5), (x, 7.5)));
    drawing
}

/// A head around the origin, cut by an upright slot: two segments of its circle.
fn head(radius: f64, slot: f64) -> Path {
    let reach = (slot / radius).acos().to_degrees();
    let half = |middle: f64| {
        let start = crate::Point::new(0.0, 0.0).at(radius, middle - reach);
        Path::from((start.x, start.y))
            .arc((0.0, 0.0), radius, middle - reach, reach * 2.0)
            .close()
    };
    half(0.0).and(half(180.0))
}

/// The arc from beside the mark to where the slot stands, anticlockwise.
fn how_far(degrees: f64) -> Path {
    let start = if degrees > 12.0 { 9.0 } else { 3.0 };
    let from = crate::Point::from(HEAD).at(ARC, -90.0 - start);
    Path::from((from.x, from.y)).arc(HEAD, ARC, -90.0 - start, start - degrees)
}
