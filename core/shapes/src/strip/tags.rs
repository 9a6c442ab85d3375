//! The tags above and below the rig, with their words and leaders.

use super::StandingOf;
use super::place::Placed;
use super::rows::{Spot, arrange as in_rows};
use super::scale::Scale;
use crate::count::measure;
use crate::label::cut;
use crate::spread::Span;
use crate::tag::{self, Weight, tag};
use crate::{Anchor, Drawing, Label, Role, Size, width_of};

/// Room for a leader to slant.
pub(super) const SLANT: f64 = 12.0;
/// Height of a word under its tag.
const WORD: f64 = 17.0;

/// A tag with its bay, its word and its place.
pub(super) struct Labelled<'a> {
    /// The bay.
    pub(super) placed: Placed<'a>,
    /// Where its tag stands.
    pub(super) spot: Spot,
    next: bool,
    word: String,
}

/// The tags of one side, and what they measure.
pub(super) struct Side<'a> {
    /// The tags, nose to tail.
    pub(super) labels: Vec<Labelled<'a>>,
    /// Height of a tag with its word.
    pub(super) block: f64,
}

impl Side<'_> {
    /// Height of all rows.
    pub(super) fn height(&self) -> f64 {
        self.rows() * (self.block + SLANT)
    }

    fn rows(&self) -> f64 {
        let rows = self.labels.iter().map(|label| label.spot.row + 1);
        measure(rows.max().unwrap_or(0))
    }
}

/// Arranges the tags of the bays of one side.
pub(super) fn arrange<'a>(
    placed: &[&Placed<'a>],
    standing: &StandingOf<'_>,
    width: f64,
) -> Side<'a> {
    let mut order: Vec<&Placed<'a>> = placed.to_vec();
    order.sort_by(|one, other| one.middle.total_cmp(&other.middle));
    let word = |bay: &&Placed<'_>| cut(&standing(bay.bay.id).word, Size::Least, width * 0.45);
    let words: Vec<String> = order.iter().map(word).collect();
    let spans: Vec<Span> = order
        .iter()
        .zip(&words)
        .map(|(bay, word)| Span {
            middle: bay.middle,
            half: tag::width_for(bay.bay.code.as_str()).max(width_of(word, Size::Least)) / 2.0,
        })
        .collect();
    let worded = words.iter().any(|word| !word.is_empty());
    let spots = in_rows(&spans, (1.0, width - 1.0));
    let labels = order.into_iter().zip(words).zip(spots);
    Side {
        labels: labels
            .map(|((placed, word), spot)| Labelled {
                placed: *placed,
                next: standing(placed.bay.id).next,
                word,
                spot,
            })
            .collect(),
        block: tag::HEIGHT + if worded { WORD } else { 0.0 },
    }
}

/// The tags above the rig, the nearest row lowest.
pub(super) fn above(drawing: &mut Drawing, side: &Side<'_>) {
    for label in &side.labels {
        let rows = measure(label.spot.row + 1);
        let top = side.height() - rows * (side.block + SLANT);
        block(drawing, label, top);
    }
}

/// The tags below the rig, the nearest row highest.
pub(super) fn below(drawing: &mut Drawing, side: &Side<'_>, scale: Scale) {
    for label in &side.labels {
        let rows = measure(label.spot.row);
        let top = scale.foot() + SLANT + rows * (side.block + SLANT);
        block(drawing, label, top);
    }
}

/// A tag and the word under it.
fn block(drawing: &mut Drawing, label: &Labelled<'_>, top: f64) {
    let middle = label
        .spot
        .way
        .last()
        .copied()
        .unwrap_or(label.placed.middle);
    let weight = if label.next {
        Weight::Next
    } else {
        Weight::Plain
    };
    let plate = tag(label.placed.bay.code.as_str(), weight);
    drawing.add(&plate, middle - plate.width / 2.0, top);
    if !label.word.is_empty() {
        let role = if label.next { Role::Next } else { Role::Ink };
        let word = Label {
            text: label.word.clone(),
            x: middle,
            y: top + tag::HEIGHT + 13.0,
            anchor: Anchor::Middle,
            size: Size::Least,
        };
        drawing.label(role, word);
    }
}
