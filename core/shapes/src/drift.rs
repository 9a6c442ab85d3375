//! The scale of the neutral's drift.

use crate::{Anchor, Drawing, Label, Path, Role, Size};

/// The volts at either end of the scale. Ours.
pub const END: f64 = 20.0;
/// Height of the scale's own line.
const LINE: f64 = 30.0;
/// Free room beside each end, for the pointer and half a letter.
const MARGIN: f64 = 14.0;

/// The scale of ±20 V with the neutral's drift on it: a thick piece from 0 to where the neutral
/// stands, and a pointer above. Negative volts lie at the left. Drift beyond the scale ends in a
/// pointer that shows outwards; without a reading there is none. `ends` are the caller's words for
/// left, middle and right; `role` is the ink of the ground it stands on.
///
/// # Example
/// ```
/// use baywalk_shapes::{Role, drift::drift};
/// let weak = drift(Some(-8.9), 300.0, ["L1", "0", "L2"], Role::OnCaution);
/// let none = drift(None, 300.0, ["L1", "0", "L2"], Role::Ink);
/// assert!(weak.parts.len() > none.parts.len());
/// ```
#[must_use]
pub fn drift(volts: Option<f64>, width: f64, ends: [&str; 3], role: Role) -> Drawing {
    let width = width.max(120.0);
    let mut drawing = Drawing::new(width, 54.0);
    let half = width / 2.0 - MARGIN;
    let place = |volts: f64| width / 2.0 + half * volts / END;
    let mut scale = Path::line((place(-END), LINE), (place(END), LINE));
    let mut tick = -END;
    while tick <= END {
        let length = if tick % 10.0 == 0.0 { 10.0 } else { 5.0 };
        let x = place(tick);
        scale = scale.and(Path::line((x, LINE), (x, LINE - length)));
        tick += 2.0;
    }
    drawing.stroke(role, 1.4, scale);
    if let Some(volts) = volts.filter(|volts| volts.is_finite()) {
        let x = place(volts.clamp(-END, END));
        drawing.stroke(role, 6.0, Path::line((place(0.0), LINE), (x, LINE)));
        drawing.fill(role, pointer(x, volts));
    }
    let anchors = [Anchor::Start, Anchor::Middle, Anchor::End];
    let places = [0.0, width / 2.0, width];
    for ((text, anchor), x) in ends.into_iter().zip(anchors).zip(places) {
        let label = Label {
            text: text.to_owned(),
            x,
            y: 49.0,
            anchor,
            size: Size::Tag,
        };
        drawing.label(role, label);
    }
    drawing
}

/// A pointer down to its place, or outwards where the drift lies beyond the scale.
fn pointer(x: f64, volts: f64) -> Path {
    let out = if volts < 0.0 { -14.0 } else { 14.0 };
    if volts.abs() > END {
        Path::from((x + out, LINE))
            .to(x, LINE - 7.0)
            .to(x, LINE + 7.0)
            .close()
    } else {
        Path::from((x, 27.0))
            .to(x - 7.0, 13.0)
            .to(x + 7.0, 13.0)
            .close()
    }
}
