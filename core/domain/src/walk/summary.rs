//! What a walk says of itself, at its end or wherever it stops.

use super::{BayStage, Grade, PointRecord, Scope, Seen, WalkState};
use crate::ids::{BayId, PointId, SourceId};
use crate::rig::{Book, Point};
use std::collections::BTreeMap;

/// What is alive, dead and not judged, and what was found.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Summary {
    /// Points of the walk, noted or not.
    pub total: usize,
    /// Points gone through.
    pub done: usize,
    /// Terminals by grade.
    pub grades: BTreeMap<Grade, usize>,
    /// Points that were not judged, or not reached.
    pub not_judged: Vec<PointId>,
    /// Points that were set or remade: they get a second look.
    pub disturbed: Vec<PointId>,
    /// Sources that can feed something now.
    pub alive: Vec<Alive>,
    /// Bays that are open.
    pub open: Vec<BayId>,
    /// Bays in which every noted set is proved dead and none lapsed.
    pub dead: Vec<BayId>,
}

/// A source that can feed something now.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Alive {
    /// The source.
    pub source: SourceId,
    /// Whether it is so by intent: brought back, and not merely never taken away.
    pub restored: bool,
}

impl WalkState {
    /// The points this walk goes through, bay by bay, in order.
    #[must_use]
    pub fn points_to_do<'a>(&self, book: &'a Book) -> Vec<&'a Point> {
        let bays = book.bays_in_order().into_iter();
        bays.flat_map(|bay| self.points_in(book, bay.id)).collect()
    }

    /// The points of one bay that this walk goes through, in order.
    pub(super) fn points_in<'a>(&self, book: &'a Book, bay: BayId) -> Vec<&'a Point> {
        match &self.scope {
            Scope::Bays(bays) if !bays.contains(&bay) => Vec::new(),
            Scope::Whole | Scope::Bays(_) => book.points_of(bay),
            Scope::SecondLook(wanted) => {
                let mut points = book.points_of(bay);
                points.retain(|point| wanted.contains(&point.id));
                points
            }
        }
    }
}

/// Sums a walk up.
#[must_use]
pub fn summary(walk: &WalkState, book: &Book) -> Summary {
    let points = walk.points_to_do(book);
    let none = PointRecord::default();
    let mut sum = Summary {
        total: points.len(),
        open: walk.open_bays().collect(),
        ..Summary::default()
    };
    for point in points {
        let record = walk.point(point.id).unwrap_or(&none);
        sum.done += usize::from(record.is_done());
        let grade = record.found.as_ref().map(|found| found.found.grade());
        if let Some(grade) = grade {
            *sum.grades.entry(grade).or_default() += 1;
        }
        let unseen = matches!(record.seen, Some(Seen::NotLooked(_)));
        if !record.is_done() || unseen || grade == Some(Grade::NotJudged) {
            sum.not_judged.push(point.id);
        }
        if record.is_disturbed() {
            sum.disturbed.push(point.id);
        }
    }
    sum.alive = alive(walk, book);
    sum.dead = dead(walk, book);
    sum
}

fn alive(walk: &WalkState, book: &Book) -> Vec<Alive> {
    book.live_sources()
        .filter(|source| !walk.is_away(source.id))
        .map(|source| Alive {
            source: source.id,
            restored: walk.restored.contains(&source.id),
        })
        .collect()
}

fn dead(walk: &WalkState, book: &Book) -> Vec<BayId> {
    walk.open_bays()
        .filter(|bay| {
            let mut devices = book.devices_of(*bay).peekable();
            walk.stage(*bay) == BayStage::Open
                && devices.peek().is_some()
                && devices.all(|device| walk.is_proved(device))
        })
        .collect()
}
