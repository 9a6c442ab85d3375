//! What a walk goes through: terminals, and looks that are no terminal.

use super::{Code, Terminal};
use crate::coded::coded;
use crate::ids::{DeviceId, PointId};

coded! {
    /// The kinds of look.
    LookKind as "look-kind" {
        /// A leak of water or fluid.
        Leak = "leak",
        /// Moisture.
        Moisture = "moisture",
        /// Chafed insulation.
        Chafe = "chafe",
        /// Rodents.
        Rodent = "rodent",
        /// Marks of heat.
        HeatMark = "heat_mark",
        /// Hydraulic fittings, never tightened under pressure.
        Hydraulic = "hydraulic",
        /// Anything else.
        General = "general",
    }
}

coded! {
    /// What the owner says of how soon a point is looked at.
    Priority as "priority" {
        /// Ranked lower.
        Lower = "lower",
        /// Ranked higher.
        Raise = "raise",
        /// In every plan.
        Must = "must",
    }
}

/// What a point is.
#[derive(Debug, Clone, PartialEq)]
pub enum PointKind {
    /// A place where conductors are held.
    Terminal(Box<Terminal>),
    /// A check by eye or hand that is no terminal.
    Look(LookKind),
}

/// One point of a walk.
#[derive(Debug, Clone, PartialEq)]
pub struct Point {
    /// Its name for the machine.
    pub id: PointId,
    /// Its name for people, printed on its label.
    pub code: Code,
    /// The device it belongs to.
    pub device: DeviceId,
    /// What it is, such as "N in, shore".
    pub name: String,
    /// Where it is on the device, such as "lower row, third".
    pub place: String,
    /// Terminal or look.
    pub kind: PointKind,
    /// What the owner says of how soon it is looked at; `None` leaves that to the ranking.
    pub priority: Option<Priority>,
    /// A note of the owner.
    pub note: String,
    /// Whether it is no longer part of the rig; its past stays.
    pub retired: bool,
}

impl Point {
    /// The terminal, where it is one.
    #[must_use]
    pub fn terminal(&self) -> Option<&Terminal> {
        match &self.kind {
            PointKind::Terminal(terminal) => Some(terminal),
            PointKind::Look(_) => None,
        }
    }
}
