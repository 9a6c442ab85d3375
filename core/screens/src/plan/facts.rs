//! What a plan rests on, gathered from the logbook.

use crate::{Core, Problem};
use baywalk_domain::due::OdometerNote;
use baywalk_domain::ids::{BayId, PointId, RigId};
use baywalk_domain::pace::{Pace, samples};
use baywalk_domain::plan::{Basis, MustWhy, RigTask, musts};
use baywalk_domain::ranking::{History, Rank, Since, ranks};
use baywalk_domain::rig::Book;
use baywalk_domain::units::DistanceUnit;
use baywalk_domain::walk::{BayStage, Grade, PointRecord, WalkState};
use baywalk_logbook::PointPast;
use chrono::{Months, NaiveDate};
use std::collections::BTreeMap;
use std::sync::Arc;

/// How many walks of the past tell the pace.
const WALKS_TOLD: usize = 4;

/// What a plan rests on.
pub(super) struct Facts {
    pub(super) book: Arc<Book>,
    pub(super) walk: Option<Arc<WalkState>>,
    pub(super) ranks: Vec<Rank>,
    pub(super) pace: Pace,
    pub(super) must: BTreeMap<PointId, MustWhy>,
    pub(super) bays: Vec<BayId>,
    /// The day for which it is planned.
    pub(super) today: NaiveDate,
}

impl Facts {
    /// Gathers the facts of a rig on a day. In a walk, what is done and bays that were opened are left out.
    pub(super) fn gather(core: &Core, rig: RigId, today: NaiveDate) -> Result<Self, Problem> {
        let log = &core.logbook;
        let (book, walk) = (log.shared_book(rig)?, log.shared_walk(rig)?);
        let notes = log.odometer(rig)?;
        let mut seen = BTreeMap::new();
        let mut histories = BTreeMap::new();
        for point in book.points.iter().filter(|point| !point.retired) {
            let past = log.point_past(point.id)?;
            let last = past.iter().rev().find(|past| tells(&past.record));
            let last = last.map(|past| past.started.date());
            seen.extend(last.map(|day| (point.id, day)));
            histories.insert(point.id, history(&past, last, today, &notes));
        }
        let history = |point| histories.get(&point).cloned().unwrap_or_default();
        let mut ranks = ranks(&book, history);
        if let Some(walk) = &walk {
            ranks.retain(|rank| waits(walk, &book, rank.point));
        }
        let overdue = overdue(core, (rig, &book), &seen, today)?;
        let (must, bays) = musts(&book, &log.findings(rig)?, &log.unsettled(rig)?, &overdue);
        let shut = |bay: &BayId| {
            walk.as_ref()
                .is_none_or(|walk| walk.stage(*bay) == BayStage::Shut)
        };
        Ok(Self {
            pace: pace(core, rig, &book)?,
            bays: bays.into_iter().filter(shut).collect(),
            today,
            book,
            walk,
            ranks,
            must,
        })
    }

    /// The task that they set within so many seconds.
    pub(super) fn task(&self, core: &Core, seconds: u32) -> Result<RigTask, Problem> {
        let basis = Basis {
            book: &self.book,
            ranks: &self.ranks,
            pace: &self.pace,
            must: &self.must,
            bays: &self.bays,
            seconds,
        };
        RigTask::of(&basis).map_err(|fault| {
            let why = fault.to_string();
            Problem::refused(core.words.fill("plan-too-large", &[("why", why.into())]))
        })
    }

    pub(super) fn rank(&self, point: PointId) -> Option<&Rank> {
        self.ranks.iter().find(|rank| rank.point == point)
    }
}

/// Whether a point still waits in a walk, in a bay that was not opened yet.
fn waits(walk: &WalkState, book: &Book, id: PointId) -> bool {
    let wanted = walk
        .points_to_do(book)
        .into_iter()
        .any(|point| point.id == id);
    let bay = book.point(id).and_then(|point| book.bay_of(point));
    let shut = bay.is_some_and(|bay| walk.stage(bay) == BayStage::Shut);
    wanted && shut && !walk.point(id).is_some_and(PointRecord::is_done)
}

/// Whether a record tells that the point was checked, set or looked at as it should be.
fn tells(record: &PointRecord) -> bool {
    match record.grade() {
        Some(Grade::NotJudged) | None => record.is_disturbed(),
        Some(Grade::LookedAt) => record.seen.is_some() || record.is_disturbed(),
        Some(_) => true,
    }
}

fn history(
    past: &[PointPast],
    last: Option<NaiveDate>,
    today: NaiveDate,
    notes: &[OdometerNote],
) -> History {
    let since = last.map(|day| Since {
        days: u32::try_from((today - day).num_days()).unwrap_or(0),
        miles: miles_between(notes, day),
    });
    let found = past
        .iter()
        .rev()
        .filter_map(|past| past.record.found.as_ref());
    History {
        since,
        grades: found.map(|found| found.found.grade()).collect(),
    }
}

/// The miles from the odometer as it stood on a day to the newest note.
fn miles_between(notes: &[OdometerNote], day: NaiveDate) -> Option<f64> {
    let then = notes
        .iter()
        .filter(|note| note.on <= day)
        .max_by_key(|note| note.on)?;
    let now = notes.iter().max_by_key(|note| note.on)?;
    let far = now.reading.quantity().kilometres() - then.reading.quantity().kilometres();
    (far >= 0.0).then(|| far / DistanceUnit::Miles.factor())
}

/// The points that the last whole walk left out and that are past the time of the rule, while the
/// rig as a whole is not.
fn overdue(
    core: &Core,
    (rig, book): (RigId, &Book),
    seen: &BTreeMap<PointId, NaiveDate>,
    today: NaiveDate,
) -> Result<Vec<PointId>, Problem> {
    let months = Months::new(u32::from(book.rig.rule.months));
    let past = |day: NaiveDate| {
        day.checked_add_months(months)
            .is_some_and(|due| due < today)
    };
    let last = core.logbook.last_walk(rig)?;
    if last.is_none_or(past) {
        return Ok(Vec::new());
    }
    let points = book.points.iter().filter(|point| !point.retired);
    let late = points.filter(|point| seen.get(&point.id).is_none_or(|day| past(*day)));
    Ok(late.map(|point| point.id).collect())
}

fn pace(core: &Core, rig: RigId, book: &Book) -> Result<Pace, Problem> {
    let mut steps = Vec::new();
    for walk in core.logbook.walks(rig)?.iter().rev().take(WALKS_TOLD) {
        let entries = core.logbook.entries(walk.id)?;
        let entries: Vec<_> = entries.into_iter().map(|numbered| numbered.entry).collect();
        steps.extend(samples(&entries, book));
    }
    Ok(Pace::of(&steps))
}
