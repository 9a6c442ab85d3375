//! Bringing power back: which readings are taken, in which order, and how each is judged.

mod bands;
mod drift;
mod judge;
mod step;

pub use bands::{Band, BandName, CUT_OUT, Certainty, Grounds, SERVICE_A, SERVICE_B, USE_A, USE_B};
pub use drift::drift;
pub use judge::{HOT_SKIN, Judged, LimitBasis, SafeAct, Verdict, judge};
pub use step::{Measured, Reading, ReadingStep, steps_of};
