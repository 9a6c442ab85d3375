//! The task that a rig sets: its bays, its points with their ranks, what must be done.

use super::{BayTask, Legs, PointTask, Task, TaskFault};
use crate::coded::coded;
use crate::finding::{About, Finding};
use crate::ids::{BayId, PointId};
use crate::pace::{Pace, Place, Span, Step, seconds_between, start, step_of};
use crate::ranking::Rank;
use crate::rig::{Bay, Book, Point, Priority};
use std::collections::BTreeMap;

coded! {
    /// Why a point is in every plan.
    MustWhy as "must-why" {
        /// The owner wants it so.
        Owner = "owner",
        /// A finding about it waits.
        OpenFinding = "open_finding",
        /// It was set or remade and waits for its second look.
        Settle = "settle",
        /// The last whole walk left it out, and it is past the time of the rule.
        Overdue = "overdue",
    }
}

/// What a plan for a rig rests on.
#[derive(Debug, Clone, Copy)]
pub struct Basis<'a> {
    /// The rig's book.
    pub book: &'a Book,
    /// The rank of each point that may be gone through; others are left out of the task.
    pub ranks: &'a [Rank],
    /// The pace.
    pub pace: &'a Pace,
    /// Why points are in every plan.
    pub must: &'a BTreeMap<PointId, MustWhy>,
    /// Bays that are in every plan, as where a finding is about the bay itself.
    pub bays: &'a [BayId],
    /// The seconds at hand.
    pub seconds: u32,
}

/// A task with the names of its bays and points.
#[derive(Debug, Clone, PartialEq)]
pub struct RigTask {
    /// What is planned.
    pub task: Task,
    /// The bays of the task.
    pub bays: Vec<BayId>,
    /// The points of each, in order.
    pub points: Vec<Vec<PointId>>,
    /// What each point of each bay takes at a quick, a usual and a slow pace.
    pub spans: Vec<Vec<Span>>,
}

impl RigTask {
    /// Sets the task of a rig: bays that are in use and hold a ranked point, the ways between them,
    /// and the way from and back to where power is taken away.
    ///
    /// # Errors
    /// [`TaskFault`] where the rig has more bays or points than can be planned, or a bay takes
    /// longer than a plan may.
    pub fn of(basis: &Basis<'_>) -> Result<Self, TaskFault> {
        let ranks: BTreeMap<PointId, u32> = basis
            .ranks
            .iter()
            .map(|rank| (rank.point, rank.worth))
            .collect();
        let ranked = |bay: &Bay| -> Vec<(&Point, u32)> {
            let points = basis.book.points_of(bay.id).into_iter();
            points
                .filter_map(|point| Some((point, *ranks.get(&point.id)?)))
                .collect()
        };
        let all = basis.book.bays_in_order().into_iter();
        let bays: Vec<(&Bay, Vec<(&Point, u32)>)> = all
            .map(|bay| (bay, ranked(bay)))
            .filter(|(bay, points)| !points.is_empty() || basis.bays.contains(&bay.id))
            .collect();
        let span = |(point, _): &(&Point, u32)| basis.pace.span(step_of(point));
        let spans: Vec<Vec<Span>> = bays
            .iter()
            .map(|(_, points)| points.iter().map(span).collect())
            .collect();
        let tasks = bays
            .iter()
            .zip(&spans)
            .map(|((bay, points), spans)| BayTask {
                seconds: 60 * (u32::from(bay.open_minutes) + u32::from(bay.close_minutes)),
                points: points
                    .iter()
                    .zip(spans)
                    .map(|(point, span)| point_task(basis, point, *span))
                    .collect(),
                must: basis.bays.contains(&bay.id),
            });
        let places: Vec<Place> = std::iter::once(start(basis.book))
            .chain(bays.iter().map(|(bay, _)| Place::of(bay)))
            .collect();
        Ok(Self {
            task: Task::new(
                tasks.collect(),
                Some(legs(basis.book, &places)?),
                basis.seconds,
            )?,
            points: bays
                .iter()
                .map(|(_, points)| points.iter().map(|(point, _)| point.id).collect())
                .collect(),
            bays: bays.iter().map(|(bay, _)| bay.id).collect(),
            spans,
        })
    }

