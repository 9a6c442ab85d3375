//! Which points, in which order, within the time at hand: the exact optimum to the second, with its
//! proof, or the best plan found with its proven gap.

mod charge;
mod field;
mod knapsack;
mod left_out;
mod many;
mod nose;
mod ranks;
mod rig;
mod search;
mod solve;
mod task;
mod tour;

pub use left_out::{LeftOut, left_out};
pub use nose::nose_to_tail;
pub use rig::{Basis, MustWhy, RigTask, musts};
pub use solve::{Plan, Proof, STEPS, Stop, plan, plan_within};
pub use task::{
    BayTask, Legs, MOST_BAYS, MOST_POINTS, MOST_SECONDS, MOST_WORTH, PointTask, Task, TaskFault,
};
pub use tour::MOST_EXACT;
