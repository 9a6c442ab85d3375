//! One rig: its strip of bays, what is done, what moved, when it is due.

use crate::card::Line;
use crate::due::{DueScreen, told};
use crate::here::Here;
use crate::named::{GradeCount, Named, count};
use crate::{Core, Problem};
use baywalk_domain::coded::Coded;
use baywalk_domain::ids::{BayId, RigId};
use baywalk_domain::walk::{BayStage, Grade, PointRecord, Summary, summary};
use baywalk_logbook::{OutlineBay, RigOutline};
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
    pub total: u64,
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
    let glance = core.logbook.glance(id)?;
    let outline = core.logbook.outline(id)?;
    // The book is read only for a walk that is open: it is the larger, the more points there are.
    let here = match glance.walk {
        Some(_) => Some(Here::read(core, id)?),
        None => None,
    };
    let sum = here.as_ref().map(|here| summary(&here.walk, &here.book));
    let bays = outline.bays.iter();
    Ok(RigScreen {
        id: id.to_string(),
        name: glance.rig.name.clone(),
        what: crate::rigs::what(core, &glance.rig),
        line: here.as_ref().map(Here::line),
        bays: bays
            .map(|bay| strip_bay(core, bay, here.as_ref()))
            .collect(),
        points: points(core, &outline, sum.as_ref()),
        moved: sum.map(|sum| moved(core, &sum)).unwrap_or_default(),
        due: told(core, &glance, &outline.second_look)?,
        findings: core
            .words
            .fill("rig-findings", &[("count", glance.open_findings.into())]),
    })
}

fn points(core: &Core, outline: &RigOutline, sum: Option<&Summary>) -> String {
    match sum {
        Some(sum) => core.words.fill(
            "rig-points-done",
            &[("done", sum.done.into()), ("total", sum.total.into())],
        ),
        None => core
            .words
            .fill("rig-points", &[("total", outline.points.into())]),
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

fn strip_bay(core: &Core, outline: &OutlineBay, here: Option<&Here<'_>>) -> StripBay {
    let bay = &outline.bay;
    let records = here.map(|here| records(here, bay.id)).unwrap_or_default();
    let of_grade = |grade: Grade| {
        let found = records.iter().filter_map(|record| record.found.as_ref());
        found.filter(|found| found.found.grade() == grade).count()
    };
    let stage = here.map_or(BayStage::Shut, |here| here.walk.stage(bay.id));
    StripBay {
        code: bay.code.to_string(),
        name: bay.name.clone(),
        side: Named::of(&core.words, bay.side),
        station: bay.station.thousandths(),
        stage: Named::of(&core.words, stage),
        total: outline.points,
        done: count(records.iter().filter(|record| record.is_done()).count()),
        grades: Grade::ALL
            .iter()
            .map(|grade| GradeCount::of(&core.words, *grade, of_grade(*grade)))
            .collect(),
    }
}

/// What the open walk knows of the points of a bay.
fn records<'a>(here: &'a Here<'_>, bay: BayId) -> Vec<&'a PointRecord> {
    let points = here.book.points_of(bay);
    let records = points.iter().filter_map(|point| here.walk.point(point.id));
    records.collect()
}
