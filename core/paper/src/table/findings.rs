//! `findings.csv`: one row a finding, with what was decided last.

use super::{Cell, RigFacts, Table};
use baywalk_domain::finding::{About, Finding};
use baywalk_domain::rig::Book;

const COLUMNS: [&str; 12] = [
    "rig", "finding", "raised", "walk", "kind", "urgency", "about", "code", "open", "decision",
    "by", "note",
];

pub(super) fn table(rigs: &[RigFacts]) -> Table {
    let rows = rigs.iter().flat_map(|rig| {
        let findings = rig.findings.iter();
        findings.map(|finding| row(&rig.book, finding))
    });
    Table::new("findings", &COLUMNS, rows.collect())
}

fn row(book: &Book, finding: &Finding) -> [Cell; 12] {
    let [about, code] = about(book, finding.raised.about);
    let decided = finding.follow_up.as_ref();
    [
        Cell::text(&book.rig.name),
        Cell::plain(finding.raised.id),
        finding.on.into(),
        finding.walk.map(Cell::plain).into(),
        Cell::code(finding.raised.kind),
        Cell::code(finding.raised.kind.urgency()),
        about,
        code,
        finding.is_open().into(),
        decided.map(|decided| Cell::code(decided.decision)).into(),
        decided.and_then(|decided| decided.by).into(),
        decided.map(|decided| Cell::text(&decided.note)).into(),
    ]
}

/// What it is about, and its code in the book.
pub(super) fn about(book: &Book, about: About) -> [Cell; 2] {
    let named =
        |kind: &str, code: Option<String>| [Cell::plain(kind), code.map(Cell::plain).into()];
    match about {
        About::Rig => named("rig", None),
        About::Bay(id) => named("bay", book.bay(id).map(|bay| bay.code.to_string())),
        About::Point(id) => named("point", book.point(id).map(|point| point.code.to_string())),
        About::Source(id) => named("source", book.source(id).map(|of| of.code.to_string())),
        About::Reading(step) => [Cell::plain("reading"), Cell::code(step)],
    }
}
