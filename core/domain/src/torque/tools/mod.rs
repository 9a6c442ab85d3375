//! The owner's torque tools: what to set them to, which one would do, when they are due.

mod adapter;
mod calibration;
mod choose;
mod rounds;
mod setting;

pub use adapter::{Adapter, AdapterFault};
pub use calibration::{CALIBRATION_CYCLES, CALIBRATION_MONTHS, Calibration, calibration};
pub use choose::{Choice, choose};
pub use rounds::{Refused, Round, Rounds, rounds};
pub use setting::{Misfit, Setting, SettingFault, backs_off, class_percent, setting};
