//! One rig: its strip of bays, what is done, what moved, when it is due.

use crate::card::Line;
use crate::due::{DueScreen, due};
use crate::here::Here;
use crate::named::{GradeCount, Named, count};
use crate::{Core, Problem};
use baywalk_domain::coded::Coded;
use baywalk_domain::ids::RigId;
use baywalk_domain::rig::{Bay, Book};
use baywalk_domain::walk::{BayStage, Grade, Summary, WalkState, summary};
use serde::Serialize;

/// One rig.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct RigScreen {
    /// Its name for the machine.
    pub id: String,
    /// What its owner calls it.
    pub name: String,
    /// Kind and service.
    pub what: String,
    /// Whether power is away, in a walk.
    pub line: Option<Line>,
    /// Its bays, nose to tail.
    pub bays: Vec<StripBay>,
    /// How many points are done.
    pub points: String,
    /// What had moved.
    pub moved: String,
    /// When the next walk is due.
    pub due: DueScreen,
    /// How many findings wait.
    pub findings: String,
}

/// A bay on the strip.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct StripBay {
    /// Its tag.
    pub code: String,
    /// Its name.
    pub name: String,
    /// Where it is reached from.
    pub side: Named,
    /// Thousandths of the length from the nose.
    pub station: u16,
    /// Where it stands in the walk.
    pub stage: Named,
    /// How many points it has.
    pub total: u32,
    /// How many are done.
    pub done: u32,
    /// How many of each grade.
    pub grades: Vec<GradeCount>,
}

/// One rig.
///
/// # Errors
/// [`Problem`] where there is no such rig or the logbook can't be read.
pub fn rig(core: &Core, id: RigId) -> Result<RigScreen, Problem> {
    let book = core.logbook.book(id)?;
    let open = core.logbook.open_walk(id)?;
    let line = match &open {
        Some(_) => Some(Here::read(core, id)?.line()),
        None => None,
    };
    let sum = open.as_ref().map(|walk| summary(walk, &book));
    let findings = core
        .logbook
        .findings(id)?
        .iter()
        .filter(|finding| finding.is_open())
        .count();
    Ok(RigScreen {
        id: id.to_string(),
        name: book.rig.name.clone(),
        what: crate::rigs::what(core, &book),
        line,
        bays: book
            .bays_in_order()
            .into_iter()
            .map(|bay| strip_bay(core, &book, bay, open.as_ref()))
            .collect(),
        points: points(core, &book, sum.as_ref()),
        moved: sum.map(|sum| moved(core, &sum)).unwrap_or_default(),
        due: due(core, id)?,
        findings: core
            .words
            .fill("rig-findings", &[("count", findings.into())]),
    })
}

fn points(core: &Core, book: &Book, sum: Option<&Summary>) -> String {
    match sum {
        Some(sum) => core.words.fill(
            "rig-points-done",
            &[("done", sum.done.into()), ("total", sum.total.into())],
        ),
        None => {
            let total = book.points.iter().filter(|point| !point.retired).count();
            core.words.fill("rig-points", &[("total", total.into())])
        }
    }
}

/// How many had moved, were loose or apart.
pub(crate) fn moved(core: &Core, sum: &Summary) -> String {
    let count = |grade| sum.grades.get(&grade).copied().unwrap_or(0);
    core.words.fill(
        "rig-moved",
        &[
            ("moved", count(Grade::Moved).into()),
            ("loose", count(Grade::Loose).into()),
            ("apart", count(Grade::Apart).into()),
        ],
    )
}

fn strip_bay(core: &Core, book: &Book, bay: &Bay, walk: Option<&WalkState>) -> StripBay {
    let points = book.points_of(bay.id);
    let records = |walk: &WalkState| -> Vec<_> {
        points
            .iter()
            .filter_map(|point| walk.point(point.id).cloned())
            .collect()
    };
    let records = walk.map(records).unwrap_or_default();
    let grades = Grade::ALL
        .iter()
        .map(|grade| {
            let of_grade = |record: &&baywalk_domain::walk::PointRecord| {
                record
                    .found
                    .as_ref()
                    .is_some_and(|found| found.found.grade() == *grade)
            };
            GradeCount::of(&core.words, *grade, records.iter().filter(of_grade).count())
        })
        .collect();
    let stage = walk.map_or(BayStage::Shut, |walk| walk.stage(bay.id));
    StripBay {
        code: bay.code.to_string(),
        name: bay.name.clone(),
        side: Named::of(&core.words, bay.side),
        station: bay.station.thousandths(),
        stage: Named::of(&core.words, stage),
        total: count(points.len()),
        done: count(records.iter().filter(|record| record.is_done()).count()),
        grades,
    }
}
