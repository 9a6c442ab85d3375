//! A torque tool.

use super::shape::record;
use super::{Quantity, Text, Word};
use baywalk_domain::ids::ToolId;
use baywalk_domain::rig::{self, Code, ToolKind};
use baywalk_domain::units::TorqueUnit;
use chrono::NaiveDate;

record! {
    /// A torque tool.
    Tool = rig::Tool {
        id: Text<ToolId>,
        code: Text<Code>,
        name: String,
        kind: Word<ToolKind>,
        least: Quantity<TorqueUnit>,
        most: Quantity<TorqueUnit>,
        step: Quantity<TorqueUnit>,
        calibrated: Option<Text<NaiveDate>>,
        cycles: u32,
        retired: bool,
    }
}
