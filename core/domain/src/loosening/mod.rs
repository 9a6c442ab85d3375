//! How joints loosen: what checks tell of how long a set joint holds.
//!
//! A check sees a joint only now and then, so the age at which it moved is known as an interval. A
//! joint that is set starts anew. No figure for vehicles is published: what is learned is learned from
//! the rig's own past, with the number of joints it rests on.

mod cloud;
mod draws;
mod fit;
mod law;
mod life;
mod likelihood;
mod matrix;
mod npmle;
mod pool;
mod prior;
mod proportion;
mod refusal;
mod search;
mod told;
mod track;

pub use cloud::Cloud;
pub use fit::{Fit, fit};
pub use law::Law;
pub use life::{Life, LifeFault, tally};
pub use npmle::{Npmle, Span, npmle};
pub use pool::{Member, Pool, PoolPrior, pool};
pub use prior::{Belief, BeliefFault, Prior};
pub use proportion::{Proportion, proportion};
pub use refusal::NoFit;
pub use told::{CONFIDENCE, FEWEST_MOVED, Told, told};
pub use track::{Ended, Tight, Track};
