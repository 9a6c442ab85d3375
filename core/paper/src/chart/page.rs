//! Words and lines that charts have in common.

use baywalk_shapes::{Anchor, Dash, Drawing, Label, Path, Role, Size, cut, width_of};

/// Free room at either side.
pub(super) const MARGIN: f64 = 4.0;

/// How a line that stands for a law or a limit is broken.
pub(super) const BROKEN: Dash = Dash { on: 7.0, off: 5.0 };

/// The narrowest and the widest drawing.
const WIDTHS: (f64, f64) = (240.0, 1_000.0);

/// A drawing of a width that can be, as high as nothing yet.
pub(super) fn sheet(width: f64) -> Drawing {
    let (least, most) = WIDTHS;
    let width = if width.is_finite() { width } else { least };
    Drawing::new(width.round().clamp(least, most), 0.0)
}

/// The height of a line of small words.
pub(super) const LINE: f64 = 17.0;

/// A text in small words over as many lines as it asks for, at most three, its first baseline at a
/// place; gives the place under it. What is cut stands in what is told.
pub(super) fn words(
    drawing: &mut Drawing,
    (x, y): (f64, f64),
    anchor: Anchor,
    text: &str,
    room: f64,
) -> f64 {
    let mut y = y;
    for line in wrapped(text, room) {
        let text = cut(&line, Size::Least, room);
        let size = Size::Least;
        drawing.label(
            Role::Ink,
            Label {
                text,
                x,
                y,
                anchor,
                size,
            },
        );
        y += LINE;
    }
    y
}

/// A text broken between words into at most three lines.
fn wrapped(text: &str, room: f64) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in text.split_whitespace() {
        let full = lines.len() >= 3;
        match lines.last_mut() {
            Some(line) if full || width_of(&format!("{line} {word}"), Size::Least) <= room => {
                line.push(' ');
                line.push_str(word);
            }
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}

/// Small words over the whole width, from a height on; gives the height under them.
pub(super) fn line(drawing: &mut Drawing, top: f64, text: &str) -> f64 {
    let room = drawing.width - 2.0 * MARGIN;
    words(drawing, (MARGIN, top + 13.0), Anchor::Start, text, room) - 13.0 + 5.0
}

/// A heading over the whole width, in one line; gives the height under it.
pub(super) fn heading(drawing: &mut Drawing, top: f64, text: &str) -> f64 {
    let (size, anchor) = (Size::Body, Anchor::Start);
    let text = cut(text, size, drawing.width - 2.0 * MARGIN);
    let (x, y) = (MARGIN, top + 15.0);
    drawing.label(
        Role::Ink,
        Label {
            text,
            x,
            y,
            anchor,
            size,
        },
    );
    top + 22.0
}

/// A dividing hairline over the whole width.
pub(super) fn divide(drawing: &mut Drawing, y: f64) {
    let line = Path::line((MARGIN, y), (drawing.width - MARGIN, y));
    drawing.stroke(Role::Hair, 1.0, line);
}

/// How many, as a measure.
pub(super) fn many(count: usize) -> f64 {
    f64::from(u32::try_from(count).unwrap_or(u32::MAX))
}
