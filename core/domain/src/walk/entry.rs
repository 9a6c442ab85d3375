//! What an act became: the act with all that was decided and shown.

use super::Act;
use crate::due::DueReason;
use crate::finding::Raised;
use crate::ids::{ActId, RigId, SourceId, WalkId};
use crate::isolation::Lapse;
use crate::moment::Moment;
use crate::service::ServiceSeen;
use crate::supply::Judged;
use crate::torque::{Action, BasisKind};
use crate::units::{DistanceUnit, Stated, TorqueUnit};
use chrono::NaiveDate;

/// The torque advice as it stood on the screen.
#[derive(Debug, Clone, PartialEq)]
pub struct AdviceShown {
    /// What was advised.
    pub action: Action,
    /// The figure, where there is one.
    pub target: Option<Stated<TorqueUnit>>,
    /// What the tool is set to for the check.
    pub check: Option<Stated<TorqueUnit>>,
    /// The kind of basis of the figure.
    pub basis: Option<BasisKind>,
    /// Which label, document or table, with its edition.
    pub source: String,
}

/// The next due day as it was computed at the end of a walk.
#[derive(Debug, Clone, PartialEq)]
pub struct DueShown {
    /// The day.
    pub on: NaiveDate,
    /// Which limit came first.
    pub reason: DueReason,
    /// The odometer at which it is due.
    pub at: Option<Stated<DistanceUnit>>,
    /// The day of the second look at what was disturbed, where something was.
    pub second_look: Option<NaiveDate>,
}

/// What was decided and shown with an act.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Shown {
    /// The torque advice.
    pub advice: Option<AdviceShown>,
    /// Whether a reading was judged dead.
    pub dead: Option<bool>,
    /// The sources that could still feed a conductor found live.
    pub suspects: Vec<SourceId>,
    /// How a reading was judged.
    pub judged: Option<Judged>,
    /// What the circuit of the service said after it.
    pub service: Option<ServiceSeen>,
    /// The findings raised.
    pub findings: Vec<Raised>,
    /// The next due day.
    pub due: Option<DueShown>,
}

/// What was noticed about the clocks.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Flags {
    /// The wall clock stood before that of an earlier entry.
    pub clock_back: bool,
    /// Why the proofs made before this act no longer count.
    pub lapse: Option<Lapse>,
}

/// One entry of the ledger, as the domain reads it.
#[derive(Debug, Clone, PartialEq)]
pub struct Entry {
    /// The act's name.
    pub id: ActId,
    /// The rig.
    pub rig: RigId,
    /// The walk, where it belongs to one.
    pub walk: Option<WalkId>,
    /// When.
    pub at: Moment,
    /// What was noticed about the clocks.
    pub flags: Flags,
    /// The act.
    pub act: Act,
    /// What was decided and shown.
    pub shown: Shown,
}
