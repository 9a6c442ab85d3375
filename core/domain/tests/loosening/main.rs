//! Lives, laws and proportions: never a number that is none, and intervals that cover what they say.

#![expect(
    clippy::unwrap_used,
    reason = "a test that can't go on stops with the reason"
)]

mod calibration;
mod laws;
mod proportions;
