//! Before a walk: what is seen to before power is taken away.

use crate::coded::coded;

coded! {
    /// What is seen to before power is taken away (common practice, no source).
    ReadyItem as "ready" {
        /// Level ground, wheels chocked, jacks and slides still, nobody underneath.
        Still = "still",
        /// Engine off, key in the pocket, generator cold.
        EngineOff = "engine_off",
        /// Rings and watch off, glasses on.
        Body = "body",
        /// A lamp of one's own.
        Lamp = "lamp",
        /// A contact meter of the right category.
        Meter = "meter",
        /// A torque tool.
        TorqueTool = "torque_tool",
        /// Insulated tools, tape, tags.
        HandTools = "hand_tools",
        /// Gas closed at the tank.
        Gas = "gas",
        /// A second person near.
        Company = "company",
        /// The phone charged.
        Phone = "phone",
    }
}

impl ReadyItem {
    /// Whether the walk can't go on without it.
    #[must_use]
    pub const fn is_must(self) -> bool {
        matches!(self, Self::Still | Self::EngineOff | Self::Body | Self::Gas)
    }
}

/// What was answered.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum ReadyAnswer {
    /// It is so.
    Done,
    /// It is not, and why; the walk goes on without it where it can.
    Without(String),
}
