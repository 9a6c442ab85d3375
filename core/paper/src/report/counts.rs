//! The counts by grade, each with its drawing, its pattern in the strip, and its word.

use super::view::View;
use crate::sheet::{Block, Count};
use baywalk_domain::coded::Coded;
use baywalk_domain::walk::Grade;
use baywalk_shapes::found::graded;
use baywalk_shapes::hatch::swatch;

pub(super) fn blocks(view: &View<'_>) -> Vec<Block> {
    let grades = &view.facts.summary.grades;
    let counts = Grade::ALL.iter().filter(|grade| {
        let reached = grades.contains_key(*grade);
        reached || !matches!(grade, Grade::LookedAt | Grade::NotJudged)
    });
    let counts = counts.map(|grade| Count {
        figure: grades.get(grade).copied().unwrap_or(0),
        glyph: graded(*grade),
        pattern: swatch(*grade, 36.0, 24.0),
        word: view.headed(*grade),
    });
    let mut blocks = vec![
        heading(view, "report-counts"),
        Block::Counts(counts.collect()),
        Block::Text(gone_through(view)),
    ];
    if grades.contains_key(&Grade::LookedAt) {
        blocks.push(Block::Text(view.say("report-looked-at-means")));
    }
    blocks
}

/// A heading inside a part.
pub(super) fn heading(view: &View<'_>, key: &str) -> Block {
    Block::Heading {
        tag: None,
        text: view.say(key),
    }
}

fn gone_through(view: &View<'_>) -> String {
    let summary = view.facts.summary;
    let done = summary.done.to_string();
    let total = view.count("unit-points", summary.total);
    view.fill("report-gone-through", &[("done", &done), ("total", &total)])
}
