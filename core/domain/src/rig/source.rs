//! Anything that can make a conductor live.

use super::{Code, Opening, SupplyKind};
use crate::coded::coded;
use crate::ids::SourceId;
use crate::units::{Stated, VoltageUnit};

coded! {
    /// The kinds of source; one rig may have several of a kind.
    SourceKind as "source-kind" {
        /// Shore power.
        Shore = "shore",
        /// A generator.
        Generator = "generator",
        /// An inverter.
        Inverter = "inverter",
        /// Solar panels.
        Solar = "solar",
        /// The cord to a tow vehicle, with its charge line.
        TowLink = "tow_link",
        /// An alternator or DC-DC link from the engine's battery.
        EngineLink = "engine_link",
        /// A portable unit that may be plugged in.
        Portable = "portable",
        /// The battery that starts the engine.
        ChassisBattery = "chassis_battery",
        /// The battery of the living space.
        HouseBattery = "house_battery",
    }
}

coded! {
    /// Whether a rig has a source.
    Presence as "presence" {
        /// It has it.
        Have = "have",
        /// It has none.
        HaveNot = "have_not",
        /// Nobody knows yet: it is searched for, and counts as connected.
        NotSure = "not_sure",
    }
}

coded! {
    /// How a source is kept from the conductors behind it.
    Isolation as "isolation" {
        /// A plug is pulled and kept in hand or locked.
        Unplug = "unplug",
        /// A switch or breaker is opened and locked.
        Switch = "switch",
        /// A lead is taken off its post and taped.
        LeadOff = "lead_off",
        /// It can't be taken away: its own posts stay live.
        Never = "never",
    }
}

/// How long to keep the hands off after a source is away.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Wait {
    /// Whole minutes.
    pub minutes: u16,
    /// Where the number comes from, such as "label on the inverter".
    pub basis: String,
}

/// A source of a rig.
#[derive(Debug, Clone, PartialEq)]
pub struct Source {
    /// Its name for the machine.
    pub id: SourceId,
    /// Its name for people.
    pub code: Code,
    /// What it is, such as "shore power, 50 A".
    pub name: String,
    /// Its kind.
    pub kind: SourceKind,
    /// Whether the rig has it.
    pub presence: Presence,
    /// Alternating or direct.
    pub supply: SupplyKind,
    /// The highest voltage it can ever have (charging maximum; solar in the cold), where known.
    pub highest: Option<Stated<VoltageUnit>>,
    /// How it is taken away.
    pub isolation: Isolation,
    /// What opens then, where it is a device of the rig.
    pub opens: Option<Opening>,
    /// Where and how, in the owner's words.
    pub how: String,
    /// How long to wait then.
    pub wait: Option<Wait>,
    /// Whether it is no longer part of the rig.
    pub retired: bool,
}

impl SourceKind {
    /// Whether it can't be switched off: a battery, or panels in light. What is joined to its own
    /// posts stays live whatever is opened.
    #[must_use]
    pub const fn is_lasting(self) -> bool {
        matches!(
            self,
            Self::ChassisBattery | Self::HouseBattery | Self::Solar
        )
    }
}
