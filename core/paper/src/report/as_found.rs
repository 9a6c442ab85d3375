//! As found: the drawing, the grade, how it was tried, damage, corrections.

use super::view::View;
use crate::sheet::Cell;
use baywalk_domain::ids::PointId;
use baywalk_domain::rig::{FasteningKind, Point};
use baywalk_domain::walk::{Act, AsFound, FoundRecord, Grade, Movement, PointRecord, Seen, Test};
use baywalk_shapes::found::{angle_of, found as shape_of};
use baywalk_shapes::sign;

/// What was found at a terminal, or seen at a look.
pub(super) fn cell(view: &View<'_>, point: &Point, record: &PointRecord) -> Cell {
    let cell = match (&record.found, &record.seen) {
        (Some(found), _) => terminal(view, point, found),
        (None, Some(Seen::Clear)) => Cell::of(view.say("walk-seen-clear")).drawn(sign::look()),
        (None, Some(Seen::Trouble(words))) => Cell::of(view.say("report-seen-trouble"))
            .drawn(sign::look())
            .with([words.clone()]),
        (None, Some(Seen::NotLooked(why))) => Cell::of(view.headed(Grade::NotJudged))
            .drawn(sign::to_do())
            .with([why.clone()]),
        (None, None) => Cell::of(view.say("report-not-reached")).drawn(sign::to_do()),
    };
    let before = view.facts.moved_before.contains(&point.id);
    cell.with(damage(view, record))
        .with(before.then(|| view.say("report-moved-in-earlier")))
}

/// Damage, one line each.
pub(super) fn damage(view: &View<'_>, record: &PointRecord) -> Vec<String> {
    let lines = record.damage.iter().map(|(damage, note)| {
        let kind = view.code(*damage);
        if note.trim().is_empty() {
            view.fill("report-damage", &[("damage", &kind)])
        } else {
            view.fill("report-damage-note", &[("damage", &kind), ("note", note)])
        }
    });
    lines.collect()
}

fn terminal(view: &View<'_>, point: &Point, found: &FoundRecord) -> Cell {
    let kind = point
        .terminal()
        .map_or(FasteningKind::PressureScrew, |terminal| {
            terminal.fastening.kind
        });
    let corrected = found.corrected.then(|| correction(view, point.id));
    Cell::of(grade(view, &found.found))
        .drawn(shape_of(&found.found, kind))
        .with(how(view, &found.found))
        .with(corrected.into_iter().flatten())
}

/// The grade, with the angle where it was seen.
fn grade(view: &View<'_>, found: &AsFound) -> String {
    let grade = view.headed(found.grade());
    match found {
        AsFound::Moved(movement) => match angle_of(movement) {
            Some(angle) => {
                let args = [("grade", grade.as_str()), ("angle", &view.code(angle))];
                view.fill("report-found-angle", &args)
            }
            None => grade,
        },
        AsFound::OpenedByUs => view.say("report-found-opened"),
        _ => grade,
    }
}

/// How it was tried.
fn how(view: &View<'_>, found: &AsFound) -> Vec<String> {
    let with = |key, torque, tool| {
        let (torque, tool) = (view.torque(torque), view.tool_code(tool));
        view.fill(key, &[("torque", &torque), ("tool", &tool)])
    };
    match found {
        AsFound::Held(Test::Torque { at, tool }) => vec![with("report-held-at", at, *tool)],
        AsFound::Held(Test::Tug) => vec![view.say("report-held-tug")],
        AsFound::Moved(Movement::Turned { below, tool, .. }) => {
            vec![with("report-moved-below", below, *tool)]
        }
        AsFound::Moved(Movement::Began { at, tool }) => vec![with("report-moved-at", at, *tool)],
        AsFound::Moved(Movement::MarkOff { .. }) => vec![view.say("report-moved-mark")],
        AsFound::Moved(Movement::Gave) => vec![view.say("report-moved-gave")],
        AsFound::LookedAt { tugged: true } => vec![view.say("report-looked-tugged")],
        AsFound::LookedAt { tugged: false } => vec![view.say("report-looked-only")],
        AsFound::NotJudged { why, note } => vec![view.headed(*why), note.clone()],
        AsFound::Loose | AsFound::Apart | AsFound::OpenedByUs => Vec::new(),
    }
}

/// That the note is a correction, what it said before, and why it was wrong.
fn correction(view: &View<'_>, point: PointId) -> Vec<String> {
    let mut lines = vec![view.say("report-corrected")];
    let mut before: Option<&AsFound> = None;
    for act in view.standing() {
        match act {
            Act::Found { point: at, found } if *at == point => before = Some(found),
            Act::Correct {
                point: at,
                found,
                why,
            } if *at == point => {
                let was = before.map_or_else(String::new, |found| grade(view, found));
                let args = [("was", was.as_str()), ("why", why)];
                lines.push(view.fill("report-corrected-why", &args));
                before = Some(found);
            }
            _ => {}
        }
    }
    lines
}
