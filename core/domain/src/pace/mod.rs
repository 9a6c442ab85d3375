//! How long the hand takes: learned from a rig's own walks, from a table until then.

mod bays;
mod learn;
mod step;
mod table;
mod ways;

pub use bays::in_bays;
pub use learn::{Pace, Span};
pub use step::{Sample, Step, samples, step_of};
pub use ways::{Place, seconds_between, start};
