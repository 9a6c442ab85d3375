//! The cautions that hold for whoever works by this report.

use super::view::View;
use crate::sheet::Block;

pub(super) fn blocks(view: &View<'_>) -> Vec<Block> {
    let lines = [
        "caution-label-first",
        "caution-qualified",
        "report-caution-prove",
        "caution-battery",
        "caution-solar",
        "caution-method",
        "report-caution-limits",
    ];
    vec![Block::Caution {
        title: view.say("report-caution-title"),
        lines: lines.iter().map(|key| view.say(key)).collect(),
    }]
}
