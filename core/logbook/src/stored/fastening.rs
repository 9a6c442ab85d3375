//! What holds a conductor in its place.

use super::shape::record;
use super::{Text, Word};
use baywalk_domain::rig::{
    self, BoltGrade, DriveKind, FasteningKind, Landing, Locking, Nut, Thread, Washer,
};
use baywalk_domain::units::StatedLength;

record! {
    /// What a tool fits into.
    Drive = rig::Drive {
        kind: Word<DriveKind>,
        across: Option<Text<StatedLength>>,
        slot_width: Option<Text<StatedLength>>,
        slot_length: Option<Text<StatedLength>>,
    }
}

record! {
    /// What holds a conductor.
    Fastening = rig::Fastening {
        kind: Word<FasteningKind>,
        thread: Option<Text<Thread>>,
        drives: Vec<Drive>,
        landing: Word<Landing>,
        nut: Word<Nut>,
        washer: Word<Washer>,
        locking: Word<Locking>,
        grade: Option<Word<BoltGrade>>,
        metal_to_metal: bool,
    }
}
