//! What may be wrong with a service.

use crate::coded::coded;

coded! {
    /// A way in which a service can stand.
    Fault as "service-fault" {
        /// Nothing is wrong that these readings can show.
        Healthy = "healthy",
        /// Sound, but below ANSI C84.1 range B at the service.
        LowService = "low_service",
        /// Sound, but above ANSI C84.1 range B at the service.
        HighService = "high_service",
        /// Two lines of a 208Y/120 V supply where 120/240 V is expected.
        Supply208 = "supply_208",
        /// Both lines on one hot conductor, as an adapter from a 30 A outlet makes it.
        OneLegAdapter = "one_leg_adapter",
        /// The neutral has a bad joint.
        WeakNeutral = "weak_neutral",
        /// The neutral is open.
        OpenNeutral = "open_neutral",
        /// A line has a bad joint.
        WeakLeg = "weak_leg",
        /// A line is open.
        OpenLeg = "open_leg",
        /// A line and the neutral have changed places.
        LineNeutralSwapped = "line_neutral_swapped",
        /// A line and the equipment ground have changed places: the body is live.
        LineGroundSwapped = "line_ground_swapped",
        /// The equipment ground is open, or the source in use has no neutral-ground bond.
        OpenGround = "open_ground",
        /// Neutral and equipment ground have changed places, or are bonded a second time.
        NeutralGroundMixed = "neutral_ground_mixed",
    }
}

impl Fault {
    /// Whether every conductor is where it belongs and whole: what is left is the level of the supply
    /// and its kind.
    #[must_use]
    pub const fn is_sound(self) -> bool {
        matches!(
            self,
            Self::Healthy
                | Self::LowService
                | Self::HighService
                | Self::Supply208
                | Self::OneLegAdapter
        )
    }

    /// Whether it shows once every pair was read, even with nothing switched on.
    #[must_use]
    pub const fn shows_unloaded(self) -> bool {
        matches!(
            self,
            Self::LineNeutralSwapped
                | Self::LineGroundSwapped
                | Self::Supply208
                | Self::OneLegAdapter
        )
    }

    /// Whether it is a joint that may glow.
    #[must_use]
    pub const fn is_joint(self) -> bool {
        matches!(self, Self::WeakNeutral | Self::WeakLeg)
    }
}

coded! {
    /// The conductor or conductors that a fault sits on.
    Conductor as "service-conductor" {
        /// Line 1.
        Line1 = "line_1",
        /// Line 2.
        Line2 = "line_2",
        /// Both lines.
        BothLines = "both_lines",
        /// The neutral.
        Neutral = "neutral",
        /// The equipment ground.
        Ground = "ground",
    }
}
