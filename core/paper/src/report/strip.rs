//! The rig from the side, with what was found in each bay.

use super::view::View;
use crate::sheet::Block;
use baywalk_domain::coded::Coded;
use baywalk_domain::rig::Bay;
use baywalk_domain::walk::Grade;
use baywalk_shapes::strip::{Standing, strip};

/// Width of the drawing in its own units; the page shows it as wide as it has room.
const WIDTH: f64 = 480.0;

/// The drawing, with what is read aloud in its place; nothing where there are no bays.
pub(super) fn drawing(view: &View<'_>) -> Vec<Block> {
    let book = view.facts.book;
    let standings = Standing::of_walk(view.facts.walk, book);
    let bays = book.bays_in_order();
    if bays.is_empty() {
        return Vec::new();
    }
    let lines = bays.iter().filter_map(|bay| {
        let standing = standings.get(&bay.id)?;
        Some(line(view, bay, standing))
    });
    let lines: Vec<String> = lines.collect();
    vec![Block::Strip {
        drawing: strip(book, &standings, WIDTH),
        title: view.say("report-strip"),
        description: lines.join(" "),
    }]
}

/// How the drawing is read.
pub(super) fn legend(view: &View<'_>) -> Option<Block> {
    let bays = view.facts.book.bays_in_order();
    (!bays.is_empty()).then(|| Block::Text(view.say("report-strip-reads")))
}

/// What was found in a bay, as a sentence.
fn line(view: &View<'_>, bay: &Bay, standing: &Standing) -> String {
    let grades = Grade::ALL
        .iter()
        .filter(|grade| standing.count(**grade) > 0);
    let mut told: Vec<String> = grades
        .map(|grade| format!("{} {}", standing.count(*grade), view.code(*grade)))
        .collect();
    let rest = standing
        .total
        .saturating_sub(standing.grades.values().sum());
    if rest > 0 || told.is_empty() {
        told.push(view.count("report-strip-rest", rest));
    }
    let args = [
        ("bay", view.bay_name(bay.id)),
        ("stage", view.code(standing.stage)),
        ("told", told.join(", ")),
    ];
    let args = args.each_ref().map(|(name, text)| (*name, text.as_str()));
    view.fill("report-strip-bay", &args)
}
