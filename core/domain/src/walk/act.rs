//! What a person does: one act, one entry.

use super::{AsFound, AsLeft, Damage, Mark, ReadyAnswer, ReadyItem, Recovery, Route, Seen};
use crate::due::{Asked, RuleChange, Usage};
use crate::finding::{About, FollowUp};
use crate::ids::{ActId, BayId, DeviceId, FindingId, PointId, SourceId, ToolId};
use crate::isolation::Meter;
use crate::rig::{BookChange, Check, SupplyKind};
use crate::supply::Reading;
use crate::units::{DistanceUnit, Stated, TorqueUnit, VoltageUnit};
use chrono::NaiveDate;

/// How much of the rig a walk goes through.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Scope {
    /// All of it.
    Whole,
    /// Some bays.
    Bays(Vec<BayId>),
    /// A second look at points that an earlier walk disturbed.
    SecondLook(Vec<PointId>),
}

/// How a source was taken away.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Away {
    /// Isolated as its record says; a note may tell how it is kept so.
    Isolated(String),
    /// It was searched for and not found; it still counts as connected until the proof.
    NotFound(String),
    /// It can't be taken away, and why.
    Stays(String),
}

/// What is counted before a cover goes on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Counted {
    /// Conductors lie clear of cover and edges.
    pub conductors_clear: bool,
    /// Screws and nuts are all back.
    pub hardware: bool,
    /// Tools are all out.
    pub tools: bool,
    /// The cover is on.
    pub covers: bool,
}

impl Counted {
    /// All of it.
    pub const ALL: Self = Self {
        conductors_clear: true,
        hardware: true,
        tools: true,
        covers: true,
    };

    /// Whether all of it is so.
    #[must_use]
    pub const fn is_complete(self) -> bool {
        self.conductors_clear && self.hardware && self.tools && self.covers
    }
}

/// How a walk ends.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Ending {
    /// Gone through to the end.
    Whole,
    /// Ended early, and why.
    Early(String),
}

/// One act of a person.
#[derive(Debug, Clone, PartialEq)]
pub enum Act {
    /// Changes the rig's book.
    Book(BookChange),
    /// Notes the odometer.
    Odometer(Stated<DistanceUnit>),
    /// Notes what happened between walks.
    Usage(Usage),
    /// Sets or drops a rule of when to look again.
    Rule(RuleChange),
    /// Puts off something that is due.
    PutOff {
        /// What.
        asked: Asked,
        /// Until when.
        until: NaiveDate,
        /// Why.
        why: String,
    },
    /// Starts a walk.
    Start {
        /// Who walks.
        person: String,
        /// How much of the rig.
        scope: Scope,
    },
    /// Answers one item of the list before.
    Ready {
        /// The item.
        item: ReadyItem,
        /// The answer.
        answer: ReadyAnswer,
    },
    /// Takes a source away.
    Isolate {
        /// The source.
        source: SourceId,
        /// How.
        away: Away,
    },
    /// Follows a plan: the first one, one made anew at the close of a bay, or again after it was left.
    Follow(Route),
    /// Leaves the plan: the bays come nose to tail again.
    LeavePlan,
    /// Opens a bay.
    Open {
        /// The bay.
        bay: BayId,
    },
    /// Reads a named source that is known to be live, before or after the conductors in question.
    KnownLive {
        /// The bay whose proof it belongs to.
        bay: BayId,
        /// AC or DC.
        supply: SupplyKind,
        /// The source that was read.
        place: String,
        /// What with.
        meter: Meter,
        /// The reading.
        volts: Stated<VoltageUnit>,
    },
    /// Reads a pair that must be dead.
    Read {
        /// The device.
        device: DeviceId,
        /// The pair.
        check: Check,
        /// The reading.
        volts: Stated<VoltageUnit>,
    },
    /// Goes on at a set that stays live, knowingly.
    Except {
        /// The device.
        device: DeviceId,
        /// The set.
        set: String,
        /// Why, typed.
        reason: String,
    },
    /// Says what a tool is set to now; each change of setting is said before it is used.
    SetTool {
        /// The tool.
        tool: ToolId,
        /// Its setting.
        at: Stated<TorqueUnit>,
    },
    /// Notes what was found at a terminal.
    Found {
        /// The point.
        point: PointId,
        /// What was found.
        found: AsFound,
    },
    /// Notes anew what was found, where the note was wrong.
    Correct {
        /// The point.
        point: PointId,
        /// What was found in truth.
        found: AsFound,
        /// Why the first note was wrong.
        why: String,
    },
    /// Notes what was seen at a look.
    Look {
        /// The point.
        point: PointId,
        /// What was seen.
        seen: Seen,
    },
    /// Notes damage.
    Damage {
        /// The point.
        point: PointId,
        /// What.
        damage: Damage,
        /// In words.
        note: String,
    },
    /// Notes what was done.
    Left {
        /// The point.
        point: PointId,
        /// What.
        left: AsLeft,
    },
    /// Notes a photo that was taken in.
    Photo {
        /// What it shows.
        about: About,
        /// SHA-256 of the kept file, in lower-case hexadecimal.
        digest: String,
        /// In words.
        caption: String,
    },
    /// Closes a bay.
    Close {
        /// The bay.
        bay: BayId,
        /// What was counted.
        counted: Counted,
    },
    /// Begins to bring power back.
    PowerUp,
    /// Brings a source back.
    Restore {
        /// The source.
        source: SourceId,
    },
    /// Leaves a source away.
    LeaveAway {
        /// The source.
        source: SourceId,
        /// Why.
        why: String,
    },
    /// Takes a reading while power comes back.
    Measure(Reading),
    /// Stops for now.
    Pause,
    /// Goes on.
    Resume,
    /// Ends the walk.
    End(Ending),
    /// Decides about a finding.
    Decide {
        /// The finding.
        finding: FindingId,
        /// What was decided.
        follow_up: FollowUp,
    },
    /// Strikes the newest act of the walk that stands.
    Strike {
        /// The act.
        act: ActId,
    },
    /// Tells that the logbook came from a backup: once for the logbook, once for each open walk.
    FromBackup {
        /// The newest entry of the backup.
        backup: Mark,
        /// The newest entry of the logbook that it replaced, where that could be read.
        replaced: Option<Mark>,
    },
    /// Tells that the logbook was recovered from a damaged one: once for the logbook, once for each
    /// open walk.
    Recovered(Recovery),
}

