//! When the next walk is due, by fixed rules.

mod next;
mod settle;

pub use next::{Due, DueReason, OdometerNote, due};
pub use settle::{SETTLE_DAYS, SETTLE_MILES, Settle, settle};
