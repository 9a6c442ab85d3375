//! The sources of the values used: every label, document and table named once.

use super::figure::figure;
use super::view::View;
use crate::sheet::{Block, Cell};
use baywalk_domain::coded::Coded;
use baywalk_domain::due::SETTLE_MILES;
use baywalk_domain::published::Head;
use baywalk_domain::torque::{BasisKind, TableId};
use std::collections::BTreeMap;

pub(super) fn blocks(view: &View<'_>) -> Vec<Block> {
    let mut counts: BTreeMap<(BasisKind, &str), (Option<&Head>, usize)> = BTreeMap::new();
    let mut titles: Vec<(String, &Head)> = Vec::new();
    for table in TableId::ALL.iter().filter_map(|id| id.table()) {
        titles.push((title(table.head()), table.head()));
    }
    for point in &view.facts.book.points {
        let Some(record) = view.record(point.id) else {
            continue;
        };
        if let Some(figure) = figure(point, Some(record)) {
            let known = titles
                .iter()
                .find(|(title, _)| figure.source.starts_with(title));
            let name = known.map_or(figure.source, |(title, _)| title.as_str());
            let head = known.map(|(_, head)| *head);
            counts.entry((figure.basis, name)).or_insert((head, 0)).1 += 1;
        }
    }
    let rows = counts.into_iter().map(|((basis, name), (head, count))| {
        let known = head.map(|head| view.code(head.known));
        vec![
            Cell::of(view.headed(basis)),
            Cell::default().with([name.to_owned()]).with(known),
            Cell::default().with([view.count("unit-points", count)]),
        ]
    });
    let columns = [
        ("report-col-basis", 22),
        ("report-col-source-name", 62),
        ("report-col-used", 16),
    ];
    let table = view.table(view.say("report-sources"), &columns, rows.collect());
    let none = || Block::Text(view.say("report-no-sources"));
    vec![
        table.unwrap_or_else(none),
        Block::Text(view.say("report-own")),
        Block::List(own(view)),
    ]
}

/// How the source of a figure from this table begins.
fn title(head: &Head) -> String {
    format!("{}, {}, {}", head.standard, head.table, head.edition)
}

/// The rules of this project that bear on the values.
fn own(view: &View<'_>) -> Vec<String> {
    let miles = format!("{SETTLE_MILES:.0}");
    vec![
        view.say("report-own-check"),
        view.say("report-own-dead"),
        view.fill("report-own-second-look", &[("miles", &miles)]),
    ]
}
