//! One stretch of a conductor.

use super::Power;
use crate::{Drawing, Path, Role};

/// Length of a blade with its two contacts, at full size.
const BLADE: f64 = 36.0;

/// A stretch between two places on a height: whole and thick, thin with an open blade in its
/// middle, or hollow.
pub(crate) fn stretch(drawing: &mut Drawing, power: Power, (from, to): (f64, f64), y: f64) {
    match power {
        Power::Live => drawing.stroke(Role::Ink, 8.0, Path::line((from, y), (to, y))),
        Power::Unmeasured => {
            let hollow = Path::rectangle(from + 0.75, y - 3.25, to - from - 1.5, 6.5);
            drawing.stroke(Role::Ink, 1.5, hollow);
        }
        Power::Dead => {
            let half = (BLADE / 2.0 + 2.0).min((to - from) / 2.0);
            let middle = f64::midpoint(from, to);
            let (left, right) = (middle - half, middle + half);
            let ends = Path::line((from, y), (left, y)).and(Path::line((right, y), (to, y)));
            if left - from > 0.5 {
                drawing.stroke(Role::Ink, 2.0, ends);
            }
            blade(drawing, Role::Ink, 2.0, (left, right), y);
        }
    }
}

/// An open blade between two places: a filled contact it hangs on, an open one it has left, and a
/// lead to each. A stretch under 36 makes it smaller.
pub(crate) fn blade(drawing: &mut Drawing, role: Role, lead: f64, (from, to): (f64, f64), y: f64) {
    let scale = ((to - from) / BLADE).min(1.0);
    let middle = f64::midpoint(from, to);
    let (hinge, contact) = (middle - 13.0 * scale, middle + 13.0 * scale);
    let radius = 3.0 * scale;
    let leads = Path::line((from, y), (hinge, y)).and(Path::line((contact + radius, y), (to, y)));
    drawing.stroke(role, lead, leads);
    drawing.fill(role, Path::circle(hinge, y, radius));
    let open = Path::line((hinge, y), (hinge + 23.0 * scale, y - 14.0 * scale));
    drawing.stroke(role, 3.0 * scale, open);
    drawing.stroke(role, 2.0 * scale, Path::circle(contact, y, radius));
}
