//! Some of many like points each year, so that all are seen within a number of years; and what those
//! that were seen say of the rest.

mod bound;
mod rotation;
mod shuffle;

pub use bound::{Said, said};
pub use rotation::{MOST_LIKE, MOST_YEARS, Rotation, SamplingFault};
