//! Bringing power back: which readings are taken, in which order, and how each is judged.

mod judge;
mod step;

pub use judge::{Judged, LimitBasis, SafeAct, Verdict, judge};
pub use step::{Measured, Reading, ReadingStep, steps_of};
