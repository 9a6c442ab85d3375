//! Things set one under another, that a page may take as a whole or in part.

use super::line::Line;
use super::tree::Node;
use baywalk_shapes::Drawing;

/// What is put on a page.
#[derive(Clone)]
pub(super) enum Thing {
    /// A line of text.
    Line(Line),
    /// A drawing without its labels, so many points a unit.
    Drawing(Drawing, f32),
    /// A picture by its digest, of a width and height.
    Picture(String, f32, f32),
    /// A level line of a length and a thickness.
    Rule(f32, f32),
    /// An empty frame of a width, a height and a thickness.
    Frame(f32, f32, f32),
}

/// A thing with its place.
#[derive(Clone)]
pub(super) struct Item {
    pub(super) x: f32,
    /// Its upper edge.
    pub(super) y: f32,
    pub(super) height: f32,
    pub(super) thing: Thing,
    /// What it belongs to; none where it is ornament.
    pub(super) node: Option<Node>,
}

/// Things with their places in a column of the page.
#[derive(Clone, Default)]
pub(super) struct Stack {
    pub(super) items: Vec<Item>,
    pub(super) height: f32,
}

impl Stack {
    /// Adds lines under what is there.
    pub(super) fn lines(&mut self, lines: Vec<Line>, x: f32, node: Node) {
        for line in lines {
            self.line(line, x, Some(node));
        }
    }

    /// Adds a line under what is there.
    pub(super) fn line(&mut self, line: Line, x: f32, node: Option<Node>) {
        let height = line.height;
        self.add(x, height, Thing::Line(line), node);
    }

    /// Adds a thing under what is there.
    pub(super) fn add(&mut self, x: f32, height: f32, thing: Thing, node: Option<Node>) {
        let y = self.height;
        self.put(Item {
            x,
            y,
            height,
            thing,
            node,
        });
    }

    /// Puts a thing at its own place.
    pub(super) fn put(&mut self, item: Item) {
        self.height = self.height.max(item.y + item.height);
        self.items.push(item);
    }

    /// Puts another stack beside or under what is there.
    pub(super) fn stack(&mut self, other: Self, x: f32, y: f32) {
        for mut item in other.items {
            item.x += x;
            item.y += y;
            self.put(item);
        }
        self.height = self.height.max(y + other.height);
    }

    /// Leaves so much room.
    pub(super) const fn gap(&mut self, height: f32) {
        self.height += height;
    }

    /// Takes from above what fits in so much room, whole things only; nothing may fit.
    pub(super) fn take(&mut self, room: f32) -> Self {
        if self.height <= room {
            return std::mem::take(self);
        }
        let places = self.places().into_iter();
        self.part(
            places
                .take_while(|place| *place <= room)
                .last()
                .unwrap_or(0.0),
        )
    }

    /// Takes the first thing and all beside it, whatever room it needs.
    pub(super) fn take_first(&mut self) -> Self {
        match self.places().first() {
            Some(place) => self.part(*place),
            None => std::mem::take(self),
        }
    }

    /// Takes what lies above a place.
    fn part(&mut self, cut: f32) -> Self {
        let (above, mut below): (Vec<Item>, Vec<Item>) = std::mem::take(&mut self.items)
            .into_iter()
            .partition(|item| item.y < cut);
        below.iter_mut().for_each(|item| item.y -= cut);
        self.items = below;
        self.height -= cut;
        Self {
            items: above,
            height: cut,
        }
    }

    /// The places below the first thing at which nothing is cut through, from above.
    fn places(&self) -> Vec<f32> {
        let spans = self.items.iter();
        let mut spans: Vec<(f32, f32)> = spans.map(|item| (item.y, item.y + item.height)).collect();
        spans.sort_by(|a, b| a.0.total_cmp(&b.0));
        let (mut places, mut end) = (Vec::new(), 0.0_f32);
        for (begin, below) in spans {
            if begin > 0.01 && end > 0.0 && end <= begin + 0.01 {
                places.push(begin);
            }
            end = end.max(below);
        }
        places.dedup();
        places
    }
}

#[cfg(test)]
mod tests {
    use super::{Item, Stack, Thing};

    fn item(y: f32, height: f32) -> Item {
        Item {
            x: 0.0,
            y,
            height,
            thing: Thing::Rule(1.0, 1.0),
            node: None,
        }
    }

    fn stack(spans: &[(f32, f32)]) -> Stack {
        let mut stack = Stack::default();
        for (y, height) in spans {
            stack.put(item(*y, *height));
        }
        stack
    }

    #[test]
    fn nothing_is_cut_through() {
        let mut beside = stack(&[(0.0, 10.0), (0.0, 25.0), (10.0, 10.0), (25.0, 10.0)]);
        assert_eq!(beside.take(24.0).items.len(), 0);
        assert_eq!(beside.take(26.0).items.len(), 3);
        assert_eq!((beside.items.len(), beside.height), (1, 10.0));
    }

    #[test]
    fn the_first_thing_is_taken_however_high_it_is() {
        let mut high = stack(&[(0.0, 900.0), (880.0, 40.0), (920.0, 5.0)]);
        assert_eq!(high.take_first().items.len(), 2);
        assert_eq!(high.take_first().items.len(), 1);
        assert!(high.take_first().items.is_empty() && high.items.is_empty());
    }
}