impl Act {
    /// The stable word for the kind of act, as scripts and the ledger have it.
    #[must_use]
    pub const fn kind(&self) -> &'static str {
        match self {
            Self::Book(_) => "book",
            Self::Odometer(_) => "odometer",
            Self::Usage(_) => "usage",
            Self::Rule(_) => "rule",
            Self::PutOff { .. } => "put_off",
            Self::Start { .. } => "start",
            Self::Ready { .. } => "ready",
            Self::Isolate { .. } => "isolate",
            Self::Follow(_) => "follow",
            Self::LeavePlan => "leave_plan",
            Self::Open { .. } => "open",
            Self::KnownLive { .. } => "known_live",
            Self::Read { .. } => "read",
            Self::Except { .. } => "except",
            Self::SetTool { .. } => "set_tool",
            Self::Found { .. } => "found",
            Self::Correct { .. } => "correct",
            Self::Look { .. } => "look",
            Self::Damage { .. } => "damage",
            Self::Left { .. } => "left",
            Self::Photo { .. } => "photo",
            Self::Close { .. } => "close",
            Self::PowerUp => "power_up",
            Self::Restore { .. } => "restore",
            Self::LeaveAway { .. } => "leave_away",
            Self::Measure(_) => "measure",
            Self::Pause => "pause",
            Self::Resume => "resume",
            Self::End(_) => "end",
            Self::Decide { .. } => "decide",
            Self::Strike { .. } => "strike",
            Self::FromBackup { .. } => "from_backup",
            Self::Recovered(_) => "recovered",
        }
    }

    /// Whether it stands outside walks and needs none to be open.
    #[must_use]
    pub const fn is_outside(&self) -> bool {
        matches!(
            self,
            Self::Book(_)
                | Self::Odometer(_)
                | Self::Usage(_)
                | Self::Rule(_)
                | Self::PutOff { .. }
                | Self::Start { .. }
                | Self::Decide { .. }
        ) || self.is_origin()
    }

    /// Whether the logbook tells by it where it comes from; no person does it, none strikes it.
    #[must_use]
    pub const fn is_origin(&self) -> bool {
        matches!(self, Self::FromBackup { .. } | Self::Recovered(_))
    }
}
