//! By what something is due.

use super::EventKind;
use crate::coded::coded;

coded! {
    /// Which limit comes first.
    DueReason as "due-reason" {
        /// The months.
        Months = "months",
        /// The distance, by the pace of the odometer notes.
        Distance = "distance",
        /// Nothing was ever walked: it is due now.
        NeverWalked = "never_walked",
        /// The hours of the engine.
        Hours = "hours",
        /// A day of the season.
        Season = "season",
        /// Work on a circuit.
        CircuitWork = "circuit_work",
        /// A hard impact.
        HardImpact = "hard_impact",
        /// A trip over bad road.
        RoughRoad = "rough_road",
        /// The chance that a critical terminal has moved, by the rig's own past.
        Learned = "learned",
        /// What was disturbed is looked at again.
        Settling = "settling",
    }
}

impl From<EventKind> for DueReason {
    fn from(event: EventKind) -> Self {
        match event {
            EventKind::CircuitWork => Self::CircuitWork,
            EventKind::HardImpact => Self::HardImpact,
            EventKind::RoughRoad => Self::RoughRoad,
        }
    }
}
