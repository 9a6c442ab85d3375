//! Sets text and drawings into stacks, and stacks onto pages.

use super::faces::{BOX, Faces};
use super::flow::Flow;
use super::line::Type;
use super::size::Paper;
use super::stack::{Stack, Thing};
use super::tree::{Kind, Node};
use super::{Front, Unwritten, emit, numbered};
use crate::photo::Photos;
use crate::sheet::Part;
use baywalk_words::{Arg, Words};
use std::num::NonZeroU16;

/// Height of running text.
pub(super) const BODY: Type = Type::plain(9.0);

/// The pages, the type, and the section that is being written.
pub(super) struct Setter<'a> {
    pub(super) flow: Flow,
    pub(super) faces: Faces,
    pub(super) section: Option<Node>,
    pub(super) photos: &'a dyn Photos,
}

impl<'a> Setter<'a> {
    pub(super) fn new(paper: Paper, photos: &'a dyn Photos) -> Result<Self, Unwritten> {
        Ok(Self {
            flow: Flow::new(paper),
            faces: Faces::read().ok_or_else(|| Unwritten("type".into()))?,
            section: None,
            photos,
        })
    }

    /// The title, and the lines under it.
    pub(super) fn head(&mut self, title: &str, under: &[String]) {
        let width = self.flow.width();
        self.flow.mark(1, title);
        let node = self.node(heading(1, title));
        let mut stack = Stack::default();
        stack.lines(self.faces.set(title, Type::strong(17.0), width), 0.0, node);
        stack.gap(3.0);
        let node = self.node(Kind::Paragraph);
        let under = under.join(" · ");
        stack.lines(self.faces.set(&under, BODY, width), 0.0, node);
        self.flow.stack(stack);
    }

    /// A part with its heading under a line.
    pub(super) fn part(&mut self, part: &Part) {
        self.section = Some(self.flow.tree.add(None, Kind::Section));
        if part.apart && self.flow.pages.len() == 1 {
            self.flow.turn();
        }
        self.flow.gap(11.0);
        self.flow.need(60.0);
        self.flow.mark(1, &part.title);
        self.flow.rule(1.2);
        self.title(2, &part.title, Type::strong(12.5), 4.0, None);
        for block in &part.blocks {
            self.block(block);
        }
    }

    /// A heading, with the tag of a bay before it where it has one.
    pub(super) fn title(
        &mut self,
        level: u16,
        text: &str,
        set: Type,
        above: f32,
        tag: Option<&str>,
    ) {
        let node = self.node(heading(level, text));
        let mut stack = Stack::default();
        stack.gap(above);
        let y = stack.height;
        let mut x = 0.0;
        if let Some(tag) = tag {
            let tag = baywalk_shapes::tag::tag(tag, baywalk_shapes::tag::Weight::Plain);
            let drawn = self.drawing(&tag, 0.62, Some(node), None);
            stack.stack(drawn, 0.0, y);
            x = super::size::points(tag.width) * 0.62 + 5.0;
        }
        let lines = self.faces.set(text, set, self.flow.width() - x);
        let mut words = Stack::default();
        words.lines(lines, x, node);
        stack.stack(words, 0.0, y);
        stack.gap(3.0);
        self.flow.whole_stack(stack);
    }

    /// A paragraph.
    pub(super) fn text(&mut self, text: &str, set: Type) {
        let node = self.node(Kind::Paragraph);
        let mut stack = Stack::default();
        stack.lines(self.faces.set(text, set, self.flow.width()), 0.0, node);
        self.flow.need(stack.height.min(set.size * 4.0));
        self.flow.stack(stack);
        self.flow.gap(3.0);
    }

    /// The last line of the sheet, under a line.
    pub(super) fn foot(&mut self, text: &str) {
        self.section = None;
        self.flow.gap(12.0);
        self.flow.need(24.0);
        self.flow.rule(1.2);
        self.flow.gap(3.0);
        self.text(text, BODY);
    }

    /// Says which letters the type lacks, where some were asked for.
    pub(super) fn lacking(&mut self, words: &Words) {
        if self.faces.lacking.is_empty() {
            return;
        }
        let told = self.faces.lacking.iter().take(40);
        let told: Vec<String> = told
            .map(|(letter, count)| format!("U+{:04X} ({count})", u32::from(*letter)))
            .collect();
        let kinds = self.faces.lacking.len();
        let args = [
            ("box", Arg::from(BOX.to_string())),
            ("letters", told.join(", ").into()),
            ("kinds", kinds.into()),
        ];
        self.text(&words.fill("report-lacking", &args), BODY);
    }

    /// The pages as bytes.
    pub(super) fn emit(mut self, words: &Words, front: &Front<'_>) -> Result<Vec<u8>, Unwritten> {
        let number = |page, pages| numbered(words, page, pages);
        emit::emit(&self.flow, &mut self.faces, self.photos, front, &number)
    }

    /// A node of the section that is being written.
    pub(super) fn node(&mut self, kind: Kind) -> Node {
        self.flow.tree.add(self.section, kind)
    }

    /// A node of another.
    pub(super) fn under(&mut self, parent: Node, kind: Kind) -> Node {
        self.flow.tree.add(Some(parent), kind)
    }

    /// Puts a stack into a frame that is drawn anew on each page.
    pub(super) fn framed(&mut self, mut stack: Stack, thickness: f32, inset: f32) {
        let width = self.flow.width();
        self.flow.need((stack.height + inset * 2.0).min(60.0));
        while !stack.items.is_empty() {
            let taken = stack.take(self.flow.room() - inset * 2.0);
            let taken = if taken.items.is_empty() {
                self.flow.turn();
                stack.take_first()
            } else {
                taken
            };
            let mut boxed = Stack::default();
            let height = taken.height + inset * 2.0;
            boxed.add(0.0, height, Thing::Frame(width, height, thickness), None);
            boxed.stack(taken, 0.0, inset);
            self.flow.put(boxed);
            if !stack.items.is_empty() {
                self.flow.turn();
            }
        }
    }
}

/// A heading of a rank.
pub(super) fn heading(level: u16, text: &str) -> Kind {
    let level = NonZeroU16::new(level).unwrap_or(NonZeroU16::MIN);
    Kind::Heading(level, text.to_owned())
}
