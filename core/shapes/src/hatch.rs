//! The fills of the strip: each grade by its own pattern of real lines.

use crate::clip::{Convex, at};
use crate::mesh::Rectangle;
use crate::{Drawing, Path, Point, Role};
use baywalk_domain::walk::Grade;

/// The pattern of a grade as strokes in a rectangle, none of them beyond its edge. What was not
/// judged stays blank: nothing is known of it.
///
/// | grade | pattern |
/// |---|---|
/// | held | upright lines 1.4 wide, about 5 apart |
/// | moved | lines that lean left, 3 wide, 7 apart |
/// | loose | rings of radius 2, 1.4 wide, 7 by 6 apart |
/// | apart | lines across, 1.6 wide, 5 apart, broken by 10 in the middle |
/// | looked at | dots of radius 1, 6 apart |
pub(crate) fn fill(drawing: &mut Drawing, grade: Grade, room: Rectangle) {
    let (_, _, width, height) = room;
    if width < 2.0 || height < 2.0 {
        return;
    }
    match grade {
        Grade::Held => drawing.stroke(Role::Ink, 1.4, upright(room)),
        Grade::Moved => drawing.stroke(Role::Ink, 3.0, leaning(room)),
        Grade::Loose => drawing.stroke(Role::Ink, 1.4, grid(room, (7.0, 6.0), 2.0, 0.7)),
        Grade::Apart => drawing.stroke(Role::Ink, 1.6, broken(room)),
        Grade::LookedAt => drawing.fill(Role::Ink, grid(room, (6.0, 6.0), 1.0, 0.0)),
        Grade::NotJudged => {}
    }
}

/// A swatch of a pattern, framed, for a legend; at least 20 by 14.
///
/// # Example
/// ```
/// use baywalk_domain::walk::Grade;
/// use baywalk_shapes::hatch::swatch;
/// assert_ne!(swatch(Grade::Held, 32.0, 20.0), swatch(Grade::Moved, 32.0, 20.0));
/// ```
#[must_use]
pub fn swatch(grade: Grade, width: f64, height: f64) -> Drawing {
    let (width, height) = (width.max(20.0), height.max(14.0));
    let mut drawing = Drawing::new(width, height);
    drawing.fill(Role::Face, Path::rectangle(0.0, 0.0, width, height));
    fill(&mut drawing, grade, (1.0, 1.0, width - 2.0, height - 2.0));
    let edge = Path::rectangle(0.9, 0.9, width - 1.8, height - 1.8);
    drawing.stroke(Role::Ink, 1.8, edge);
    drawing
}

fn upright((x, y, width, height): Rectangle) -> Path {
    let count = (width / 5.0).floor().max(1.0);
    let pitch = width / (count + 1.0);
    let mut path = Path::default();
    let mut number = 1.0;
    while number <= count {
        let line = x + pitch * number;
        path = path.and(Path::line((line, y), (line, y + height)));
        number += 1.0;
    }
    path
}

fn leaning((x, y, width, height): Rectangle) -> Path {
    // Butt ends of a leaning line reach beyond its ends: the room is smaller by as much.
    let inset = 1.0_f64.min(height / 4.0);
    let edge = Convex::rectangle(
        x + inset,
        y + inset,
        width - inset * 2.0,
        height - inset * 2.0,
    );
    let run = height * 0.84;
    let mut path = Path::default();
    let mut start = x - run;
    while start < x + width {
        let (from, to) = (Point::new(start, y), Point::new(start + run, y + height));
        if let Some((enters, leaves)) = edge.inside(from, to) {
            path = path.and(Path::line(at(from, to, enters), at(from, to, leaves)));
        }
        start += 7.0;
    }
    path
}

fn broken((x, y, width, height): Rectangle) -> Path {
    let middle = x + width / 2.0;
    let half = 5.0_f64.min(width / 4.0);
    let mut path = Path::default();
    let mut line = y + 2.5_f64.min(height / 2.0);
    while line < y + height - 0.8 {
        let left = Path::line((x, line), (middle - half, line));
        let right = Path::line((middle + half, line), (x + width, line));
        path = path.and(left).and(right);
        line += 5.0;
    }
    path
}

/// Circles in rows, each second row shifted by half; whole ones only, the rows in the middle.
fn grid((x, y, width, height): Rectangle, pitch: (f64, f64), radius: f64, line: f64) -> Path {
    let radius = radius.min(width / 2.0 - line).min(height / 2.0 - line);
    let reach = radius + line;
    let fits = |room: f64, pitch: f64| ((room - reach * 2.0) / pitch).floor().max(0.0);
    let (rows, columns) = (fits(height, pitch.1), fits(width, pitch.0));
    let top = y + (height - rows * pitch.1) / 2.0;
    let left = x + (width - columns * pitch.0) / 2.0;
    let mut path = Path::default();
    let (mut row, mut shifted) = (0.0, false);
    while row <= rows {
        let first = if shifted { left + pitch.0 / 2.0 } else { left };
        let last = if shifted { columns - 1.0 } else { columns };
        let mut column = 0.0;
        while column <= last {
            let place = (first + column * pitch.0, top + row * pitch.1);
            path = path.and(Path::circle(place.0, place.1, radius));
            column += 1.0;
        }
        row += 1.0;
        shifted = !shifted;
    }
    path
}
