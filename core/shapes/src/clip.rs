//! Cutting a straight line at the edge of a shape.

use crate::Point;

/// A shape whose corners all point outwards, its corners clockwise.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Convex(Vec<Point>);

impl Convex {
    /// The inside of a rectangle.
    pub(crate) fn rectangle(x: f64, y: f64, width: f64, height: f64) -> Self {
        let (right, bottom) = (x + width, y + height);
        let corners = [(x, y), (right, y), (right, bottom), (x, bottom)];
        Self(corners.map(Point::from).to_vec())
    }

    /// From where to where a line lies inside, as shares of its length; `None` where it does not.
    pub(crate) fn inside(&self, from: Point, to: Point) -> Option<(f64, f64)> {
        let (mut enters, mut leaves) = (0.0_f64, 1.0_f64);
        let ends = self.0.iter().skip(1).chain(self.0.first());
        for (corner, next) in self.0.iter().zip(ends) {
            // How far a place lies inside of the edge, times the edge's length.
            let depth = |at: Point| {
                (next.x - corner.x) * (at.y - corner.y) - (next.y - corner.y) * (at.x - corner.x)
            };
            let (start, end) = (depth(from), depth(to));
            if start < 0.0 && end < 0.0 {
                return None;
            }
            let share = start / (start - end);
            if start < 0.0 {
                enters = enters.max(share);
            } else if end < 0.0 {
                leaves = leaves.min(share);
            }
        }
        (enters < leaves).then_some((enters, leaves))
    }
}

/// The place at a share of a line.
pub(crate) fn at(from: Point, to: Point, share: f64) -> (f64, f64) {
    (
        from.x + (to.x - from.x) * share,
        from.y + (to.y - from.y) * share,
    )
}
