//! What happened to a rig between walks: hours, trips, events, an odometer that was replaced.

use super::Reach;
use crate::coded::coded;
use crate::ids::ActId;
use crate::units::{DistanceUnit, HourUnit, Stated};
use chrono::NaiveDate;

coded! {
    /// What can happen that asks for a look before its time.
    EventKind as "event" {
        /// Work was done on a circuit.
        CircuitWork = "circuit_work",
        /// A hard impact: a curb, a pothole, a jack-knife, a collision.
        HardImpact = "hard_impact",
        /// A trip over bad road.
        RoughRoad = "rough_road",
    }
}

/// Miles of bad road that ask for a look where no rule says otherwise. Ours, no source.
pub const ROUGH_MILES: f64 = 100.0;

impl EventKind {
    /// The days after it in which to look, where no rule says otherwise: at once after an impact, a
    /// day after work, as what was disturbed is, a week after bad road. Common practice, no source.
    #[must_use]
    pub const fn days(self) -> u16 {
        match self {
            Self::HardImpact => 0,
            Self::CircuitWork => 1,
            Self::RoughRoad => 7,
        }
    }
}

coded! {
    /// Why an odometer goes on from another reading.
    Restart as "restart" {
        /// It was replaced.
        Replaced = "replaced",
        /// Earlier notes that were higher were wrong.
        EarlierWrong = "earlier_wrong",
    }
}

/// What happened, as it is noted.
#[derive(Debug, Clone, PartialEq)]
pub enum Usage {
    /// The hour meter of the engine; below the note before, it is another meter.
    Hours(Stated<HourUnit>),
    /// A trip of so far, for a rig without an odometer.
    Trip(Stated<DistanceUnit>),
    /// The odometer goes on from this reading.
    Restart {
        /// The reading.
        reading: Stated<DistanceUnit>,
        /// Why.
        why: Restart,
    },
    /// An event.
    Event {
        /// What happened.
        event: EventKind,
        /// What it is about.
        reach: Reach,
        /// How far, of bad road.
        distance: Option<Stated<DistanceUnit>>,
        /// In words.
        note: String,
    },
}

/// An odometer reading and its day.
#[derive(Debug, Clone, PartialEq)]
pub struct OdometerNote {
    /// The day.
    pub on: NaiveDate,
    /// The reading.
    pub reading: Stated<DistanceUnit>,
    /// Why it does not follow from the note before, where it does not.
    pub restart: Option<Restart>,
}

/// An event and its day.
#[derive(Debug, Clone, PartialEq)]
pub struct Event {
    /// The act that noted it.
    pub id: ActId,
    /// The day.
    pub on: NaiveDate,
    /// What happened.
    pub event: EventKind,
    /// What it is about.
    pub reach: Reach,
    /// How far, of bad road.
    pub distance: Option<Stated<DistanceUnit>>,
}
