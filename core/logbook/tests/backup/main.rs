//! Backup, restore, lines and recovery, tried with a small store.
#![expect(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    unused_imports,
    dead_code,
    reason = "a test that can't go on stops with the reason; the small rig is shared"
)]

mod cut;
mod hostile;
mod kept;
mod lines;
mod old;
#[path = "../../../domain/tests/rehearsal/mod.rs"]
mod rehearsal;
#[path = "../logbook/script.rs"]
mod script;
mod store;
mod whole;
