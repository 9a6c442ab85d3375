//! A disk as a power cut leaves it: what was synced lasts, the rest is lost, kept, torn or shuffled.

mod file;
mod names;
mod outcome;
mod state;

pub use names::Order;
pub use outcome::Outcome;
pub use state::{Disk, Left};
