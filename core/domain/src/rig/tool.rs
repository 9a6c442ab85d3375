//! The owner's torque tools.

use super::Code;
use crate::coded::coded;
use crate::ids::ToolId;
use crate::units::{Stated, TorqueUnit};
use chrono::NaiveDate;

coded! {
    /// How a tool tells the torque.
    ToolKind as "tool-kind" {
        /// Clicks at a set value: wrench.
        ClickWrench = "click_wrench",
        /// Clicks or slips at a set value: screwdriver.
        ClickDriver = "click_driver",
        /// Shows the torque on a scale or display.
        Indicating = "indicating",
        /// Made for one value.
        Preset = "preset",
    }
}

/// A torque tool. Range and step are in one unit, the tool's own.
#[derive(Debug, Clone, PartialEq)]
pub struct Tool {
    /// Its name for the machine.
    pub id: ToolId,
    /// Its name for people.
    pub code: Code,
    /// What it is.
    pub name: String,
    /// How it tells the torque.
    pub kind: ToolKind,
    /// The least it can be set to; its unit is the unit of the tool.
    pub least: Stated<TorqueUnit>,
    /// The most it can be set to.
    pub most: Stated<TorqueUnit>,
    /// The step of its scale.
    pub step: Stated<TorqueUnit>,
    /// The day of its last calibration, where known.
    pub calibrated: Option<NaiveDate>,
    /// Clicks since then, as far as they are counted.
    pub cycles: u32,
    /// Whether it is no longer used.
    pub retired: bool,
}
