//! A small rig and a walker over it.

pub(crate) mod rig;
mod walker;

pub(crate) use rig::{
    AC_BAY, BANK, BATTERY, CLAMP, DC_BAY, DRIVER, LINE, NEUTRAL, POST, SHORE, SMELL, SOLAR, SWITCH,
    book, code, id, torque, volts, wired_book,
};
pub(crate) use walker::Walker;
