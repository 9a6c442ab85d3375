//! As found.

use super::shape::choice;
use super::{Quantity, Text, Word};
use baywalk_domain::ids::ToolId;
use baywalk_domain::units::TorqueUnit;
use baywalk_domain::walk::{self, Angle, NotJudgedWhy};

choice! {
    /// What a held joint was tried with.
    Test = walk::Test {
        Torque { at: Quantity<TorqueUnit>, tool: Text<ToolId> },
        Tug,
    }
}

choice! {
    /// How a joint moved.
    Movement = walk::Movement {
        Turned { angle: Word<Angle>, below: Quantity<TorqueUnit>, tool: Text<ToolId> },
        Began { at: Quantity<TorqueUnit>, tool: Text<ToolId> },
        MarkOff { angle: Word<Angle> },
        Gave,
    }
}

choice! {
    /// What was found at a terminal.
    AsFound = walk::AsFound {
        Held(held: Test),
        Moved(moved: Movement),
        Loose,
        Apart,
        OpenedByUs,
        LookedAt { tugged: bool },
        NotJudged { why: Word<NotJudgedWhy>, note: String },
    }
}
