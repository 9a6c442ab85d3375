//! The plan: what matters most within the minutes at hand, and following it in a walk.

mod alike;
mod facts;
mod follow;
mod lines;
mod screen;

pub(crate) use follow::{again, has_keys, keys, press};
pub use follow::{follow, leave, rejoin, route_on};
pub use lines::{PlanPoint, PlanStop};
pub use screen::{PlanScreen, plan};
