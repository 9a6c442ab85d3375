//! How to see that a report tells what the ledger holds, and what that does not prove.

use super::view::View;
use crate::sheet::Block;

pub(super) fn blocks(view: &View<'_>) -> Vec<Block> {
    let ledger = view.facts.ledger;
    let terms = [
        ("report-term-digest", ledger.digest.to_owned()),
        ("report-term-sequence", ledger.sequence.to_string()),
        ("report-term-walk", view.facts.walk.id.to_string()),
        ("report-term-edition", view.facts.edition.to_owned()),
        (
            "report-term-printed",
            view.day_and_time(&view.facts.printed),
        ),
    ];
    let terms = terms
        .into_iter()
        .map(|(key, line)| (view.say(key), vec![line]));
    let lines = [
        "report-verify-how",
        "report-verify-proves",
        "report-verify-not",
        "report-verify-photos",
    ];
    vec![
        Block::Terms(terms.collect()),
        Block::List(lines.iter().map(|key| view.say(key)).collect()),
    ]
}

/// The line at the foot of the report.
pub(super) fn foot(view: &View<'_>) -> String {
    let printed = view.day_and_time(&view.facts.printed);
    let edition = [("edition", view.facts.edition), ("printed", &printed)];
    view.fill("report-foot", &edition)
}
