//! The points of a bay on the line.

use crate::count::measure;
use crate::{Drawing, Path, Role};
use baywalk_domain::walk::Grade;

/// The farthest that two points stand apart.
const PITCH: f64 = 12.0;
/// The least.
const LEAST_PITCH: f64 = 7.0;

/// How a point stands on the line.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum PointMark {
    /// To do, or not judged: a small ring.
    ToDo,
    /// Held: an upright tick.
    Held,
    /// Moved: a leaning tick.
    Moved,
    /// Loose: a ring.
    Loose,
    /// Apart: a gap.
    Apart,
    /// Looked at: a dot.
    LookedAt,
}

impl From<Grade> for PointMark {
    fn from(grade: Grade) -> Self {
        match grade {
            Grade::Held => Self::Held,
            Grade::Moved => Self::Moved,
            Grade::Loose => Self::Loose,
            Grade::Apart => Self::Apart,
            Grade::LookedAt => Self::LookedAt,
            Grade::NotJudged => Self::ToDo,
        }
    }
}

/// Lays the points on the line, as far right as they go; those around `now` where not all fit.
pub(super) fn lay(
    drawing: &mut Drawing,
    marks: &[PointMark],
    now: Option<usize>,
    (left, right): (f64, f64),
    y: f64,
) {
    let mut room = 0_usize;
    while measure(room) * LEAST_PITCH <= right - left {
        room += 1;
    }
    let shown = marks.len().min(room);
    let hidden = marks.len() - shown;
    let first = now.unwrap_or(0).saturating_sub(shown / 2).min(hidden);
    let gaps = measure(shown.saturating_sub(1)).max(1.0);
    let pitch = ((right - left) / gaps).min(PITCH);
    let start = right - pitch * measure(shown.saturating_sub(1));
    let seen = marks.iter().enumerate().skip(first).take(shown);
    for ((place, mark), column) in seen.zip(0_usize..) {
        let x = start + pitch * measure(column);
        if now == Some(place) {
            here(drawing, x, y);
        } else {
            draw(drawing, *mark, x, y);
        }
    }
}

/// The point at hand: a pointer and a stem in the colour of what is next.
fn here(drawing: &mut Drawing, x: f64, y: f64) {
    let pointer = Path::from((x, y - 3.0))
        .to(x - 6.0, y - 13.0)
        .to(x + 6.0, y - 13.0)
        .close();
    drawing.fill(Role::Next, pointer);
    let stem = Path::line((x, y - 3.0), (x, y + 9.0));
    drawing.stroke(Role::Next, 3.0, stem);
}

fn draw(drawing: &mut Drawing, mark: PointMark, x: f64, y: f64) {
    let ring = |drawing: &mut Drawing, radius: f64, width: f64| {
        drawing.fill(Role::Plate, Path::circle(x, y, radius));
        drawing.stroke(Role::Ink, width, Path::circle(x, y, radius));
    };
    let upright = |x: f64, reach: f64| Path::line((x, y - reach), (x, y + reach));
    match mark {
        PointMark::ToDo => ring(drawing, 2.2, 1.4),
        PointMark::Held => drawing.stroke(Role::Ink, 2.4, upright(x, 7.0)),
        PointMark::Moved => {
            let leaning = Path::line((x - 4.5, y - 8.0), (x + 4.5, y + 8.0));
            drawing.stroke(Role::Ink, 2.8, leaning);
        }
        PointMark::Loose => ring(drawing, 4.0, 2.0),
        PointMark::Apart => {
            let gap = Path::rectangle(x - 3.0, y - 2.0, 6.0, 4.0);
            drawing.fill(Role::Plate, gap);
            let ends = upright(x - 3.0, 6.0).and(upright(x + 3.0, 6.0));
            drawing.stroke(Role::Ink, 1.6, ends);
        }
        PointMark::LookedAt => drawing.fill(Role::Ink, Path::circle(x, y, 3.0)),
    }
}
