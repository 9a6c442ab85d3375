//! Torque advice: what to do at a terminal, with which figure, from which source.
//!
//! A full-torque pull is itself a re-torque, so a terminal is looked at, felt and checked below its
//! target first; only what moved is set. Many kinds are never tightened at all.

mod advice;
mod advise;
mod bolt;
mod caution;
mod check;
mod codes;
mod connector;
mod exact;
mod figure;
mod finding;
mod policy;
mod practice;
mod stud;
mod table;
#[cfg(test)]
mod tests;
mod tools;

pub use advice::{Advice, Band, Basis, BasisKind, Target};
pub use advise::advise;
pub use bolt::{
    BoltFault, Calculation, Finish, NutFactor, PRELOAD_SHARE, SCATTER_DRY, SCATTER_LUBRICATED,
    bolt, nut_factor, pitch_mm, proof_mpa, stress_area_mm2,
};
pub use check::share;
pub use codes::{Action, Caution, FoundBy, LeftBy, Missing};
pub use finding::{Crowded, Outside, crowded, size_outside};
pub use practice::{Past, Practice};
pub use table::TableId;
pub use tools::{
    Adapter, AdapterFault, CALIBRATION_CYCLES, CALIBRATION_MONTHS, Calibration, Choice, Misfit,
    Refused, Round, Rounds, Setting, SettingFault, backs_off, calibration, choose, class_percent,
    rounds, setting,
};
