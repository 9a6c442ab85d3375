//! Which band of voltage each reading falls into.

use super::{Pair, Place, Survey};
use crate::rig::ServiceKind;
use crate::supply::{Band, BandName, CUT_OUT, SERVICE_A, SERVICE_B, USE_A, USE_B};

/// The bands that hold at a place, the tightest first.
#[must_use]
pub const fn bands_at(place: Place) -> [Band; 3] {
    match place {
        Place::Outlet => [SERVICE_A, SERVICE_B, CUT_OUT],
        Place::Coach => [USE_A, USE_B, CUT_OUT],
    }
}

/// The band that one reading falls into.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BandSeen {
    /// The load state, counted from 0.
    pub state: usize,
    /// The pair.
    pub pair: Pair,
    /// The tightest band that holds it; `None` outside all of them.
    pub band: Option<BandName>,
    /// Whether the meter's error reaches across a limit of that band, or from outside into the
    /// widest one.
    pub borderline: bool,
}

/// The band of every reading of a leg, and of both lines.
pub(super) fn bands_seen(survey: &Survey) -> Vec<BandSeen> {
    let bands = bands_at(survey.place());
    let split = survey.service() == ServiceKind::Amp50;
    let mut seen = Vec::new();
    for (state, readings) in survey.states().iter().enumerate() {
        for (pair, volts) in readings.readings() {
            let lines = split && pair == Pair::L1L2;
            if !pair.is_leg() && !lines {
                continue;
            }
            let scale = if lines { 0.5 } else { 1.0 };
            let (leg, error) = (volts * scale, survey.meter().error(volts) * scale);
            let holds = |band: &&Band| (band.least..=band.most).contains(&leg);
            let within = bands.iter().find(holds);
            let near =
                |band: &Band| (leg - band.least).abs() <= error || (leg - band.most).abs() <= error;
            seen.push(BandSeen {
                state,
                pair,
                band: within.map(|band| band.name),
                borderline: near(within.unwrap_or(&CUT_OUT)),
            });
        }
    }
    seen
}
