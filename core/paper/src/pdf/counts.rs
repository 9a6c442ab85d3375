//! Figures with their drawings and words, six beside each other, or three in a column.

use super::line::Type;
use super::setter::Setter;
use super::size::points;
use super::stack::Stack;
use super::tree::Kind;
use crate::sheet::Count;

/// The room of one.
const ROOM: f32 = 84.0;

impl Setter<'_> {
    pub(super) fn counts(&mut self, counts: &[Count]) {
        let list = self.node(Kind::List);
        let room = self.flow.width();
        let (beside, share) = if room < ROOM * 6.0 {
            (3, 3.0)
        } else {
            (6, 6.0)
        };
        let step = room / share;
        self.flow.gap(3.0);
        for row in counts.chunks(beside) {
            let mut stack = Stack::default();
            let mut x = 0.0;
            for count in row {
                let item = self.under(list, Kind::Item);
                let said = self.under(item, Kind::Said);
                let mut cell = Stack::default();
                let figure = count.figure.to_string();
                let figure = self.faces.set(&figure, Type::strong(14.0), step);
                let wide = figure.first().map_or(0.0, |line| line.width);
                cell.lines(figure, 0.0, said);
                let mut at = wide + 5.0;
                for (drawing, height) in [(&count.glyph, 14.0), (&count.pattern, 12.0)] {
                    let scale = height / points(drawing.height).max(1.0);
                    cell.stack(self.drawing(drawing, scale, None, None), at, 2.0);
                    at += points(drawing.width) * scale + 4.0;
                }
                let mut words = Stack::default();
                let word = self.faces.set(&count.word, Type::strong(8.0), step - 4.0);
                words.lines(word, 0.0, said);
                let y = cell.height;
                cell.stack(words, 0.0, y);
                stack.stack(cell, x, 0.0);
                x += step;
            }
            stack.gap(3.0);
            self.flow.whole_stack(stack);
        }
    }
}
