//! Following a plan, and leaving it.

use super::Deciding;
use crate::ids::BayId;
use crate::plan::MOST_SECONDS;
use crate::walk::{Phase, Refusal, Route, Shown, WalkState};

impl Deciding<'_> {
    /// A route may be followed until power comes back, and again after it was left; it names each
    /// bay once, and points of that bay alone.
    pub(super) fn follow(&self, walk: &WalkState, route: &Route) -> Result<Shown, Refusal> {
        if matches!(walk.phase, Phase::PoweringUp | Phase::Ended) {
            return Err(Refusal::Phase {
                found: walk.phase,
                expected: Phase::AtBays,
            });
        }
        if route.minutes == 0 || 60 * u32::from(route.minutes) > MOST_SECONDS {
            return Err(Refusal::NoRoute);
        }
        let book = self.book()?;
        let mut seen: Vec<BayId> = Vec::new();
        for stop in &route.stops {
            let bay = book.bay(stop.bay).filter(|bay| !bay.retired);
            bay.filter(|bay| !seen.contains(&bay.id))
                .ok_or(Refusal::NotInBook("bay"))?;
            seen.push(stop.bay);
            let here = book.points_of(stop.bay);
            let known = |point| here.iter().any(|found| found.id == point);
            if !stop.points.iter().all(|point| known(*point)) {
                return Err(Refusal::NotInBook("point"));
            }
        }
        Ok(Shown::default())
    }
}

/// A plan is left only where one is followed.
pub(super) fn leave(walk: &WalkState) -> Result<Shown, Refusal> {
    walk.route()
        .map_or(Err(Refusal::NoRoute), |_| Ok(Shown::default()))
}
