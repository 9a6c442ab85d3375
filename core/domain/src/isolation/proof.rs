//! A dead proof: known live, the conductors in question, known live again.

use super::Meter;
use crate::coded::coded;
use crate::ids::DeviceId;
use crate::moment::Moment;
use crate::rig::{Check, SupplyKind};
use crate::units::{Stated, VoltageUnit};

coded! {
    /// Why earlier proofs no longer count.
    Lapse as "lapse" {
        /// The walk was stopped and gone on with.
        Pause = "pause",
        /// The machine was started anew.
        Restart = "restart",
        /// Nothing was noted for too long.
        Idle = "idle",
        /// The wall clock and the clock since start disagree.
        ClockJump = "clock_jump",
        /// A conductor of the bay was found live.
        FoundLive = "found_live",
        /// A source or a proof was struck or changed.
        Isolation = "isolation",
        /// Another meter was taken in the middle of it.
        OtherMeter = "other_meter",
        /// The logbook was restored from a backup or recovered: what was done since is not in it.
        Restored = "restored",
    }
}

/// A reading on a named source that is known to be live.
#[derive(Debug, Clone, PartialEq)]
pub struct KnownLive {
    /// The source that was read, such as "supply outlet".
    pub place: String,
    /// What it was read with.
    pub meter: Meter,
    /// The reading.
    pub volts: Stated<VoltageUnit>,
    /// When.
    pub at: Moment,
}

/// One reading of a pair.
#[derive(Debug, Clone, PartialEq)]
pub struct Read {
    /// The device.
    pub device: DeviceId,
    /// The pair.
    pub check: Check,
    /// The reading.
    pub volts: Stated<VoltageUnit>,
    /// Whether it was judged dead when it was typed.
    pub dead: bool,
}

/// One run of readings of one kind in one bay.
#[derive(Debug, Clone, PartialEq)]
pub struct Proof {
    /// AC or DC.
    pub supply: SupplyKind,
    /// The meter shown to work before.
    pub before: KnownLive,
    /// The pairs read.
    pub reads: Vec<Read>,
    /// The meter shown to work again after.
    pub after: Option<KnownLive>,
    /// Why it no longer counts, where it does not.
    pub lapsed: Option<Lapse>,
}

impl Proof {
    /// Whether it still waits for pairs, or for the meter to be shown to work again.
    #[must_use]
    pub fn is_running(&self) -> bool {
        self.after.is_none() && self.lapsed.is_none() && !self.is_spoiled()
    }

    /// Whether a conductor was found live: then nothing of it counts.
    #[must_use]
    pub fn is_spoiled(&self) -> bool {
        self.reads.iter().any(|read| !read.dead)
    }

    /// Whether it proves one pair of one device dead.
    #[must_use]
    pub fn proves(&self, device: DeviceId, check: &Check) -> bool {
        self.after.is_some()
            && self.lapsed.is_none()
            && !self.is_spoiled()
            && self
                .reads
                .iter()
                .any(|read| read.device == device && read.check == *check)
    }
}
