//! Each kind of block on a page.

use super::line::Type;
use super::setter::{BODY, Setter};
use super::size::points;
use super::stack::{Stack, Thing};
use super::tree::Kind;
use crate::sheet::Block;
use baywalk_shapes::Drawing;

/// Room at the left of a list and inside a caution.
const INSET: f32 = 8.0;

impl Setter<'_> {
    pub(super) fn block(&mut self, block: &Block) {
        match block {
            Block::Heading { tag, text } => {
                if tag.is_some() {
                    self.flow.need(150.0);
                    self.flow.mark(2, text);
                }
                self.title(3, text, Type::strong(10.0), 7.0, tag.as_deref());
            }
            Block::Caution { title, lines } => self.caution(title, lines),
            Block::Text(text) => self.text(text, BODY),
            Block::List(lines) => self.list(lines),
            Block::Counts(counts) => self.counts(counts),
            Block::Strip {
                drawing,
                title,
                description,
            } => self.strip(drawing, title, description),
            Block::Terms(terms) => self.terms(terms),
            Block::Table(table) => self.table(table),
            Block::Photos(photos) => self.photos(photos),
            Block::Blanks(lines) => self.blanks(lines),
            Block::Beside(left, right) => self.beside(left, right),
        }
    }

    /// Two columns; where the left one runs over the page, the right one follows it.
    fn beside(&mut self, left: &[Block], right: &[Block]) {
        let whole = (0.0, self.flow.width());
        let half = whole.1 / 2.0 - INSET;
        self.flow.need(170.0);
        let above = self.flow.place();
        self.flow.in_column((0.0, half));
        left.iter().for_each(|block| self.block(block));
        let below = self.flow.place();
        self.flow.back_to(above);
        self.flow.in_column((half + INSET * 2.0, half));
        right.iter().for_each(|block| self.block(block));
        self.flow.below(below);
        self.flow.in_column(whole);
    }

    /// What must be seen before all else: in a thick frame, its title strong, and one line beside it
    /// where it is the only one.
    fn caution(&mut self, title: &str, lines: &[String]) {
        let width = self.flow.width() - INSET * 2.0;
        let node = self.node(super::setter::heading(3, title));
        let mut stack = Stack::default();
        let title = self.faces.set(title, Type::strong(BODY.size), width);
        let beside = title.first().map_or(0.0, |line| line.width + INSET);
        let beside = if lines.len() == 1 && title.len() == 1 && beside < width / 3.0 {
            beside
        } else {
            0.0
        };
        stack.lines(title, INSET, node);
        let list = self.node(Kind::List);
        for line in lines {
            let item = self.under(list, Kind::Item);
            let said = self.under(item, Kind::Said);
            let mut words = Stack::default();
            let set = self.faces.set(line, BODY, width - beside);
            words.lines(set, INSET + beside, said);
            let y = if beside > 0.0 { 0.0 } else { stack.height };
            stack.stack(words, 0.0, y);
        }
        self.flow.gap(2.0);
        self.framed(stack, 2.0, 4.0);
        self.flow.gap(4.0);
    }

    fn list(&mut self, lines: &[String]) {
        let list = self.node(Kind::List);
        for line in lines {
            let item = self.under(list, Kind::Item);
            let term = self.under(item, Kind::Term);
            let said = self.under(item, Kind::Said);
            let mut stack = Stack::default();
            let dot = self.faces.set("•", BODY, INSET);
            for line in dot.into_iter().take(1) {
                stack.line(line, 0.0, Some(term));
            }
            let mut words = Stack::default();
            let width = self.flow.width() - INSET;
            words.lines(self.faces.set(line, BODY, width), INSET, said);
            stack.stack(words, 0.0, 0.0);
            self.flow.stack(stack);
        }
        self.flow.gap(4.0);
    }

    /// The rig from the side; its words are those that stand for the drawing.
    fn strip(&mut self, drawing: &Drawing, title: &str, description: &str) {
        let scale = self.flow.width().min(335.0) / points(drawing.width);
        let node = self.node(Kind::Figure(format!("{title}. {description}")));
        self.flow.gap(4.0);
        let stack = self.drawing(drawing, scale, Some(node), Some(node));
        self.flow.whole_stack(stack);
        self.flow.gap(4.0);
    }

    /// Terms at the left, what is said of each at the right.
    fn terms(&mut self, terms: &[(String, Vec<String>)]) {
        let list = self.node(Kind::List);
        let left = self.flow.width() * 0.26;
        for (term, lines) in terms {
            let item = self.under(list, Kind::Item);
            let (named, said) = (self.under(item, Kind::Term), self.under(item, Kind::Said));
            let mut stack = Stack::default();
            stack.gap(1.5);
            let mut at_left = Stack::default();
            let strong = Type::strong(BODY.size);
            at_left.lines(self.faces.set(term, strong, left - INSET), 0.0, named);
            let mut at_right = Stack::default();
            for line in lines {
                let width = self.flow.width() - left;
                at_right.lines(self.faces.set(line, BODY, width), left, said);
            }
            stack.stack(at_left, 0.0, 1.5);
            stack.stack(at_right, 0.0, 1.5);
            stack.gap(1.5);
            self.flow.need(stack.height.min(80.0));
            self.flow.stack(stack);
            self.flow.rule(0.4);
        }
        self.flow.gap(5.0);
    }

    /// What is written by hand: a word, and a line beside it.
    fn blanks(&mut self, lines: &[String]) {
        let left = self.flow.width() * 0.36;
        for line in lines {
            let node = self.node(Kind::Paragraph);
            let mut stack = Stack::default();
            stack.gap(11.0);
            stack.lines(self.faces.set(line, BODY, left - INSET), 0.0, node);
            let y = stack.height - 1.0;
            let rule = super::stack::Item {
                x: left,
                y,
                height: 0.6,
                thing: Thing::Rule(self.flow.width() - left, 0.6),
                node: None,
            };
            stack.put(rule);
            self.flow.whole_stack(stack);
        }
        self.flow.gap(6.0);
    }
}
