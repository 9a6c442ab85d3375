#![doc = include_str!("../README.md")]

pub mod coded;
pub mod ids;
pub mod moment;
pub mod rig;
pub mod torque;
pub mod units;
pub mod wire;
