//! Where each bay stands on the strip.

use super::scale::Scale;
use super::stretches::share_out;
use crate::count::measure;
use crate::spread::{Span, spread};
use baywalk_domain::ids::BayId;
use baywalk_domain::rig::{Bay, RigKind, Side};

/// Free room between two bays.
pub(super) const GAP: f64 = 4.0;

/// The height at which a bay stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Lane {
    /// Below the floor, reached from outside.
    Low,
    /// Inside the living space.
    Inside,
    /// On the roof.
    Roof,
}

impl Lane {
    const fn of(side: Side) -> Self {
        match side {
            Side::Left | Side::Right | Side::Front | Side::Back | Side::Under => Self::Low,
            Side::Inside => Self::Inside,
            Side::Roof => Self::Roof,
        }
    }

    /// Whether its tags stand above the rig.
    pub(super) const fn is_above(self) -> bool {
        matches!(self, Self::Inside | Self::Roof)
    }
}

/// A bay with its place.
#[derive(Debug, Clone, Copy)]
pub(super) struct Placed<'a> {
    pub(super) bay: &'a Bay,
    pub(super) lane: Lane,
    pub(super) middle: f64,
    pub(super) width: f64,
}

/// Places all bays. Low bays stand in the stretches between nose, wheels and tail; the others share
/// one stretch, so that none stands over another's leader.
pub(super) fn place<'a>(
    bays: &[&'a Bay],
    count: &dyn Fn(BayId) -> usize,
    scale: Scale,
    kind: RigKind,
) -> Vec<Placed<'a>> {
    let placed = |bay: &&'a Bay| {
        let lane = Lane::of(bay.side);
        let least = if lane == Lane::Low { 22.0 } else { 26.0 };
        Placed {
            bay,
            lane,
            middle: f64::from(bay.station.thousandths()) / 1000.0 * scale.width,
            width: (least + 20.0 * (measure(count(bay.id)) / 14.0).min(1.0)) * scale.times,
        }
    };
    let all: Vec<Placed<'a>> = bays.iter().map(placed).collect();
    let (upper, low): (Vec<_>, Vec<_>) = all.into_iter().partition(|bay| bay.lane.is_above());
    let whole = (60.0 * scale.times, scale.width - 8.0);
    let mut stretches = share_out(low, scale, kind);
    stretches.push((whole, upper));
    stretches
        .into_iter()
        .flat_map(|(ends, bays)| apart(bays, ends))
        .collect()
}

/// Pushes the bays of a stretch apart.
fn apart(bays: Vec<Placed<'_>>, ends: (f64, f64)) -> Vec<Placed<'_>> {
    let span = |bay: &Placed<'_>| Span {
        middle: bay.middle,
        half: bay.width / 2.0,
    };
    let mut spans: Vec<Span> = bays.iter().map(span).collect();
    spread(&mut spans, ends, GAP);
    let placed = bays.into_iter().zip(spans);
    placed
        .map(|(bay, span)| Placed {
            middle: span.middle,
            width: span.half * 2.0,
            ..bay
        })
        .collect()
}
