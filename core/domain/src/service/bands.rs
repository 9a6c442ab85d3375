//! Voltage bands as data, each with how it is known.

use super::{Pair, Place, Survey};
use crate::coded::coded;
use crate::rig::ServiceKind;

coded! {
    /// A named band of voltage.
    BandName as "voltage-band" {
        /// ANSI C84.1 range A at the service.
        ServiceA = "ansi_service_a",
        /// ANSI C84.1 range B at the service.
        ServiceB = "ansi_service_b",
        /// ANSI C84.1 range A where appliances are used.
        UseA = "ansi_use_a",
        /// ANSI C84.1 range B where appliances are used.
        UseB = "ansi_use_b",
        /// Where protectors of recreational vehicles commonly cut out.
        CutOut = "cut_out",
    }
}

coded! {
    /// How a figure of this module is known.
    Grounds as "grounds" {
        /// From memory of the published standard.
        Memory = "memory",
        /// Common practice, no source.
        Practice = "common_practice",
    }
}

coded! {
    /// How certain a figure is.
    Certainty as "band-certainty" {
        /// Little doubt.
        High = "high",
        /// Some doubt.
        Medium = "medium",
        /// Other figures are quoted too.
        Low = "low",
    }
}

/// A band of voltage on a nominal 120 V leg; between lines of a 240 V service it is twice that.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Band {
    /// Its name.
    pub name: BandName,
    /// The least, line to neutral, in volts.
    pub least: f64,
    /// The most, line to neutral, in volts.
    pub most: f64,
    /// How it is known.
    pub grounds: Grounds,
    /// How certain it is.
    pub certainty: Certainty,
}

const fn band(
    name: BandName,
    least: f64,
    most: f64,
    grounds: Grounds,
    certainty: Certainty,
) -> Band {
    Band {
        name,
        least,
        most,
        grounds,
        certainty,
    }
}

/// ANSI C84.1 range A at the service: 114 to 126 V, from memory.
pub const SERVICE_A: Band = band(
    BandName::ServiceA,
    114.0,
    126.0,
    Grounds::Memory,
    Certainty::High,
);
/// ANSI C84.1 range B at the service: 110 to 127 V, from memory.
pub const SERVICE_B: Band = band(
    BandName::ServiceB,
    110.0,
    127.0,
    Grounds::Memory,
    Certainty::High,
);
/// ANSI C84.1 range A of utilisation: 108 to 126 V, from memory (110 V for lighting in older
/// editions).
pub const USE_A: Band = band(
    BandName::UseA,
    108.0,
    126.0,
    Grounds::Memory,
    Certainty::Medium,
);
/// ANSI C84.1 range B of utilisation: 104 to 127 V, from memory (106 V for lighting in older
/// editions).
pub const USE_B: Band = band(
    BandName::UseB,
    104.0,
    127.0,
    Grounds::Memory,
    Certainty::Medium,
);
/// The common cut-out of protectors: 104 to 132 V. Common practice, no source; 102 to 132 V and 108
/// to 136 V are quoted too.
pub const CUT_OUT: Band = band(
    BandName::CutOut,
    104.0,
    132.0,
    Grounds::Practice,
    Certainty::Low,
);

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
