//! The findings: open ones by urgency with what to do, then those that were decided.

use super::counts::heading;
use super::view::View;
use super::{as_found, figure};
use crate::sheet::{Block, Cell};
use baywalk_domain::finding::{About, Finding, FindingKind, FollowUp};
use baywalk_domain::ids::PointId;
use baywalk_domain::supply::ReadingStep;
use baywalk_domain::walk::{AsFound, AsLeft, Seen};

pub(super) fn blocks(view: &View<'_>) -> Vec<Block> {
    let (mut open, closed): (Vec<&Finding>, Vec<&Finding>) = view
        .facts
        .findings
        .iter()
        .partition(|finding| finding.is_open());
    open.sort_by_key(|finding| (finding.raised.kind.urgency(), finding.raised.kind));
    let mut blocks = vec![heading(view, "report-findings")];
    blocks.push(
        open_table(view, &open).unwrap_or_else(|| Block::Text(view.say("report-findings-none"))),
    );
    blocks.extend(closed_table(view, &closed));
    blocks
}

fn open_table(view: &View<'_>, open: &[&Finding]) -> Option<Block> {
    let columns = [
        ("report-col-where", 34),
        ("report-col-finding", 26),
        ("report-col-todo", 40),
    ];
    let rows = open.iter().map(|finding| {
        let kind = finding.raised.kind;
        let todo = Cell::of(view.headed(kind.urgency())).with([view.words.what_to_do(kind)]);
        vec![
            view.about(finding.raised.about),
            what(view, finding),
            todo.with(decided(view, finding)),
        ]
    });
    let caption = view.count("report-findings-open", open.len());
    view.table(caption, &columns, rows.collect())
}

fn closed_table(view: &View<'_>, closed: &[&Finding]) -> Option<Block> {
    let columns = [
        ("report-col-where", 34),
        ("report-col-finding", 26),
        ("report-col-decision", 40),
    ];
    let rows = closed.iter().map(|finding| {
        vec![
            view.about(finding.raised.about),
            what(view, finding),
            Cell::default().with(decided(view, finding)),
        ]
    });
    let caption = view.count("report-findings-closed", closed.len());
    view.table(caption, &columns, rows.collect())
}

/// The kind of a finding, with what was noted at its place, and its day where it is older.
pub(super) fn what(view: &View<'_>, finding: &Finding) -> Cell {
    let cell = Cell::of(view.headed(finding.raised.kind));
    if finding.walk != Some(view.facts.walk.id) {
        let day = view.words.date(finding.on);
        return cell.with([view.fill("report-finding-since", &[("day", &day)])]);
    }
    match finding.raised.about {
        About::Point(point) => cell.with(noted(view, point, finding.raised.kind)),
        About::Source(source) => cell.with(view.facts.walk.left_away.get(&source).cloned()),
        About::Reading(step) => cell.with(measured(view, step)),
        About::Rig | About::Bay(_) => cell,
    }
}

/// What came of a reading each time it was taken, with its place.
fn measured(view: &View<'_>, step: ReadingStep) -> Vec<String> {
    let readings = view.facts.walk.readings.iter().map(|(reading, _)| reading);
    let taken = readings.filter(|reading| reading.step == step);
    taken
        .flat_map(|reading| {
            [
                view.words.measured(&reading.measured),
                reading.place.clone(),
            ]
        })
        .collect()
}

/// What was noted at a point that bears on a finding of this kind.
fn noted(view: &View<'_>, id: PointId, kind: FindingKind) -> Vec<String> {
    let Some(record) = view.record(id) else {
        return Vec::new();
    };
    let found = record.found.as_ref().map(|found| &found.found);
    match (kind, &record.seen, found, &record.left) {
        (FindingKind::LookTrouble, Some(Seen::Trouble(words)), _, _) => vec![words.clone()],
        (FindingKind::Damaged | FindingKind::Worn, ..) => as_found::damage(view, record),
        (FindingKind::OutOfService, _, _, Some(AsLeft::OutOfService { how })) => vec![how.clone()],
        (FindingKind::NotReachedAlive, _, Some(AsFound::NotJudged { note, .. }), _) => {
            vec![note.clone()]
        }
        (FindingKind::SetOffFigure, _, _, Some(AsLeft::Set { torque, .. })) => {
            let set = view.fill("report-left-set", &[("torque", &view.torque(torque))]);
            let shown = view.facts.book.point(id).and_then(|point| {
                figure::figure(point, Some(record)).map(|figure| view.torque(figure.torque))
            });
            let shown = shown.map(|torque| view.fill("report-figure-was", &[("torque", &torque)]));
            std::iter::once(set).chain(shown).collect()
        }
        _ => Vec::new(),
    }
}

/// What was decided about a finding, where something was.
pub(super) fn decided(view: &View<'_>, finding: &Finding) -> Vec<String> {
    let decided = finding.follow_up.as_ref();
    decided.map_or_else(Vec::new, |decided| follow_up(view, decided))
}

fn follow_up(view: &View<'_>, decided: &FollowUp) -> Vec<String> {
    let decision = view.code(decided.decision);
    let first = match decided.by {
        Some(day) => {
            let day = view.words.date(day);
            let args = [("decision", decision.as_str()), ("day", &day)];
            view.fill("report-decided-by", &args)
        }
        None => view.fill("report-decided", &[("decision", &decision)]),
    };
    vec![first, decided.note.clone()]
}
