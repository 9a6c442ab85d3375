//! `lives.csv`: one row for each life of a terminal: from when it was tight until it was found to have
//! moved, or to the last day on which it still held. The ages stand as the interval that is known.

use super::{Cell, RigFacts, Table};
use baywalk_domain::due::Lived;
use baywalk_domain::rig::Book;

const COLUMNS: [&str; 9] = [
    "rig",
    "point",
    "fastening",
    "tight_since",
    "set_by_hand",
    "held_on",
    "moved_on",
    "held_months",
    "moved_months",
];

pub(super) fn table(rigs: &[RigFacts]) -> Table {
    let rows = rigs.iter().flat_map(|rig| {
        let lives = rig.lives.iter();
        lives.map(|life| row(&rig.book, life))
    });
    Table::new("lives", &COLUMNS, rows.collect())
}

fn row(book: &Book, lived: &Lived) -> [Cell; 9] {
    [
        Cell::text(&book.rig.name),
        book.point(lived.point)
            .map(|point| Cell::plain(&point.code))
            .into(),
        Cell::code(lived.kind),
        lived.tight.since.into(),
        lived.tight.set.into(),
        lived.tight.held.into(),
        lived.moved.into(),
        Cell::number(lived.life.after(), 4),
        lived.life.by().map(|by| Cell::number(by, 4)).into(),
    ]
}
