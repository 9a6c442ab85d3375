//! One cell of a table: figure in its frame, tag, first line, and what stands under it.

use super::line::Type;
use super::setter::Setter;
use super::size::points;
use super::stack::Stack;
use super::tree::Node;
use crate::sheet::{Cell, Tag};
use baywalk_shapes::frame::{Frame, frame};
use baywalk_shapes::{Anchor, Drawing, Label, Path, Role, Size, width_of};

/// Height of the text in tables.
pub(super) const SMALL: Type = Type::plain(8.0);
/// Points a unit of the frame around a figure.
const FRAMED: f32 = 0.36;
/// Points a unit of a tag.
const TAGGED: f32 = 0.52;

impl Setter<'_> {
    pub(super) fn cell(&mut self, cell: &Cell, width: f32, node: Node) -> Stack {
        let mut stack = Stack::default();
        let mut left = 0.0;
        if let Some(glyph) = &cell.glyph {
            let scale = 13.0 / points(glyph.height).max(1.0);
            let drawn = self.drawing(glyph, scale, None, None);
            left = points(glyph.width) * scale + 4.0;
            stack.stack(drawn, 0.0, 0.0);
        }
        let mut words = Stack::default();
        if let Some((frame, figure)) = &cell.figure {
            let boxed = self.figure(*frame, figure, width - left, node);
            words.stack(boxed, 0.0, 0.0);
            words.gap(2.0);
        }
        let head = self.cell_head(cell, width - left, node);
        let y = words.height;
        words.stack(head, 0.0, y);
        let under = cell.lines.join(" · ");
        if !under.is_empty() {
            words.lines(self.faces.set(&under, SMALL, width - left), 0.0, node);
        }
        stack.stack(words, left, 0.0);
        stack
    }

    /// The first line, strong, behind its tag.
    fn cell_head(&mut self, cell: &Cell, width: f32, node: Node) -> Stack {
        let mut stack = Stack::default();
        let mut left = 0.0;
        if let Some(tag) = &cell.tag {
            let drawing = tagged(tag);
            left = points(drawing.width) * TAGGED + 4.0;
            stack.stack(self.drawing(&drawing, TAGGED, Some(node), None), 0.0, 0.0);
        }
        if !cell.head.is_empty() {
            let mut words = Stack::default();
            let set = Type::strong(SMALL.size);
            words.lines(self.faces.set(&cell.head, set, width - left), left, node);
            stack.stack(words, 0.0, 0.0);
        }
        stack
    }

    /// A figure in the frame that tells its basis.
    fn figure(&mut self, kind: Frame, text: &str, width: f32, node: Node) -> Stack {
        let (left, right, above, below) = room(kind);
        let set = Type::strong(SMALL.size);
        let lines = self.faces.set(text, set, width - left - right);
        let wide = lines.iter().map(|line| line.width).fold(0.0, f32::max);
        let mut words = Stack::default();
        words.lines(lines, left, node);
        let (wide, high) = (wide + left + right, words.height + above + below);
        let drawn = frame(
            kind,
            f64::from(wide / FRAMED),
            f64::from(high / FRAMED),
            0.0,
        );
        let mut stack = self.drawing(&drawn, FRAMED, None, None);
        stack.stack(words, 0.0, above);
        stack
    }
}

/// Room between a frame and its figure: left, right, above, below.
const fn room(kind: Frame) -> (f32, f32, f32, f32) {
    match kind {
        Frame::Label | Frame::Unknown | Frame::LeaveAlone => (8.0, 8.0, 3.5, 3.0),
        Frame::Document => (5.0, 8.0, 3.5, 3.0),
        Frame::Table => (13.0, 5.0, 5.5, 2.5),
        Frame::Calculation => (5.0, 5.0, 3.5, 3.0),
    }
}

/// The tag of a bay, square, or of a point, round at its ends.
pub(super) fn tagged(tag: &Tag) -> Drawing {
    match tag {
        Tag::Bay(word) => baywalk_shapes::tag::tag(word, baywalk_shapes::tag::Weight::Plain),
        Tag::Point(word) => round_tag(word),
    }
}

fn round_tag(word: &str) -> Drawing {
    let (height, edge) = (20.0, 0.8);
    let width = (width_of(word, Size::Tag) + 12.0).max(height + 4.0);
    let end = height / 2.0;
    let mut drawing = Drawing::new(width, height);
    let around = Path::from((end, edge))
        .to(width - end, edge)
        .arc((width - end, end), end - edge, -90.0, 180.0)
        .to(end, height - edge)
        .arc((end, end), end - edge, 90.0, 180.0)
        .close();
    drawing.stroke(Role::Ink, 1.6, around);
    let label = Label {
        text: word.to_owned(),
        x: width / 2.0,
        y: end + Size::Tag.drop(),
        anchor: Anchor::Middle,
        size: Size::Tag,
    };
    drawing.label(Role::Ink, label);
    drawing
}
