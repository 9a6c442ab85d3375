//! Power cuts, failing storage and killed processes, tried on the logbook through its own doors.
//!
//! It is a tool for tests: nothing that ships depends on it. It runs on Linux.

#![expect(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    clippy::panic,
    reason = "a test tool that can't go on stops with the reason"
)]

pub mod allocations;
pub mod controls;
pub mod deeds;
pub mod disk;
pub mod faults;
pub mod model;
pub mod states;
pub mod system;
pub mod walker;
pub mod words;
pub mod work;
