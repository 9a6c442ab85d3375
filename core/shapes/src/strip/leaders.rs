//! The lines from the bays to their tags.

use super::bay;
use super::scale::Scale;
use super::tags::{Labelled, SLANT, Side};
use crate::{Drawing, Path, Role};

/// The leaders of the tags above, from the bays upwards.
pub(super) fn above(drawing: &mut Drawing, side: &Side<'_>, scale: Scale) {
    let near = side.height();
    for label in &side.labels {
        let (top, _) = bay::height(label.placed.lane, scale);
        let foot = (label.placed.middle, top);
        let path = Path::from(foot).to(foot.0, near);
        drawing.stroke(Role::Ink, 1.0, along(path, label, near, -1.0, side.block));
    }
}

/// The leaders of the tags below, from the sill downwards past the wheels.
pub(super) fn below(drawing: &mut Drawing, side: &Side<'_>, scale: Scale) {
    let near = scale.foot();
    for label in &side.labels {
        let start = (label.placed.middle, scale.sill());
        let path = Path::from(start).to(start.0, near);
        drawing.stroke(Role::Ink, 1.0, along(path, label, near, 1.0, side.block));
    }
}

/// Goes on row by row: slanting to its place, then straight past the row.
fn along(mut path: Path, label: &Labelled<'_>, near: f64, way: f64, block: f64) -> Path {
    let mut y = near;
    let last = label.spot.way.len().saturating_sub(1);
    for (row, x) in label.spot.way.iter().enumerate() {
        y += SLANT * way;
        path = path.to(*x, y);
        if row < last {
            y += block * way;
            path = path.to(*x, y);
        }
    }
    path
}
