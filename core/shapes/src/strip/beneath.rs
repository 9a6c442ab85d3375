//! The line beneath the rig: what is known of the conductors of each bay, nose to tail.

use super::StandingOf;
use crate::count::measure;
use crate::label::cut;
use crate::line::{Power, stretch};
use crate::{Anchor, Drawing, Label, Role, Size};
use baywalk_domain::rig::Bay;

/// Height of the line with its words.
const HEIGHT: f64 = 48.0;
/// Free room between two stretches.
const GAP: f64 = 3.0;

/// Adds the line where the power of any bay is told; a bay of which nothing is told counts as live.
pub(super) fn draw(drawing: &mut Drawing, bays: &[&Bay], standing: &StandingOf<'_>) {
    if bays.iter().all(|bay| standing(bay.id).power.is_none()) {
        return;
    }
    let mut runs: Vec<(Power, Vec<&str>)> = Vec::new();
    for bay in bays {
        let power = standing(bay.id).power.unwrap_or(Power::Live);
        match runs.last_mut().filter(|(last, _)| *last == power) {
            Some((_, codes)) => codes.push(bay.code.as_str()),
            None => runs.push((power, vec![bay.code.as_str()])),
        }
    }
    let y = drawing.height + 24.0;
    drawing.height += HEIGHT;
    let share = drawing.width / measure(bays.len().max(1));
    let gap = GAP.min(share / 2.0);
    let mut from = 0.0;
    for (power, codes) in runs {
        let to = from + share * measure(codes.len());
        let first = if from > 0.0 { from + gap } else { from };
        stretch(drawing, power, (first, to), y);
        let label = Label {
            text: cut(&codes.join(" "), Size::Least, to - first),
            x: f64::midpoint(first, to),
            y: y + 20.0,
            anchor: Anchor::Middle,
            size: Size::Least,
        };
        drawing.label(Role::Ink, label);
        from = to;
    }
}
