//! A split-phase or single-phase service, judged by solving its circuit under every fault.
//!
//! The readings of a meter between lines, neutral and equipment ground, with or without plain loads,
//! are held against one small nodal network (Kirchhoff's and Ohm's laws): sources behind their
//! conductors, loads, the meter's own input. A fault is kept where some choice of all that is not
//! known meets every reading within the meter's error. A conductor that is open and tied by no load
//! floats: what it shows is a range, never a value.

mod apart;
mod bands;
mod candidate;
mod circuit;
mod fault;
mod fit;
mod judge;
mod linear;
mod meter;
mod missing;
mod model;
mod pair;
mod power_up;
mod search;
mod seen;
mod survey;
mod verdict;
mod wiring;

pub use apart::{Ask, NextReading};
pub use bands::{BandSeen, bands_at};
pub use candidate::{Candidate, Explained, Span};
pub use fault::{Conductor, Fault};
pub use judge::{Judgement, judge};
pub use meter::{Meter, MeterFault};
pub use pair::Pair;
pub use power_up::survey_at;
pub use seen::{AskSeen, FaultSeen, ServiceSeen};
pub use survey::{ANY_HEATER, Load, MOST_STATES, Place, State, Survey, SurveyFault};
pub use verdict::{Caution, Standing};
