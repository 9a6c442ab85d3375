//! The result of a walk: what stays out of service, what was not judged, what had moved, when next.

use crate::GradeCount;
use crate::findings::{FindingLine, findings};
use crate::{Core, Problem};
use baywalk_domain::coded::Coded;
use baywalk_domain::ids::{PointId, RigId, WalkId};
use baywalk_domain::rig::Book;
use baywalk_domain::walk::{AsLeft, Ending, Grade, PointRecord, Summary, WalkState, summary};
use serde::Serialize;

/// The result of a walk.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct ResultScreen {
    /// The walk's name for the machine.
    pub walk: String,
    /// How it ended, in words.
    pub ended: String,
    /// What stays out of service.
    pub out_of_service: Vec<String>,
    /// What was not judged.
    pub not_judged: Vec<String>,
    /// What can feed something now, where the walk was not gone through to the end.
    pub alive: Vec<String>,
    /// How many of each grade.
    pub grades: Vec<GradeCount>,
    /// What had moved and how it was left.
    pub moved: Vec<String>,
    /// The open findings.
    pub findings: Vec<FindingLine>,
    /// When next, in words.
    pub due: String,
    /// The second look, in words.
    pub second_look: Option<String>,
    /// What no backup has yet, in words.
    pub backup: Option<String>,
    /// That the dates go into a calendar too, in words, once the walk has ended.
    pub calendar: Option<String>,
}

/// The result of a walk, or how an open one stands.
///
/// # Errors
/// [`Problem`] where there is no such walk or the logbook can't be read.
pub fn result(core: &Core, rig: RigId, walk: WalkId) -> Result<ResultScreen, Problem> {
    let book = core.logbook.shared_book(rig)?;
    let state = core.logbook.walk(walk)?;
    let sum = summary(&state, &book);
    let due = crate::due::due(core, rig)?;
    let name = |id: &PointId| core.words.point_name(*id, &*book);
    Ok(ResultScreen {
        walk: walk.to_string(),
        ended: ended(core, &state),
        out_of_service: records(&state, &book, |record| {
            matches!(record.left, Some(AsLeft::OutOfService { .. }))
        })
        .map(|(id, _)| name(&id))
        .collect(),
        not_judged: sum.not_judged.iter().map(name).collect(),
        alive: sum
            .alive
            .iter()
            .filter(|_| state.ending != Some(Ending::Whole))
            .map(|alive| core.words.source_name(alive.source, &*book))
            .collect(),
        grades: grades(core, &sum),
        moved: records(&state, &book, moved)
            .map(|(id, record)| told(core, &book, id, record))
            .collect(),
        findings: findings(core, rig)?
            .into_iter()
            .filter(|line| line.open)
            .collect(),
        due: due.words,
        backup: due.backup,
        calendar: state
            .ending
            .is_some()
            .then(|| core.words.say("timing-calendar-hint")),
        second_look: due.second_look.map(|second| second.words),
    })
}

fn ended(core: &Core, state: &WalkState) -> String {
    match &state.ending {
        None => core.words.say("result-open"),
        Some(Ending::Whole) => core.words.say("result-whole"),
        Some(Ending::Early(why)) => core
            .words
            .fill("result-early", &[("why", why.clone().into())]),
    }
}

fn grades(core: &Core, sum: &Summary) -> Vec<GradeCount> {
    let count = |grade: &Grade| sum.grades.get(grade).copied().unwrap_or(0);
    Grade::ALL
        .iter()
        .map(|grade| GradeCount::of(&core.words, *grade, count(grade)))
        .collect()
}

fn moved(record: &PointRecord) -> bool {
    record
        .found
        .as_ref()
        .is_some_and(|found| found.found.needs_left())
}

/// The records of a walk that fit, by the points' codes.
fn records<'a>(
    state: &'a WalkState,
    book: &'a Book,
    fits: impl Fn(&PointRecord) -> bool,
) -> impl Iterator<Item = (PointId, &'a PointRecord)> {
    let mut found: Vec<(PointId, &PointRecord)> = state
        .points
        .iter()
        .filter(|(_, record)| fits(record))
        .map(|(id, record)| (*id, record))
        .collect();
    found.sort_by_key(|(id, _)| book.point(*id).map(|point| point.code.clone()));
    found.into_iter()
}

fn told(core: &Core, book: &Book, id: PointId, record: &PointRecord) -> String {
    let words = &core.words;
    let found = record
        .found
        .as_ref()
        .map(|found| words.as_found(&found.found, book));
    let left = record.left.as_ref().map(|left| words.as_left(left, book));
    words.fill(
        "result-moved",
        &[
            ("point", words.point_name(id, book).into()),
            ("found", found.unwrap_or_default().into()),
            ("left", left.unwrap_or_default().into()),
        ],
    )
}
