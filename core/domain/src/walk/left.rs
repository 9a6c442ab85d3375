//! As left: what was done, and damage seen.

use crate::coded::coded;
use crate::ids::ToolId;
use crate::units::{Stated, TorqueUnit};

coded! {
    /// Why a joint that moved was left as it was.
    AloneWhy as "alone" {
        /// It may not be tightened.
        NotToTighten = "not_to_tighten",
        /// There is no figure for it.
        NoFigure = "no_figure",
        /// The right tool is not at hand.
        NoTool = "no_tool",
        /// Left for a qualified person.
        ForQualified = "for_qualified",
    }
}

/// What was done at a terminal that had moved, or was undone. Never chosen beforehand.
#[derive(Debug, Clone, PartialEq)]
pub enum AsLeft {
    /// Left alone, and why.
    Alone(AloneWhy),
    /// Set to a torque.
    Set {
        /// What the tool was set to.
        torque: Stated<TorqueUnit>,
        /// The tool.
        tool: ToolId,
    },
    /// Cut back and made anew, or the part replaced.
    Remade {
        /// The torque it was then set to and the tool, where it takes one.
        set: Option<(Stated<TorqueUnit>, ToolId)>,
    },
    /// Its circuit taken out of service, and how.
    OutOfService {
        /// How it is kept from being used.
        how: String,
    },
}

coded! {
    /// Damage seen at a terminal or look.
    Damage as "damage" {
        /// Signs of heat.
        Heat = "heat",
        /// Melted insulation.
        Melted = "melted",
        /// Corrosion.
        Corrosion = "corrosion",
        /// Broken strands.
        Strands = "strands",
        /// Insulation under the clamp.
        InsulationCaught = "insulation_caught",
        /// More conductors landed than allowed.
        TooMany = "too_many",
        /// Moisture.
        Moisture = "moisture",
        /// Chafed or gnawed.
        Chafed = "chafed",
        /// A cracked or loose body.
        Cracked = "cracked",
    }
}

impl Damage {
    /// The kind of finding that it is.
    #[must_use]
    pub const fn finding(self) -> crate::finding::FindingKind {
        use crate::finding::FindingKind;
        match self {
            Self::TooMany => FindingKind::TooManyConductors,
            Self::Heat | Self::Melted | Self::Strands | Self::Cracked => FindingKind::Damaged,
            Self::Corrosion | Self::InsulationCaught | Self::Moisture | Self::Chafed => {
                FindingKind::Worn
            }
        }
    }

    /// Whether it spoils the joint, so that it is remade and not set again.
    #[must_use]
    pub const fn spoils(self) -> bool {
        matches!(self, Self::Heat | Self::Melted | Self::Strands)
    }
}

/// What was seen at a look.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Seen {
    /// Nothing to note.
    Clear,
    /// Something, in words.
    Trouble(String),
    /// Nobody looked, and why.
    NotLooked(String),
}
