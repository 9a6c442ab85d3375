//! What stays out of service, what is alive, and what was not judged: said before all else.

use super::view::View;
use crate::sheet::Block;
use baywalk_domain::ids::{BayId, PointId};
use baywalk_domain::rig::Bay;
use baywalk_domain::walk::{AsFound, AsLeft, Away, Seen};

pub(super) fn blocks(view: &View<'_>) -> Vec<Block> {
    let mut blocks = power(view);
    let not_judged = not_judged(view);
    blocks.push(if not_judged.is_empty() {
        Block::Text(view.say("report-not-judged-none"))
    } else {
        caution(view, "report-not-judged", not_judged)
    });
    blocks
}

/// What stays out of service, and what is alive.
pub(super) fn power(view: &View<'_>) -> Vec<Block> {
    let mut blocks = Vec::new();
    let out: Vec<String> = open_bays(view)
        .chain(sources_away(view))
        .chain(circuits_out(view))
        .collect();
    blocks.push(if out.is_empty() {
        Block::Text(view.say("report-out-none"))
    } else {
        caution(view, "report-out", out)
    });
    let alive = alive(view);
    if !alive.is_empty() {
        blocks.push(caution(view, "report-alive", alive));
    }
    blocks
}

fn caution(view: &View<'_>, key: &str, lines: Vec<String>) -> Block {
    Block::Caution {
        title: view.say(key),
        lines,
    }
}

fn open_bays<'a>(view: &'a View<'_>) -> impl Iterator<Item = String> + 'a {
    let open = view.facts.summary.open.iter();
    open.map(|bay| view.fill("report-out-bay-open", &[("bay", &view.bay_name(*bay))]))
}

/// Sources left away, with why, and those that were not brought back without a word.
fn sources_away<'a>(view: &'a View<'_>) -> impl Iterator<Item = String> + 'a {
    let walk = view.facts.walk;
    let sources = view.facts.book.sources.iter();
    sources.filter_map(move |source| {
        let name = view.source_name(source.id);
        if let Some(why) = walk.left_away.get(&source.id) {
            let args = [("source", name.as_str()), ("why", why)];
            return Some(view.fill("report-out-source", &args));
        }
        let away = matches!(walk.away.get(&source.id), Some(Away::Isolated(_)));
        let still = away && !walk.restored.contains(&source.id);
        still.then(|| view.fill("report-out-source-still", &[("source", &name)]))
    })
}

fn circuits_out<'a>(view: &'a View<'_>) -> impl Iterator<Item = String> + 'a {
    let points = view.facts.walk.points.iter();
    points.filter_map(|(point, record)| match &record.left {
        Some(AsLeft::OutOfService { how }) => {
            let name = view.point_name(*point);
            Some(view.fill("report-out-circuit", &[("point", &name), ("how", how)]))
        }
        _ => None,
    })
}

fn alive(view: &View<'_>) -> Vec<String> {
    let alive = view.facts.summary.alive.iter();
    alive
        .filter(|alive| !alive.restored)
        .map(|alive| {
            let name = view.source_name(alive.source);
            let why = match view.facts.walk.away.get(&alive.source) {
                Some(Away::Stays(why)) if !why.trim().is_empty() => why.clone(),
                Some(Away::NotFound(_)) => view.say("report-alive-not-found"),
                _ => view.say("report-alive-never-away"),
            };
            view.fill("report-alive-source", &[("source", &name), ("why", &why)])
        })
        .collect()
}

/// One line a bay: the whole bay where none of it was judged, else its points with why.
fn not_judged(view: &View<'_>) -> Vec<String> {
    let book = view.facts.book;
    let missing = &view.facts.summary.not_judged;
    let in_bay = |bay: &Bay| -> Vec<PointId> {
        let here = missing.iter().copied();
        here.filter(|point| bay_of(view, *point) == Some(bay.id))
            .collect()
    };
    let mut bays: Vec<&Bay> = book.bays.iter().collect();
    bays.sort_by(|a, b| a.station.cmp(&b.station).then_with(|| a.code.cmp(&b.code)));
    bays.into_iter()
        .filter_map(|bay| Some((bay, in_bay(bay))).filter(|(_, points)| !points.is_empty()))
        .map(|(bay, points)| bay_line(view, bay, &points))
        .collect()
}

fn bay_of(view: &View<'_>, point: PointId) -> Option<BayId> {
    let book = view.facts.book;
    book.point(point).and_then(|point| book.bay_of(point))
}

fn bay_line(view: &View<'_>, bay: &Bay, points: &[PointId]) -> String {
    let name = view.bay_name(bay.id);
    let untouched = points.iter().all(|point| view.record(*point).is_none());
    if untouched && points.len() == view.facts.book.points_of(bay.id).len() {
        let all = view.count("report-not-judged-all", points.len());
        return view.fill("report-not-judged-bay", &[("bay", &name), ("points", &all)]);
    }
    let told: Vec<String> = points.iter().map(|point| point_why(view, *point)).collect();
    let told = told.join("; ");
    view.fill(
        "report-not-judged-bay",
        &[("bay", &name), ("points", &told)],
    )
}

fn point_why(view: &View<'_>, point: PointId) -> String {
    let record = view.record(point);
    let found = record.and_then(|record| record.found.as_ref());
    if let Some(Seen::NotLooked(why)) = record.and_then(|record| record.seen.as_ref()) {
        return told(view, point, why);
    }
    let why = match found.map(|found| &found.found) {
        Some(AsFound::NotJudged { why, note }) if note.trim().is_empty() => view.code(*why),
        Some(AsFound::NotJudged { note, .. }) => note.clone(),
        Some(AsFound::OpenedByUs) => view.say("report-found-opened"),
        Some(_) => view.say("report-left-unsaid"),
        None => view.say("report-not-reached"),
    };
    told(view, point, &why)
}

fn told(view: &View<'_>, point: PointId, why: &str) -> String {
    let name = view.point_name(point);
    view.fill("report-not-judged-point", &[("point", &name), ("why", why)])
}
