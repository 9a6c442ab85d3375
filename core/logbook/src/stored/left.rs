//! As left, damage, and what was seen.

use super::shape::choice;
use super::{Quantity, Shape, ShapeFault, Text, Word};
use baywalk_domain::ids::ToolId;
use baywalk_domain::units::{Stated, TorqueUnit};
use baywalk_domain::walk::{self, AloneWhy, Damage};
use serde::{Deserialize, Serialize};

/// The torque that was set, and the tool.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct SetTo {
    torque: Quantity<TorqueUnit>,
    tool: Text<ToolId>,
}

impl Shape for SetTo {
    type Domain = (Stated<TorqueUnit>, ToolId);
    fn of((torque, tool): &Self::Domain) -> Self {
        Self {
            torque: Quantity::of(torque),
            tool: Text::of(tool),
        }
    }
    fn domain(self) -> Result<Self::Domain, ShapeFault> {
        let torque = self
            .torque
            .domain()
            .map_err(|fault| fault.within("torque"))?;
        Ok((
            torque,
            self.tool.domain().map_err(|fault| fault.within("tool"))?,
        ))
    }
}

choice! {
    /// What was done.
    AsLeft = walk::AsLeft {
        Alone(alone: Word<AloneWhy>),
        Set { torque: Quantity<TorqueUnit>, tool: Text<ToolId> },
        Remade { set: Option<SetTo> },
        OutOfService { how: String },
    }
}

choice! {
    /// What was seen at a look.
    Seen = walk::Seen {
        Clear,
        Trouble(trouble: String),
        NotLooked(not_looked: String),
    }
}

/// Damage with words.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Damaged {
    damage: Word<Damage>,
    note: String,
}

impl Shape for Damaged {
    type Domain = (Damage, String);
    fn of((damage, note): &Self::Domain) -> Self {
        Self {
            damage: Word::of(damage),
            note: note.clone(),
        }
    }
    fn domain(self) -> Result<Self::Domain, ShapeFault> {
        Ok((
            self.damage
                .domain()
                .map_err(|fault| fault.within("damage"))?,
            self.note,
        ))
    }
}
