//! The other signs of a point: to do, looked at, leave alone, ask the maker, next.

use crate::mesh::mesh;
use crate::screw::BOX;
use crate::{Drawing, Path, Role};

/// To do, or not judged: a small open ring.
#[must_use]
pub fn to_do() -> Drawing {
    let mut drawing = Drawing::new(BOX, BOX);
    drawing.stroke(Role::Ink, 2.6, Path::circle(24.0, 25.0, 6.0));
    drawing
}

/// Look, or looked at: a lens.
#[must_use]
pub fn look() -> Drawing {
    let mut drawing = Drawing::new(BOX, BOX);
    drawing.stroke(Role::Ink, 2.6, Path::circle(22.0, 22.0, 12.0));
    drawing.stroke(Role::Ink, 4.0, Path::line((31.0, 31.0), (41.0, 41.0)));
    drawing
}

/// Leave alone: a square of mesh.
#[must_use]
pub fn leave_alone() -> Drawing {
    let mut drawing = Drawing::new(BOX, BOX);
    drawing.stroke(Role::Ink, 1.8, mesh((9.0, 10.0, 30.0, 30.0), None, 15.0));
    drawing.stroke(Role::Ink, 2.6, Path::rectangle(9.0, 10.0, 30.0, 30.0));
    drawing
}

/// Ask the maker: a plate with two dashes where the figure would be.
#[must_use]
pub fn ask_maker() -> Drawing {
    let mut drawing = Drawing::new(BOX, BOX);
    let plate = Path::from((24.0, 7.0))
        .to(40.0, 16.0)
        .to(40.0, 34.0)
        .to(24.0, 43.0)
        .to(8.0, 34.0)
        .to(8.0, 16.0)
        .close();
    drawing.stroke(Role::Ink, 2.6, plate);
    let dashes = Path::line((14.5, 25.0), (22.0, 25.0)).and(Path::line((26.0, 25.0), (33.5, 25.0)));
    drawing.stroke(Role::Ink, 3.4, dashes);
    drawing
}

/// The pointer to what is next: its tip down, in a box of 20 by 14.
#[must_use]
pub fn next() -> Drawing {
    let mut drawing = Drawing::new(20.0, 14.0);
    drawing.fill(Role::Next, pointer(10.0, 14.0));
    drawing
}

/// A pointer with its tip at a place.
pub(crate) fn pointer(x: f64, y: f64) -> Path {
    Path::from((x, y))
        .to(x - 9.0, y - 14.0)
        .to(x + 9.0, y - 14.0)
        .close()
}
