//! Findings: what needs attention after a check, and what was decided about it.

use crate::coded::coded;
use crate::ids::{BayId, FindingId, PointId, SourceId, WalkId};
use crate::supply::ReadingStep;
use chrono::NaiveDate;

coded! {
    /// The kinds of finding.
    FindingKind as "finding" {
        /// Moved in two walks running: remake, not set.
        MovedAgain = "moved_again",
        /// Moved and left as it was.
        MovedLeft = "moved_left",
        /// Conductor was out.
        WasApart = "was_apart",
        /// Taken out of service.
        OutOfService = "out_of_service",
        /// Damage was seen that spoils the joint or its body.
        Damaged = "damaged",
        /// Wear was seen: corrosion, moisture, chafing.
        Worn = "worn",
        /// More conductors landed than allowed (NEC 110.14(A), 408.41).
        TooManyConductors = "too_many_conductors",
        /// A conductor outside the sizes the terminal is marked for.
        WireOutsideRange = "wire_outside_range",
        /// Set to something else than the figure shown.
        SetOffFigure = "set_off_figure",
        /// Something was seen at a look.
        LookTrouble = "look_trouble",
        /// Not judged because something there stays alive.
        NotReachedAlive = "not_reached_alive",
        /// A reading was not safe.
        BadReading = "bad_reading",
        /// A reading is near a limit.
        OddReading = "odd_reading",
        /// A source was left away.
        SourceLeftAway = "source_left_away",
        /// The walk ended with a bay open.
        BayLeftOpen = "bay_left_open",
        /// A source could not be told to be there or not.
        SourceUnknown = "source_unknown",
    }
}

coded! {
    /// How soon a finding wants an answer.
    Urgency as "urgency" {
        /// Before it is used again.
        BeforeUse = "before_use",
        /// Before the season.
        Soon = "soon",
        /// At the next walk.
        NextWalk = "next_walk",
    }
}

impl FindingKind {
    /// How soon it wants an answer. Ours.
    #[must_use]
    pub const fn urgency(self) -> Urgency {
        match self {
            Self::OutOfService
            | Self::BadReading
            | Self::BayLeftOpen
            | Self::Damaged
            | Self::NotReachedAlive => Urgency::BeforeUse,
            Self::MovedAgain
            | Self::MovedLeft
            | Self::TooManyConductors
            | Self::WireOutsideRange
            | Self::LookTrouble
            | Self::Worn
            | Self::SourceUnknown
            | Self::SetOffFigure
            | Self::SourceLeftAway => Urgency::Soon,
            Self::WasApart | Self::OddReading => Urgency::NextWalk,
        }
    }
}

/// What a finding, a photo or a note is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum About {
    /// The rig as a whole.
    Rig,
    /// A bay.
    Bay(BayId),
    /// A point.
    Point(PointId),
    /// A source.
    Source(SourceId),
    /// A reading.
    Reading(ReadingStep),
}

/// A finding as it was raised.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Raised {
    /// Its name.
    pub id: FindingId,
    /// Its kind.
    pub kind: FindingKind,
    /// What it is about.
    pub about: About,
}

coded! {
    /// What was decided about a finding.
    Decision as "decision" {
        /// Mended; the finding is closed.
        Mended = "mended",
        /// A licensed person is asked.
        Licensed = "licensed",
        /// Mended by ourselves later.
        Ourselves = "ourselves",
        /// Looked at again at the next walk.
        NextWalk = "next_walk",
        /// Left as it is, with a reason; the finding is closed.
        Accepted = "accepted",
    }
}

impl Decision {
    /// Whether it closes the finding.
    #[must_use]
    pub const fn closes(self) -> bool {
        matches!(self, Self::Mended | Self::Accepted)
    }
}

/// What was decided about a finding, until when, and why.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FollowUp {
    /// The decision.
    pub decision: Decision,
    /// The day until which it is done, where one was named.
    pub by: Option<NaiveDate>,
    /// In words.
    pub note: String,
}

/// A finding with what was decided about it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Finding {
    /// As it was raised.
    pub raised: Raised,
    /// The walk that raised it.
    pub walk: Option<WalkId>,
    /// The day it was raised.
    pub on: NaiveDate,
    /// What was decided last.
    pub follow_up: Option<FollowUp>,
}

impl Finding {
    /// Whether it still waits.
    #[must_use]
    pub fn is_open(&self) -> bool {
        !self
            .follow_up
            .as_ref()
            .is_some_and(|follow_up| follow_up.decision.closes())
    }
}
