//! The rules of the walk, tried as a person would: what is refused, and why.
#![expect(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    clippy::panic,
    reason = "a test that can't go on stops with the reason"
)]

mod acts;
mod following;
mod isolating;
mod judging;
mod next;
mod powering;
mod proving;
#[path = "../rehearsal/mod.rs"]
mod rehearsal;
mod wild;
mod wiring;
