//! The logbook, tried as a walk tries it: what is recorded, what stays, what is told.
#![expect(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    unused_imports,
    dead_code,
    reason = "a test that can't go on stops with the reason; the small rig is shared"
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
