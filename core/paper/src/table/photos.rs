//! `photos.csv`: one row for each photo that a walk names: what it shows, its digest and its caption.

use super::facts::each_walk;
use super::findings::about;
use super::{Cell, RigFacts, Table};

const COLUMNS: [&str; 7] = ["rig", "walk", "day", "about", "code", "sha256", "caption"];

pub(super) fn table(rigs: &[RigFacts]) -> Table {
    let rows = each_walk(rigs).flat_map(|walk| {
        let photos = walk.state.photos.iter();
        photos.map(|(shown, digest, caption)| {
            let [kind, code] = about(&walk.book, *shown);
            [
                Cell::text(&walk.book.rig.name),
                Cell::plain(walk.state.id),
                walk.state.started.date().into(),
                kind,
                code,
                Cell::text(digest),
                Cell::text(caption),
            ]
        })
    });
    Table::new("photos", &COLUMNS, rows.collect())
}
