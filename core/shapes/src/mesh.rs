//! Mesh: keep out.

use crate::clip::{Convex, at};
use crate::{Drawing, Path, Point, Role};

/// A rectangle: left, top, width, height.
pub(crate) type Rectangle = (f64, f64, f64, f64);

/// Crossed lines in a rectangle, cut at its edge and at the edge of a hole in it; `pitch` apart
/// along the edges.
pub(crate) fn mesh(outer: Rectangle, hole: Option<Rectangle>, pitch: f64) -> Path {
    let (x, y, width, height) = outer;
    let edge = Convex::rectangle(x, y, width, height);
    let hole = hole.map(|(x, y, width, height)| Convex::rectangle(x, y, width, height));
    let mut path = Path::default();
    let mut along = pitch;
    while along < width + height {
        let falling = (x + along - height, y, x + along, y + height);
        let rising = (x + along - height, y + height, x + along, y);
        for (x0, y0, x1, y1) in [falling, rising] {
            path = pieces(
                path,
                &edge,
                hole.as_ref(),
                Point::new(x0, y0),
                Point::new(x1, y1),
            );
        }
        along += pitch;
    }
    path
}

/// Adds what of a line lies inside the edge and outside the hole.
fn pieces(path: Path, edge: &Convex, hole: Option<&Convex>, from: Point, to: Point) -> Path {
    let Some((start, end)) = edge.inside(from, to) else {
        return path;
    };
    let cut = hole.and_then(|hole| hole.inside(from, to));
    let spans = match cut {
        Some((enters, leaves)) => [(start, enters), (leaves, end)],
        None => [(start, end), (end, end)],
    };
    let seen = spans.into_iter().filter(|(start, end)| end - start > 1e-6);
    seen.fold(path, |path, (start, end)| {
        path.and(Path::line(at(from, to, start), at(from, to, end)))
    })
}

/// A swatch of mesh, framed: what stays untouched.
///
/// # Example
/// ```
/// let swatch = baywalk_shapes::mesh::swatch(36.0, 24.0);
/// assert_eq!(swatch.parts.len(), 2);
/// ```
#[must_use]
pub fn swatch(width: f64, height: f64) -> Drawing {
    let mut drawing = Drawing::new(width, height);
    let room = (1.0, 1.0, width - 2.0, height - 2.0);
    drawing.stroke(Role::Ink, 1.4, mesh(room, None, 9.0));
    drawing.stroke(
        Role::Ink,
        2.0,
        Path::rectangle(room.0, room.1, room.2, room.3),
    );
    drawing
}
