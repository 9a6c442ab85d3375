//! A point.

use super::shape::{choice, is_plain, record};
use super::{Terminal, Text, Word};
use baywalk_domain::ids::{DeviceId, PointId};
use baywalk_domain::rig::{self, Code, LookKind, Priority};

choice! {
    /// Terminal or look.
    PointKind = rig::PointKind {
        Terminal(terminal: Box<Terminal>),
        Look(look: Word<LookKind>),
    }
}

record! {
    /// What a walk goes through.
    Point = rig::Point {
        id: Text<PointId>,
        code: Text<Code>,
        device: Text<DeviceId>,
        name: String,
        place: String,
        kind: PointKind,
        #[serde(default, skip_serializing_if = "is_plain")]
        priority: Option<Word<Priority>>,
        note: String,
        retired: bool,
    }
}
