//! As found: what the hand met before anything was set right.

use crate::coded::coded;
use crate::ids::ToolId;
use crate::units::{Stated, TorqueUnit};

coded! {
    /// The grades as found.
    Grade as "grade" {
        /// Did not turn at the check torque, or did not give at the tug.
        Held = "held",
        /// Turned, by an angle, or gave a little.
        Moved = "moved",
        /// Moved by hand.
        Loose = "loose",
        /// Conductor out.
        Apart = "apart",
        /// Seen, without a tool.
        LookedAt = "looked_at",
        /// Not judged.
        NotJudged = "not_judged",
    }
}

coded! {
    /// How far a screw was turned in until the tool clicked.
    Angle as "angle" {
        /// A hair.
        Hair = "hair",
        /// An eighth of a turn.
        Eighth = "eighth",
        /// A quarter turn.
        Quarter = "quarter",
        /// Half a turn.
        Half = "half",
        /// Three quarters of a turn.
        ThreeQuarters = "three_quarters",
        /// A turn or more.
        Turn = "turn",
    }
}

impl Angle {
    /// The angle it is drawn at, in degrees.
    #[must_use]
    pub const fn degrees(self) -> u16 {
        match self {
            Self::Hair => 15,
            Self::Eighth => 45,
            Self::Quarter => 90,
            Self::Half => 180,
            Self::ThreeQuarters => 270,
            Self::Turn => 345,
        }
    }
}

coded! {
    /// Why a point was not judged.
    NotJudgedWhy as "not-judged" {
        /// Out of reach, or no time.
        NotReached = "not_reached",
        /// Something there stays alive.
        Alive = "alive",
        /// Sealed by its maker.
        Sealed = "sealed",
        /// The right tool or meter is not at hand.
        NoTool = "no_tool",
        /// Left for a qualified person.
        ForQualified = "for_qualified",
        /// Another reason, in words.
        Other = "other",
    }
}

/// What a held joint was tried with.
#[derive(Debug, Clone, PartialEq)]
pub enum Test {
    /// A torque tool, without turning.
    Torque {
        /// What the tool was set to.
        at: Stated<TorqueUnit>,
        /// The tool.
        tool: ToolId,
    },
    /// A tug, without giving.
    Tug,
}

/// How a joint moved.
#[derive(Debug, Clone, PartialEq)]
pub enum Movement {
    /// Turned in by an angle before the tool clicked.
    Turned {
        /// How far.
        angle: Angle,
        /// What the tool was set to.
        below: Stated<TorqueUnit>,
        /// The tool.
        tool: ToolId,
    },
    /// Began to turn at a torque that an indicating tool showed.
    Began {
        /// That torque.
        at: Stated<TorqueUnit>,
        /// The tool.
        tool: ToolId,
    },
    /// Its paint mark stands off.
    MarkOff {
        /// How far.
        angle: Angle,
    },
    /// Gave at the tug.
    Gave,
}

/// What was found at a terminal.
#[derive(Debug, Clone, PartialEq)]
pub enum AsFound {
    /// Did not move.
    Held(Test),
    /// Moved.
    Moved(Movement),
    /// Moved by hand.
    Loose,
    /// Conductor out.
    Apart,
    /// Undone by us to get by; it must be set again.
    OpenedByUs,
    /// Seen, without a torque tool.
    LookedAt {
        /// Whether it was tugged too.
        tugged: bool,
    },
    /// Not judged.
    NotJudged {
        /// Why.
        why: NotJudgedWhy,
        /// In words; empty where the reason says it.
        note: String,
    },
}

impl AsFound {
    /// The grade.
    #[must_use]
    pub const fn grade(&self) -> Grade {
        match self {
            Self::Held(_) => Grade::Held,
            Self::Moved(_) => Grade::Moved,
            Self::Loose => Grade::Loose,
            Self::Apart => Grade::Apart,
            Self::LookedAt { .. } => Grade::LookedAt,
            Self::OpenedByUs | Self::NotJudged { .. } => Grade::NotJudged,
        }
    }

    /// Whether something must be done, and said, before the bay closes.
    #[must_use]
    pub const fn needs_left(&self) -> bool {
        matches!(
            self,
            Self::Moved(_) | Self::Loose | Self::Apart | Self::OpenedByUs
        )
    }

    /// Whether a hand or tool was on it.
    #[must_use]
    pub const fn touches(&self) -> bool {
        !matches!(
            self,
            Self::LookedAt { tugged: false } | Self::NotJudged { .. }
        )
    }
}
