//! Drawings in a page: in the colours of its style sheet, so that they follow its themes.

use baywalk_shapes::Drawing;
use baywalk_shapes::frame::Frame;
use baywalk_shapes::palette::Palette;
use baywalk_shapes::svg::{Told, svg};
use std::borrow::Cow;

/// The colours of the style sheet. A report has no next act: that role is ink.
const PAGE: Palette = Palette {
    ink: Cow::Borrowed("currentColor"),
    detail: Cow::Borrowed("currentColor"),
    hair: Cow::Borrowed("var(--line)"),
    plate: Cow::Borrowed("var(--plate)"),
    face: Cow::Borrowed("var(--plate)"),
    next: Cow::Borrowed("currentColor"),
    on_next: Cow::Borrowed("var(--plate)"),
    caution: Cow::Borrowed("var(--rev)"),
    on_caution: Cow::Borrowed("var(--onrev)"),
};

/// A drawing beside a text that tells the same.
pub(crate) fn beside(drawing: &Drawing) -> String {
    svg(drawing, &PAGE, None)
}

/// A drawing that is read aloud by its own words.
pub(crate) fn aloud(drawing: &Drawing, title: &str, description: &str) -> String {
    let told = Told { title, description };
    svg(drawing, &PAGE, Some(told))
}

/// The name of a frame in the style sheet.
pub(crate) const fn framed(frame: &Frame) -> &'static str {
    match frame {
        Frame::Label => "label",
        Frame::Document => "document",
        Frame::Table => "table",
        Frame::Calculation => "calculation",
        Frame::Unknown => "unknown",
        Frame::LeaveAlone => "leave",
    }
}
