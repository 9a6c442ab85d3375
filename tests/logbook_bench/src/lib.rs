//! Logbooks of many years, and what is measured on them.

#![expect(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a bench that can't go on stops with the reason"
)]

pub mod fleet;
