//! Pages, filled from above.

use super::size::Paper;
use super::stack::{Item, Stack, Thing};
use super::tree::Tree;

/// Free edge of a page, left and right.
const SIDE: f32 = 42.0;
/// Free edge above.
const ABOVE: f32 = 34.0;
/// Free edge below, with the number of the page in it.
const BELOW: f32 = 42.0;

/// Pages as they are filled.
pub(super) struct Flow {
    pub(super) paper: Paper,
    pub(super) pages: Vec<Vec<Item>>,
    pub(super) tree: Tree,
    pub(super) marks: Vec<Bookmark>,
    /// Where the next thing goes, from the upper edge of the page.
    y: f32,
    /// Left edge and width of the column that is written, from the left edge of the text.
    column: (f32, f32),
}

/// A place on a page to come back to.
#[derive(Clone, Copy)]
pub(super) struct Place {
    page: usize,
    y: f32,
}

/// A heading that is found again: its rank from 1, its words, its page and place.
pub(super) struct Bookmark {
    pub(super) level: u16,
    pub(super) text: String,
    pub(super) page: usize,
    pub(super) y: f32,
}

impl Flow {
    pub(super) fn new(paper: Paper) -> Self {
        Self {
            paper,
            pages: vec![Vec::new()],
            tree: Tree::default(),
            marks: Vec::new(),
            y: ABOVE,
            column: (0.0, paper.size().0 - SIDE * 2.0),
        }
    }

    /// How wide text may be.
    pub(super) const fn width(&self) -> f32 {
        self.column.1
    }

    /// Writes in a column from now on, by its left edge and width; gives the one before.
    pub(super) const fn in_column(&mut self, column: (f32, f32)) -> (f32, f32) {
        std::mem::replace(&mut self.column, column)
    }

    /// Where the next thing goes.
    pub(super) fn place(&self) -> Place {
        Place {
            page: self.pages.len(),
            y: self.y,
        }
    }

    /// Goes back to a place, as long as it is on this page.
    pub(super) fn back_to(&mut self, place: Place) {
        if place.page == self.pages.len() {
            self.y = place.y;
        }
    }

    /// Goes on below a place, as long as it is on this page.
    pub(super) fn below(&mut self, place: Place) {
        if place.page == self.pages.len() {
            self.y = self.y.max(place.y);
        }
    }

    /// How much room a whole page has.
    pub(super) fn whole(&self) -> f32 {
        self.paper.size().1 - ABOVE - BELOW
    }

    /// How much room is left on this page.
    pub(super) fn room(&self) -> f32 {
        self.paper.size().1 - BELOW - self.y
    }

    /// Leaves so much room, but none at the head of a page.
    pub(super) fn gap(&mut self, height: f32) {
        if self.y > ABOVE {
            self.y += height;
        }
    }

    /// Begins a page where there is less room than told, unless no page has as much.
    pub(super) fn need(&mut self, height: f32) {
        if height > self.room() && self.y > ABOVE && height <= self.whole() {
            self.turn();
        }
    }

    /// Begins a page.
    pub(super) fn turn(&mut self) {
        self.pages.push(Vec::new());
        self.y = ABOVE;
    }

    /// Notes that a heading stands at this place.
    pub(super) fn mark(&mut self, level: u16, text: &str) {
        self.marks.push(Bookmark {
            level,
            text: text.to_owned(),
            page: self.pages.len() - 1,
            y: self.y,
        });
    }

    /// Puts a stack that stays together on a page.
    pub(super) fn whole_stack(&mut self, stack: Stack) {
        self.need(stack.height);
        self.stack(stack);
    }

    /// Puts a stack on as many pages as it needs.
    pub(super) fn stack(&mut self, mut stack: Stack) {
        loop {
            let taken = self.part(&mut stack);
            self.put(taken);
            if stack.items.is_empty() {
                return;
            }
            self.turn();
        }
    }

    /// What of a stack this page takes; on an empty page never nothing.
    pub(super) fn part(&self, stack: &mut Stack) -> Stack {
        let taken = stack.take(self.room());
        if taken.items.is_empty() && self.y <= ABOVE {
            return stack.take_first();
        }
        taken
    }

    /// Puts on this page what was found to fit.
    pub(super) fn put(&mut self, stack: Stack) {
        let (left, y) = (SIDE + self.column.0, self.y);
        if let Some(page) = self.pages.last_mut() {
            page.extend(stack.items.into_iter().map(|item| Item {
                x: item.x + left,
                y: item.y + y,
                ..item
            }));
        }
        self.y += stack.height;
    }

    /// A level line over the whole width.
    pub(super) fn rule(&mut self, thickness: f32) {
        let mut stack = Stack::default();
        stack.add(0.0, thickness, Thing::Rule(self.width(), thickness), None);
        self.put(stack);
    }
}
