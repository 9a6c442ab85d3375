//! The body of the rig: outline, wheels, floor, and the hitch of a trailer.

use super::scale::Scale;
use crate::{Drawing, Path, Role};
use baywalk_domain::rig::RigKind;

/// Draws the body.
pub(super) fn draw(drawing: &mut Drawing, kind: RigKind, scale: Scale) {
    let (sill, floor, right) = (scale.sill(), scale.floor(), scale.width - 1.0);
    let left = match kind {
        RigKind::Motorhome => motorhome(drawing, scale),
        RigKind::Trailer => trailer(drawing, scale),
    };
    let mut edge = Path::from((left, sill));
    for x in scale.axles(kind) {
        let arch = scale.arch();
        edge = edge.to(x - arch, sill).arc((x, sill), arch, 180.0, 180.0);
        let hub = (x, sill + 2.0);
        drawing.stroke(Role::Ink, 2.0, Path::circle(hub.0, hub.1, scale.wheel()));
        drawing.fill(Role::Ink, Path::circle(hub.0, hub.1, 3.0));
    }
    drawing.stroke(Role::Ink, 2.0, edge.to(right, sill));
    let wall = match kind {
        RigKind::Motorhome => left + 4.0 * scale.times,
        RigKind::Trailer => left,
    };
    drawing.stroke(Role::Ink, 1.0, Path::line((wall, floor), (right, floor)));
}

/// The outline of a motorhome with its windscreen; returns where its lower edge begins.
fn motorhome(drawing: &mut Drawing, scale: Scale) -> f64 {
    let (times, roof, floor, sill) = (scale.times, scale.roof(), scale.floor(), scale.sill());
    let right = scale.width - 1.0;
    let outline = Path::rounded(&[
        ((2.0, sill + 1.0), 0.0),
        ((2.0, sill - 41.8 * times), 14.0 * times),
        ((28.8 * times, roof), 12.0 * times),
        ((right, roof), 8.0 * times),
        ((right, sill + 1.0), 0.0),
    ]);
    drawing.stroke(Role::Ink, 2.0, outline);
    let screen = Path::rounded(&[
        ((40.0 * times, floor - 6.0 * times), 0.0),
        ((11.0 * times, floor - 6.0 * times), 0.0),
        ((29.0 * times, roof + 7.0 * times), 4.0 * times),
        ((54.0 * times, roof + 7.0 * times), 0.0),
        ((54.0 * times, floor - 6.0 * times), 0.0),
    ]);
    drawing.stroke(Role::Ink, 1.2, screen.close());
    2.0
}

/// The outline of a trailer with its tongue and coupler; returns where its lower edge begins.
fn trailer(drawing: &mut Drawing, scale: Scale) -> f64 {
    let (times, roof, floor, sill) = (scale.times, scale.roof(), scale.floor(), scale.sill());
    let (left, right) = (34.0 * times, scale.width - 1.0);
    let outline = Path::rounded(&[
        ((left, sill + 1.0), 0.0),
        ((left, floor - 4.0 * times), 10.0 * times),
        ((left + 13.0 * times, roof), 8.0 * times),
        ((right, roof), 8.0 * times),
        ((right, sill + 1.0), 0.0),
    ]);
    drawing.stroke(Role::Ink, 2.0, outline);
    let tongue = Path::from((left, sill))
        .to(6.0, sill)
        .to(6.0, sill - 7.0 * times);
    let coupler = Path::line((2.0, sill - 7.0 * times), (12.0, sill - 7.0 * times));
    drawing.stroke(Role::Ink, 3.0, tongue.and(coupler));
    left
}
