//! What was noted at a point in one walk, as the projection keeps it.

use super::shape::record;
use super::{AdviceShown, AsFound, AsLeft, Damaged, Moment, Seen};
use baywalk_domain::walk;

record! {
    /// What was found, with the advice as it stood.
    FoundRecord = walk::FoundRecord {
        found: AsFound,
        advice: Option<AdviceShown>,
        at: Moment,
        corrected: bool,
    }
}

record! {
    /// All that was noted at a point.
    PointRecord = walk::PointRecord {
        found: Option<FoundRecord>,
        left: Option<AsLeft>,
        seen: Option<Seen>,
        damage: Vec<Damaged>,
    }
}
