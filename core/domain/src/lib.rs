#![doc = include_str!("../README.md")]

pub mod bank;
pub mod coded;
pub mod due;
pub mod finding;
pub mod ids;
pub mod isolation;
pub mod joint;
pub mod moment;
pub mod published;
pub mod rig;
pub mod service;
pub mod supply;
pub mod torque;
pub mod units;
pub mod walk;
pub mod wire;
