//! What charts are made of, read from the logbook.

use crate::{Core, Problem, learned};
use baywalk_domain::due::{Known, curves};
use baywalk_domain::ids::{PointId, RigId};
use baywalk_domain::pace::in_bays;
use baywalk_domain::rig::{Book, Code, Point};
use baywalk_domain::supply::{Judged, Measured, Reading, ReadingStep};
use baywalk_domain::units::DistanceUnit;
use baywalk_domain::walk::{Entry, PointRecord, WalkState};
use baywalk_paper::chart::{BayMinutes, KindFacts, PointWalk, SERVICE_READINGS, VoltWalk};
use chrono::NaiveDate;

/// How many ages of a curve are worked out.
const AGES: u32 = 48;

/// Kilometres of an international mile (exact).
const MILE: f64 = 1.609_344;

/// The point of a rig with a code.
pub(super) fn find<'a>(core: &Core, book: &'a Book, code: &str) -> Result<&'a Point, Problem> {
    let named = Code::parse(code.trim());
    let named = named.map_err(|fault| Problem::input(core.words.code_fault(&fault)))?;
    let found = book.points.iter().find(|point| point.code == named);
    let args = [("code", code.into())];
    found.ok_or_else(|| Problem::not_found(core.words.fill("book-no-code", &args)))
}

/// What was noted at a point, oldest walk first.
pub(super) fn of_point(
    core: &Core,
    book: &Book,
    known: &Known,
    point: PointId,
) -> Result<Vec<PointWalk>, Problem> {
    let courses = known.courses();
    let walks = core.logbook.point_past(point)?.into_iter();
    let noted = walks.filter(|past| past.record != PointRecord::default());
    Ok(noted
        .map(|past| {
            let day = past.started.date();
            let far = courses.road.at(day);
            let far = far.map(|far| distance(core, courses.road.shown(far), book.rig.rule.unit()));
            PointWalk {
                day,
                far: far.unwrap_or_default(),
                record: past.record,
            }
        })
        .collect())
}

/// A distance in whole miles or kilometres.
fn distance(core: &Core, kilometres: f64, unit: DistanceUnit) -> String {
    let far = match unit {
        DistanceUnit::Miles => kilometres / MILE,
        DistanceUnit::Kilometres => kilometres,
    };
    format!("{} {}", core.words.number(far, 0), core.words.code(unit))
}

/// What the lives of each kind tell.
pub(super) fn of_kinds(core: &Core, book: &Book, known: &Known) -> Vec<KindFacts> {
    let told = baywalk_domain::due::learned(book, known).kinds;
    let curves = curves(book, known, AGES).into_iter();
    let facts = curves.filter_map(|curve| {
        let told = told.iter().find(|told| told.kind == curve.kind)?;
        Some(KindFacts {
            name: core.words.code(curve.kind),
            told: learned::line(core, told).words,
            share: told.proportion,
            curve,
        })
    });
    facts.collect()
}

/// How long each bay stood open, walk by walk.
pub(super) fn of_bays(core: &Core, rig: RigId, book: &Book) -> Result<Vec<BayMinutes>, Problem> {
    let mut walks = Vec::new();
    for walk in core.logbook.walks(rig)? {
        let entries = core.logbook.entries(walk.id)?.into_iter();
        let entries: Vec<Entry> = entries.map(|numbered| numbered.entry).collect();
        walks.push((walk.started.date(), in_bays(&entries)));
    }
    let bays = book.bays_in_order().into_iter().map(|bay| {
        let of_bay = walks.iter();
        let of_bay = of_bay.filter_map(|(day, bays)| Some((*day, *bays.get(&bay.id)?)));
        BayMinutes {
            code: bay.code.to_string(),
            name: bay.name.clone(),
            walks: of_bay.filter(|(_, seconds)| *seconds > 0).collect(),
        }
    });
    Ok(bays.filter(|bay| !bay.walks.is_empty()).collect())
}

/// The readings of the service, walk by walk; walks without any are left out.
pub(super) fn of_service(core: &Core, rig: RigId) -> Result<Vec<VoltWalk>, Problem> {
    let mut walks = Vec::new();
    for walk in core.logbook.walks(rig)? {
        let read = read(&core.logbook.walk(walk.id)?, walk.started.date());
        walks.extend((!read.read.is_empty()).then_some(read));
    }
    Ok(walks)
}

/// The newest reading of each step that counts.
fn read(walk: &WalkState, day: NaiveDate) -> VoltWalk {
    let count = || walk.readings.iter().skip(walk.readings_before).rev();
    let newest = |step: ReadingStep| count().find(|(reading, _)| reading.step == step);
    let volts = |(reading, _): &(Reading, Option<Judged>)| match &reading.measured {
        Measured::Volts(volts) => Some(volts.quantity().volts()),
        _ => None,
    };
    let steps = SERVICE_READINGS.into_iter();
    let read = steps.filter_map(|step| Some((step, volts(newest(step)?)?)));
    let legs = [ReadingStep::Leg1, ReadingStep::SupplyL1N].into_iter();
    VoltWalk {
        day,
        read: read.collect(),
        limits: legs
            .filter_map(|step| newest(step)?.1.as_ref()?.limits)
            .next(),
    }
}
