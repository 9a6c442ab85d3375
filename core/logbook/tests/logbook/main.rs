//! The logbook, tried as a walk tries it: what is recorded, what stays, what is told.
#![allow(
    clippy::unwrap_used,
    clippy::panic,
    clippy::expect_used,
    clippy::indexing_slicing,
    missing_docs,
    unreachable_pub,
    dead_code
)]

mod facts;
mod full;
mod held;
mod opening;
mod photos;
#[path = "../../../domain/tests/rehearsal/mod.rs"]
mod rehearsal;
mod replay;
mod script;
mod strikes;
mod tampered;
mod whole;
