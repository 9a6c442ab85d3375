//! A terminal.

use super::shape::record;
use super::{Fastening, Quantity, Shape, ShapeFault, Text, Word};
use baywalk_domain::rig::{
    self, Conductor, Material, Recheck, Role, Strands, ThreadState, TorqueBasis, WireSize,
};
use baywalk_domain::units::{CurrentUnit, TorqueUnit};
use serde::{Deserialize, Serialize};

record! {
    /// A conductor that is landed.
    Wire = rig::Wire {
        size: Option<Text<WireSize>>,
        material: Word<Material>,
        strands: Word<Strands>,
    }
}

record! {
    /// A torque that the maker gives.
    MakerTorque = rig::MakerTorque {
        torque: Quantity<TorqueUnit>,
        basis: Word<TorqueBasis>,
        source: String,
        recheck: Word<Recheck>,
    }
}

/// The smallest and the largest size that a terminal is marked for.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Span {
    smallest: Text<WireSize>,
    largest: Text<WireSize>,
}

impl Shape for Span {
    type Domain = (WireSize, WireSize);
    fn of((smallest, largest): &Self::Domain) -> Self {
        Self {
            smallest: Text::of(smallest),
            largest: Text::of(largest),
        }
    }
    fn domain(self) -> Result<Self::Domain, ShapeFault> {
        Ok((self.smallest.domain()?, self.largest.domain()?))
    }
}

record! {
    /// One place where conductors are held.
    Terminal = rig::Terminal {
        set: Option<String>,
        conductor: Option<Word<Conductor>>,
        role: Word<Role>,
        fastening: Fastening,
        wire: Wire,
        landed: u8,
        allowed: u8,
        range: Option<Span>,
        current: Option<Quantity<CurrentUnit>>,
        thread_state: Word<ThreadState>,
        maker: Option<MakerTorque>,
    } checked by rig::Terminal::checked
}
