//! How each source was taken away, and whether it came back.

use super::view::View;
use crate::sheet::{Block, Cell};
use baywalk_domain::isolation::away_order;
use baywalk_domain::rig::{Presence, Source};
use baywalk_domain::walk::Away;

pub(super) fn blocks(view: &View<'_>) -> Vec<Block> {
    let sources = away_order(view.facts.book.live_sources());
    let rows = sources.into_iter().map(|source| {
        let name = Cell::of(&source.name)
            .point(source.code.as_str())
            .with([view.headed(source.kind)])
            .with((source.presence == Presence::NotSure).then(|| view.code(source.presence)));
        vec![
            name,
            taken_away(view, source),
            Cell::default().with(back(view, source)),
        ]
    });
    let columns = [
        ("report-col-source", 28),
        ("report-col-away", 52),
        ("report-col-back", 20),
    ];
    let person = [("person", view.facts.walk.person.as_str())];
    let caption = view.fill("report-isolated-caption", &person);
    let table = view.table(caption, &columns, rows.collect());
    vec![table.unwrap_or_else(|| Block::Text(view.say("report-sources-none")))]
}

fn taken_away(view: &View<'_>, source: &Source) -> Cell {
    let walk = view.facts.walk;
    let when = walk
        .away_at
        .get(&source.id)
        .map(|at| view.fill("report-at-time", &[("time", &view.time(at))]));
    let cell = match walk.away.get(&source.id) {
        Some(Away::Isolated(note)) => {
            Cell::of(view.headed(source.isolation)).with([source.how.clone(), note.clone()])
        }
        Some(Away::NotFound(note)) => {
            Cell::of(view.say("report-away-not-found")).with([note.clone()])
        }
        Some(Away::Stays(why)) => Cell::of(view.say("report-away-stays")).with([why.clone()]),
        None => return Cell::of(view.say("report-away-never")),
    };
    let isolated = matches!(walk.away.get(&source.id), Some(Away::Isolated(_)));
    let wait = source.wait.as_ref().filter(|_| isolated).map(|wait| {
        let minutes = view.count("unit-minutes", usize::from(wait.minutes));
        view.fill(
            "report-wait",
            &[("minutes", &minutes), ("basis", &wait.basis)],
        )
    });
    cell.with(when).with(wait)
}

fn back(view: &View<'_>, source: &Source) -> Vec<String> {
    let walk = view.facts.walk;
    if let Some(why) = walk.left_away.get(&source.id) {
        return vec![view.say("report-back-left"), why.clone()];
    }
    if walk.restored.contains(&source.id) {
        return vec![view.say("report-back-restored")];
    }
    match walk.away.get(&source.id) {
        Some(Away::Isolated(_)) => vec![view.say("report-back-not")],
        _ => vec![view.say("report-back-never-away")],
    }
}
