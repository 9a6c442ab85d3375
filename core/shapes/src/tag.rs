//! The label of a bay: a square with its word, the same as the label stuck in the bay.

use crate::label::cut;
use crate::{Anchor, Drawing, Label, Path, Role, Size, width_of};

/// Height of a tag on the strip.
pub(crate) const HEIGHT: f64 = 20.0;

/// How a tag is meant.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Weight {
    /// As information.
    Plain,
    /// As the chosen one: reversed.
    Chosen,
    /// As the next one: filled in the colour of what is next.
    Next,
}

/// The label of a bay, as wide as its word asks, at least square.
///
/// # Example
/// ```
/// use baywalk_shapes::tag::{Weight, tag};
/// assert!(tag("GALLEY", Weight::Plain).width > tag("F", Weight::Plain).width);
/// ```
#[must_use]
pub fn tag(word: &str, weight: Weight) -> Drawing {
    let width = width_for(word);
    let mut drawing = Drawing::new(width, HEIGHT);
    let (face, edge, text) = match weight {
        Weight::Plain => (Role::Plate, Role::Ink, Role::Ink),
        Weight::Chosen => (Role::Caution, Role::Caution, Role::OnCaution),
        Weight::Next => (Role::Next, Role::Next, Role::OnNext),
    };
    let square = || Path::rectangle(0.8, 0.8, width - 1.6, HEIGHT - 1.6);
    drawing.fill(face, square());
    drawing.stroke(edge, 1.6, square());
    drawing.label(
        text,
        Label {
            text: cut(word, Size::Tag, width - 6.0),
            x: width / 2.0,
            y: HEIGHT / 2.0 + Size::Tag.drop(),
            anchor: Anchor::Middle,
            size: Size::Tag,
        },
    );
    drawing
}

/// How wide the tag of a word is.
pub(crate) fn width_for(word: &str) -> f64 {
    (width_of(word, Size::Tag) + 8.0).clamp(HEIGHT, 140.0)
}
