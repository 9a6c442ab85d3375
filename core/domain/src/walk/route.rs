//! A plan that a walk follows: bays in order, with the points gone through in each.

use super::{Act, Entry, PointRecord, Scope, WalkState};
use crate::ids::{BayId, PointId};
use crate::isolation::IDLE_LIMIT;
use crate::rig::Book;

/// A bay of a route.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct RouteStop {
    /// The bay.
    pub bay: BayId,
    /// The points gone through there, in order.
    pub points: Vec<PointId>,
}

/// Bays in order, within so many minutes.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Route {
    /// The minutes at hand for the bays, from the first plan on.
    pub minutes: u16,
    /// The seconds of them that were spent when this route was made.
    pub spent: u32,
    /// The bays, in order.
    pub stops: Vec<RouteStop>,
}

impl Route {
    /// Whether a point of a bay is gone through; in a bay that the route does not name, each is.
    #[must_use]
    pub fn takes(&self, bay: BayId, point: PointId) -> bool {
        let stop = self.stops.iter().find(|stop| stop.bay == bay);
        stop.is_none_or(|stop| stop.points.contains(&point))
    }
}

/// A route of a walk, and how it stands.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Following {
    /// The newest route.
    pub route: Route,
    /// The seconds spent on bays, walking among them, by now; isolation, proofs and stops are not
    /// counted.
    pub spent: u32,
    /// Whether it is followed, and not left.
    pub is_followed: bool,
}

impl Following {
    /// The seconds at hand that are left.
    #[must_use]
    pub fn left(&self) -> u32 {
        (60 * u32::from(self.route.minutes)).saturating_sub(self.spent)
    }
}

impl WalkState {
    /// The route that is followed.
    #[must_use]
    pub fn route(&self) -> Option<&Route> {
        let followed = self.plan.as_ref().filter(|plan| plan.is_followed);
        followed.map(|plan| &plan.route)
    }

    /// Whether the walk goes through the whole rig: its scope is that, and no route that is followed
    /// left a point out. Only such a walk starts the months of the rule anew.
    #[must_use]
    pub fn goes_through_all(&self, book: &Book) -> bool {
        let done = |point: PointId| self.point(point).is_some_and(PointRecord::is_done);
        let all = || {
            self.points_to_do(book)
                .into_iter()
                .all(|point| done(point.id))
        };
        self.scope == Scope::Whole && (self.route().is_none() || all())
    }

    /// Takes a plan that is followed or left into the state.
    pub(super) fn apply_plan(&mut self, act: &Act) {
        match (act, &mut self.plan) {
            (Act::Follow(route), plan) => {
                *plan = Some(Following {
                    spent: route.spent,
                    route: route.clone(),
                    is_followed: true,
                });
            }
            (Act::LeavePlan, Some(plan)) => plan.is_followed = false,
            _ => {}
        }
    }

    /// Counts the time that an act at the bays took since the one before; what isolation, proofs and
    /// stops take is not of the minutes at hand.
    pub(super) fn spend(&mut self, entry: &Entry) {
        let at_bays = matches!(
            entry.act,
            Act::Open { .. }
                | Act::Close { .. }
                | Act::SetTool { .. }
                | Act::Found { .. }
                | Act::Correct { .. }
                | Act::Look { .. }
                | Act::Damage { .. }
                | Act::Left { .. }
                | Act::Photo { .. }
        );
        let passed = entry.at.boot.seconds_since(&self.last.boot);
        let passed = passed.filter(|passed| at_bays && *passed <= IDLE_LIMIT);
        if let (Some(plan), Some(passed)) = (&mut self.plan, passed) {
            let passed = u32::try_from(passed).unwrap_or(u32::MAX);
            plan.spent = plan.spent.saturating_add(passed);
        }
    }
}
