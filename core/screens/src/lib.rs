#![doc = include_str!("../README.md")]

pub mod about;
pub mod asked;
pub mod backup;
pub mod book;
pub mod calendar;
pub mod card;
mod core;
pub mod due;
pub mod files;
pub mod findings;
mod here;
mod holds;
pub mod learned;
pub mod lines;
mod named;
pub mod notice;
pub mod paper;
pub mod past;
pub mod photo;
pub mod plan;
pub mod practice;
mod problem;
pub mod recover;
pub mod restore;
pub mod result;
pub mod rig;
pub mod rigs;
pub mod room;
pub mod rule;
mod safe;
pub mod set_up;
pub mod start;
pub mod step;
pub mod tables;
mod told;
pub mod torque;
pub mod usage;
pub mod verify;
pub mod when;

pub use named::{GradeCount, Named};
pub use problem::{Problem, ProblemKind};
pub use told::Told;

use baywalk_logbook::Logbook;
use baywalk_words::Words;

/// The logbook and the words, together all that a screen is made of.
pub struct Core {
    /// The one owner of storage.
    pub logbook: Logbook,
    /// The catalogue of text, in the language of the person.
    pub words: Words,
}

#[cfg(feature = "mobile")]
uniffi::setup_scaffolding!();
