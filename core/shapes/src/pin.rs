//! The number of a terminal on a photo or in a list: round.

use crate::{Anchor, Drawing, Label, Path, Role, Size, width_of};

/// How a terminal stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PinState {
    /// Not gone through yet: an open circle.
    ToDo,
    /// Gone through: filled.
    Done,
    /// Where the hand goes next: larger, and filled in the colour of what is next.
    Next,
}

/// The number of a terminal, its middle in the middle of the box; a long one makes it larger.
///
/// # Example
/// ```
/// use baywalk_shapes::pin::{PinState, pin};
/// assert!(pin("8", PinState::Next).width > pin("8", PinState::Done).width);
/// ```
#[must_use]
pub fn pin(number: &str, state: PinState) -> Drawing {
    let (radius, face, edge, text) = match state {
        PinState::ToDo => (12.0, Role::Face, Role::Ink, Role::Ink),
        PinState::Done => (12.0, Role::Ink, Role::Ink, Role::Plate),
        PinState::Next => (15.0, Role::Next, Role::Next, Role::OnNext),
    };
    let radius = (width_of(number, Size::Tag) / 2.0 + 1.0).max(radius);
    let side = radius * 2.0 + 4.0;
    let middle = side / 2.0;
    let mut drawing = Drawing::new(side, side);
    drawing.fill(face, Path::circle(middle, middle, radius));
    drawing.stroke(edge, 2.0, Path::circle(middle, middle, radius));
    let label = Label {
        text: number.to_owned(),
        x: middle,
        y: middle + Size::Tag.drop(),
        anchor: Anchor::Middle,
        size: Size::Tag,
    };
    drawing.label(text, label);
    drawing
}
