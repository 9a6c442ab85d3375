//! Bands of service voltage as data, each with how it is known.

use crate::coded::coded;

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

impl Band {
    /// The least and the most, line to neutral, in volts.
    pub(super) const fn leg(&self) -> (f64, f64) {
        (self.least, self.most)
    }

    /// The least and the most, line to line of a 240 V service, in volts.
    pub(crate) const fn lines(&self) -> (f64, f64) {
        (2.0 * self.least, 2.0 * self.most)
    }
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
