//! What crosses crates: the recorder of the sample walk, hostile inputs, and helpers of scenarios.

#![expect(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    clippy::panic,
    reason = "a test that can't go on stops with the reason"
)]

pub mod hostile;
pub mod mutate;
pub mod record;
