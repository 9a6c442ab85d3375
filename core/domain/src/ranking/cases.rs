//! What a factor of a rank can find, in closed lists.

use crate::coded::coded;

coded! {
    /// What a rank is made of.
    FactorKind as "rank-factor" {
        /// What holds the conductor, or what the look is for.
        Kind = "kind",
        /// How long ago it was set or checked.
        Age = "age",
        /// How far the rig went since.
        Distance = "distance",
        /// What was found there before.
        History = "history",
        /// The current of its circuit.
        Current = "current",
        /// Which conductor it holds.
        Conductor = "conductor",
        /// How much of the rig gets its power through it.
        Behind = "behind",
        /// What could burn beside it.
        Nearby = "nearby",
        /// What the owner said of it.
        Priority = "priority",
    }
}

impl FactorKind {
    /// Whether it tells how readily a point moves, and not what it would do then.
    #[must_use]
    pub const fn is_likelihood(self) -> bool {
        matches!(
            self,
            Self::Kind | Self::Age | Self::Distance | Self::History
        )
    }
}

coded! {
    /// Where a weight comes from.
    WeightBasis as "weight-basis" {
        /// Common practice, no source.
        Practice = "practice",
        /// Set by this project.
        Ours = "ours",
        /// From memory.
        Memory = "memory",
    }
}

coded! {
    /// How long ago a point was set or checked.
    AgeBand as "rank-age" {
        /// Never, as far as is noted.
        Never = "never",
        /// Within a month.
        Month = "month",
        /// Within half a year.
        HalfYear = "half_year",
        /// Within about a year.
        Year = "year",
        /// Within about two years.
        TwoYears = "two_years",
        /// Longer ago.
        Older = "older",
    }
}

coded! {
    /// How far the rig went since.
    DistanceBand as "rank-distance" {
        /// Not known.
        Unknown = "unknown",
        /// Hardly anywhere.
        Short = "short",
        /// About as far as in a season.
        Season = "season",
        /// Farther.
        Far = "far",
        /// Much farther.
        VeryFar = "very_far",
    }
}

coded! {
    /// What was found at a point before.
    HistoryCase as "rank-history" {
        /// It was never checked.
        None = "none",
        /// It held two times running or more.
        HeldOften = "held_often",
        /// It held last time.
        Held = "held",
        /// It had moved last time.
        Moved = "moved",
        /// It had moved two times running or more.
        MovedAgain = "moved_again",
        /// It was loose or apart last time.
        CameLoose = "came_loose",
    }
}

coded! {
    /// The current of a circuit.
    CurrentBand as "rank-current" {
        /// Up to 5 A.
        Tiny = "tiny",
        /// Up to 20 A.
        Branch = "branch",
        /// Up to 60 A.
        Feeder = "feeder",
        /// Up to 150 A.
        Heavy = "heavy",
        /// More.
        Heaviest = "heaviest",
    }
}

coded! {
    /// Which conductor a point holds.
    ConductorCase as "rank-conductor" {
        /// An AC line.
        Line = "line",
        /// A neutral of a 120 V circuit.
        Neutral = "neutral",
        /// The neutral of a 120/240 V set.
        OpenNeutral = "open_neutral",
        /// Equipment ground or a bond.
        EquipmentGround = "equipment_ground",
        /// DC.
        Direct = "direct",
        /// Control or signal.
        Control = "control",
        /// None: a look.
        None = "none",
    }
}

coded! {
    /// How much of the rig gets its power through a point.
    BehindBand as "rank-behind" {
        /// Little, or it is not noted.
        Little = "little",
        /// Some.
        Some = "some",
        /// Much.
        Much = "much",
        /// Most.
        Most = "most",
        /// Much or most of it, whether shore or generator feeds it.
        All = "all",
    }
}

coded! {
    /// What could burn beside a point.
    Nearby as "rank-nearby" {
        /// Nothing in particular.
        Open = "open",
        /// The living space.
        Living = "living",
        /// Gas of a battery.
        Gas = "gas",
        /// Fuel.
        Fuel = "fuel",
    }
}