    /// What the bays of a plan take at a quick, a usual and a slow pace; minutes to open and close
    /// and the seconds of walking are as they are noted.
    #[must_use]
    pub fn span(&self, plan: &super::Plan) -> Span {
        let stops = plan.stops.iter().map(|stop| {
            let open = self.task.bays().get(stop.bay).map_or(0, |bay| bay.seconds);
            let spans = self.spans.get(stop.bay).map_or(&[][..], Vec::as_slice);
            let points = stop.points.iter().filter_map(|point| spans.get(*point));
            points.fold(Span::fixed(open), |sum, span| sum.and(*span))
        });
        stops.fold(Span::fixed(plan.walking()), Span::and)
    }

    /// The seconds that the bays of a plan take where eyes and fingers alone go over the points, as
    /// quick as a look: a quick walk.
    #[must_use]
    pub fn glance(&self, plan: &super::Plan) -> u32 {
        let open = |stop: &super::Stop| self.task.bays().get(stop.bay).map_or(0, |bay| bay.seconds);
        let points = u32::try_from(plan.points()).unwrap_or(u32::MAX);
        let looks = points.saturating_mul(Pace::default().span(Step::Look).quick);
        plan.walking() + plan.stops.iter().map(open).sum::<u32>() + looks
    }

    /// The points of a stop, by name.
    #[must_use]
    pub fn points_of(&self, stop: &super::Stop) -> Vec<PointId> {
        let points = self.points.get(stop.bay).map_or(&[][..], Vec::as_slice);
        stop.points
            .iter()
            .filter_map(|point| points.get(*point).copied())
            .collect()
    }
}

fn point_task(basis: &Basis<'_>, (point, worth): &(&Point, u32), span: Span) -> PointTask {
    PointTask {
        seconds: span.usual,
        worth: *worth,
        must: basis.must.contains_key(&point.id),
    }
}

fn legs(book: &Book, places: &[Place]) -> Result<Legs, TaskFault> {
    let row = |from: &Place| {
        let leg = |to: &Place| seconds_between(book.rig.kind, *from, *to);
        places.iter().map(leg).collect()
    };
    Legs::new(places.iter().map(row).collect())
}

/// What must be done on a rig: points with why, and bays that findings are about.
///
/// `overdue` are the points that the last whole walk left out and that are past the time of the rule;
/// where the whole rig is past it, nothing is told apart by it and the ranking alone decides.
#[must_use]
pub fn musts(
    book: &Book,
    findings: &[Finding],
    unsettled: &[PointId],
    overdue: &[PointId],
) -> (BTreeMap<PointId, MustWhy>, Vec<BayId>) {
    let open = || findings.iter().filter(|finding| finding.is_open());
    let mut must = BTreeMap::new();
    let mut put = |point: PointId, why: MustWhy| {
        if book.point(point).is_some_and(|point| !point.retired) {
            must.entry(point).or_insert(why);
        }
    };
    let pinned = book
        .points
        .iter()
        .filter(|point| point.priority == Some(Priority::Must));
    pinned.for_each(|point| put(point.id, MustWhy::Owner));
    for finding in open() {
        if let About::Point(point) = finding.raised.about {
            put(point, MustWhy::OpenFinding);
        }
    }
    unsettled
        .iter()
        .for_each(|point| put(*point, MustWhy::Settle));
    overdue
        .iter()
        .for_each(|point| put(*point, MustWhy::Overdue));
    let bays = book.bays_in_order().into_iter().map(|bay| bay.id);
    let about = |bay: &BayId| open().any(|finding| finding.raised.about == About::Bay(*bay));
    (must, bays.filter(about).collect())
}
