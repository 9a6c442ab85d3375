//! Tables: the head again on each page, rows whole where a page has room for them.

use super::cell::SMALL;
use super::line::Type;
use super::setter::Setter;
use super::stack::{Item, Stack, Thing};
use super::tree::{Kind, Node};
use crate::sheet::{Cell, Table};

/// Room between columns.
const BETWEEN: f32 = 7.0;
/// Room above and below the text of a row.
const AROUND: f32 = 2.0;

impl Setter<'_> {
    pub(super) fn table(&mut self, table: &Table) {
        let node = self.node(Kind::Table);
        let caption = self.under(node, Kind::Caption);
        let mut named = Stack::default();
        let set = Type::strong(9.0);
        named.lines(
            self.faces.set(&table.caption, set, self.flow.width()),
            0.0,
            caption,
        );
        named.gap(1.5);
        let edges = self.edges(table);
        let head = self.under(node, Kind::TableHead);
        let row = self.under(head, Kind::Row);
        let head = self.table_head(table, &edges, row);
        let body = self.under(node, Kind::TableBody);
        let mut again = head.clone();
        again.items.iter_mut().for_each(|item| item.node = None);
        let first = table
            .rows
            .first()
            .map(|row| self.table_row(row, &edges, body));
        let first_height = first.as_ref().map_or(0.0, |row| row.height);
        self.flow.gap(3.0);
        let needed = named.height + head.height;
        self.flow.need(needed + first_height.min(120.0));
        self.flow.stack(named);
        self.flow.put(head);
        if let Some(first) = first {
            self.row_on_page(first, &again);
        }
        for cells in table.rows.iter().skip(1) {
            let row = self.table_row(cells, &edges, body);
            self.row_on_page(row, &again);
        }
        self.flow.gap(7.0);
    }

    /// A row on this page or, behind the head again, on the next.
    fn row_on_page(&mut self, mut row: Stack, head: &Stack) {
        if row.height > self.flow.room() && row.height + head.height <= self.flow.whole() {
            self.flow.turn();
            self.flow.put(head.clone());
        }
        loop {
            let taken = row.take(self.flow.room());
            let stuck = taken.items.is_empty() && !row.items.is_empty();
            self.flow.put(taken);
            if row.items.is_empty() {
                break;
            }
            self.flow.turn();
            self.flow.put(head.clone());
            if stuck && row.height > self.flow.room() {
                let first = row.take_first();
                self.flow.put(first);
            }
        }
        self.flow.rule(0.4);
    }

    /// Left edge and width of each column.
    fn edges(&self, table: &Table) -> Vec<(f32, f32)> {
        let all: f32 = table
            .columns
            .iter()
            .map(|column| f32::from(column.share))
            .sum();
        let unit = self.flow.width() / all.max(1.0);
        let mut x = 0.0;
        let columns = table.columns.iter().map(|column| {
            let width = f32::from(column.share) * unit;
            let edge = (x, width - BETWEEN);
            x += width;
            edge
        });
        columns.collect()
    }

    fn table_head(&mut self, table: &Table, edges: &[(f32, f32)], row: Node) -> Stack {
        let mut stack = Stack::default();
        for (column, (x, width)) in table.columns.iter().zip(edges) {
            let node = self.under(row, Kind::ColumnHead);
            let set = Type::strong(SMALL.size);
            let mut words = Stack::default();
            words.lines(self.faces.set(&column.heading, set, *width), *x, node);
            stack.stack(words, 0.0, 0.0);
        }
        stack.gap(1.5);
        let width = self.flow.width();
        stack.add(0.0, 1.0, Thing::Rule(width, 1.0), None);
        stack
    }

    fn table_row(&mut self, cells: &[Cell], edges: &[(f32, f32)], body: Node) -> Stack {
        let row = self.under(body, Kind::Row);
        let mut stack = Stack::default();
        for (place, (cell, (x, width))) in cells.iter().zip(edges).enumerate() {
            let kind = if place == 0 {
                Kind::RowHead
            } else {
                Kind::Cell
            };
            let node = self.under(row, kind);
            let mut set = self.cell(cell, *width, node);
            if set.items.is_empty() {
                set.put(self.nothing(node));
            }
            stack.stack(set, *x, AROUND);
        }
        stack.gap(AROUND);
        stack
    }

    /// An empty cell is there all the same, so that those after it keep their columns.
    fn nothing(&mut self, node: Node) -> Item {
        let line = self.faces.set(" ", SMALL, 10.0).into_iter().next();
        Item {
            x: 0.0,
            y: 0.0,
            height: 0.0,
            thing: line.map_or(Thing::Rule(0.0, 0.0), Thing::Line),
            node: Some(node),
        }
    }
}
