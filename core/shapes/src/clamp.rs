//! A wire in a clamp as found: how deep it still sits tells the grade.

use crate::screw::BOX;
use crate::{Drawing, Path, Role};

/// How deep the wire sits.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Depth {
    /// It gave nothing: up to the stop.
    Held,
    /// It gave, and stayed in.
    Moved,
    /// It slid with the hand.
    Loose,
    /// It is out.
    Apart,
}

impl Depth {
    /// Height of the wire's tip in the box.
    #[must_use]
    pub const fn tip(self) -> f64 {
        match self {
            Self::Held => 7.0,
            Self::Moved => 16.0,
            Self::Loose => 25.5,
            Self::Apart => 38.0,
        }
    }
}

/// A cage open below, two ticks where the wire belongs, and the wire.
///
/// # Example
/// ```
/// use baywalk_shapes::clamp::{Depth, clamp};
/// assert_ne!(clamp(Depth::Held), clamp(Depth::Moved));
/// ```
#[must_use]
pub fn clamp(depth: Depth) -> Drawing {
    let mut drawing = Drawing::new(BOX, BOX);
    let cage = Path::from((14.5, 30.0))
        .to(7.5, 30.0)
        .to(7.5, 3.0)
        .to(40.5, 3.0)
        .to(40.5, 30.0)
        .to(33.5, 30.0);
    let ticks = Path::line((7.5, 9.0), (15.0, 9.0)).and(Path::line((33.0, 9.0), (40.5, 9.0)));
    drawing.stroke(Role::Ink, 2.6, cage);
    drawing.stroke(Role::Ink, 4.0, ticks);
    let wire = Path::line((24.0, BOX), (24.0, depth.tip()));
    drawing.stroke(Role::Ink, 9.0, wire);
    drawing
}
