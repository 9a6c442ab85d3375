//! One place where conductors are held.

use super::{Conductor, Fastening, WireSize};
use crate::coded::coded;
use crate::units::{CurrentUnit, Stated, TorqueUnit};

coded! {
    /// What a conductor is made of.
    Material as "material" {
        /// Copper.
        Copper = "copper",
        /// Tinned copper.
        TinnedCopper = "tinned_copper",
        /// Aluminium.
        Aluminium = "aluminium",
    }
}

coded! {
    /// How a conductor is built.
    Strands as "strands" {
        /// One solid wire.
        Solid = "solid",
        /// Stranded.
        Stranded = "stranded",
        /// Fine-stranded.
        Fine = "fine",
    }
}

/// A conductor that is landed on a terminal.
#[derive(Debug, Clone, PartialEq)]
pub struct Wire {
    /// Its size, where known.
    pub size: Option<WireSize>,
    /// Its metal.
    pub material: Material,
    /// How it is built.
    pub strands: Strands,
}

coded! {
    /// What a terminal's circuit is for.
    Role as "role" {
        /// Carries power.
        Power = "power",
        /// Grounds or bonds equipment.
        Ground = "ground",
        /// Controls or signals; generic tables do not cover it.
        Control = "control",
    }
}

coded! {
    /// Whether a thread is as the dry figure assumes.
    ThreadState as "thread-state" {
        /// Dry.
        Dry = "dry",
        /// Greased or wet: the dry figure is void.
        Greased = "greased",
    }
}

coded! {
    /// Where a maker's torque was read.
    TorqueBasis as "torque-basis" {
        /// On a label of the part.
        Label = "label",
        /// In the maker's document.
        Document = "document",
    }
}

coded! {
    /// What a maker says of checking again.
    Recheck as "recheck" {
        /// Nothing: our own way holds.
        Unsaid = "unsaid",
        /// To pull the full value again.
        FullValue = "full_value",
        /// Not to tighten again.
        Never = "never",
    }
}

/// A torque that the maker of the part gives.
#[derive(Debug, Clone, PartialEq)]
pub struct MakerTorque {
    /// The figure, as printed.
    pub torque: Stated<TorqueUnit>,
    /// Label or document.
    pub basis: TorqueBasis,
    /// Which label or document, in the owner's words; it is printed beside the figure.
    pub source: String,
    /// What the maker says of checking again.
    pub recheck: Recheck,
}

/// One place where conductors are held.
#[derive(Debug, Clone, PartialEq)]
pub struct Terminal {
    /// The set of its device that it belongs to, by name; `None` where no conductor of a set lands.
    pub set: Option<String>,
    /// Which conductor of the set it holds.
    pub conductor: Option<Conductor>,
    /// What its circuit is for.
    pub role: Role,
    /// What holds the conductor.
    pub fastening: Fastening,
    /// The conductor.
    pub wire: Wire,
    /// How many conductors are landed.
    pub landed: u8,
    /// How many are allowed, by the marking; one where nothing is marked (NEC 110.14(A)).
    pub allowed: u8,
    /// The smallest and the largest size that the terminal is marked for, where known.
    pub range: Option<(WireSize, WireSize)>,
    /// The current of its circuit.
    pub current: Option<Stated<CurrentUnit>>,
    /// Whether the thread is dry.
    pub thread_state: ThreadState,
    /// The maker's torque, where known.
    pub maker: Option<MakerTorque>,
}

/// Why a terminal can't be so.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum TerminalFault {
    /// A torque was given for something that is not tightened by torque.
    #[error("a {kind:?} is not tightened to a torque; leave the torque empty")]
    TorqueOnClamp {
        /// The fastening.
        kind: super::FasteningKind,
    },
    /// No conductor is allowed.
    #[error("a terminal allows at least one conductor")]
    NoneAllowed,
    /// The set's conductor is named without its set, or the set without its conductor.
    #[error("a conductor needs the name of its set, and a set needs its conductor")]
    HalfSet,
    /// The range of sizes begins above where it ends.
    #[error("the range of sizes begins above where it ends")]
    RangeReversed,
}

impl Terminal {
    /// A power terminal with one stranded copper conductor, of which nothing else is known yet.
    ///
    /// # Example
    /// ```
    /// use baywalk_domain::rig::{Fastening, FasteningKind, Terminal};
    /// let terminal = Terminal::of(Fastening::of(FasteningKind::Stud));
    /// assert_eq!((terminal.landed, terminal.allowed), (1, 1));
    /// assert_eq!(terminal.maker, None);
    /// ```
    #[must_use]
    pub const fn of(fastening: Fastening) -> Self {
        Self {
            set: None,
            conductor: None,
            role: Role::Power,
            fastening,
            wire: Wire {
                size: None,
                material: Material::Copper,
                strands: Strands::Stranded,
            },
            landed: 1,
            allowed: 1,
            range: None,
            current: None,
            thread_state: ThreadState::Dry,
            maker: None,
        }
    }

    /// Sees that what is said of the terminal can be true together.
    ///
    /// # Errors
    /// [`TerminalFault`] naming the first thing that can't.
    pub fn checked(self) -> Result<Self, TerminalFault> {
        if self.maker.is_some() && !self.fastening.kind.takes_torque() {
            return Err(TerminalFault::TorqueOnClamp {
                kind: self.fastening.kind,
            });
        }
        if self.allowed == 0 {
            return Err(TerminalFault::NoneAllowed);
        }
        if self.set.is_some() != self.conductor.is_some() {
            return Err(TerminalFault::HalfSet);
        }
        let area = crate::wire::area_mm2;
        if self
            .range
            .as_ref()
            .is_some_and(|(least, most)| area(least) > area(most))
        {
            return Err(TerminalFault::RangeReversed);
        }
        Ok(self)
    }
}

impl super::FasteningKind {
    /// Whether such a fastening has a thread that a torque tool tightens.
    #[must_use]
    pub const fn takes_torque(self) -> bool {
        match self {
            Self::PressureScrew
            | Self::SplitBolt
            | Self::DeviceScrew
            | Self::BoardScrew
            | Self::BlockScrew
            | Self::Stud
            | Self::Bolt
            | Self::BatteryPost
            | Self::WingNut
            | Self::ShearBolt
            | Self::BoltOnBreaker
            | Self::ChassisScrew
            | Self::CellLink => true,
            Self::PushIn
            | Self::SpringClamp
            | Self::Lever
            | Self::Blade
            | Self::PlugOnBreaker
            | Self::Plug
            | Self::WireConnector
            | Self::Crimp
            | Self::Piercing
            | Self::Sealed
            | Self::SenseLead => false,
        }
    }
}
