//! Where moments and names come from.

use baywalk_domain::moment::Moment;
use uuid::Uuid;

/// Gives the moment and new names; the only source of both.
pub trait Clock: Send + std::fmt::Debug {
    /// The moment now, by both clocks.
    fn now(&self) -> Moment;

    /// A name that was never given before.
    fn new_id(&self) -> Uuid;
}
