//! A rig at a glance, and its outline.

use super::shape::record;
use super::{Bay, Quantity, Rig, Text};
use crate::projection;
use baywalk_domain::due;
use baywalk_domain::ids::WalkId;
use baywalk_domain::rig::Code;
use baywalk_domain::units::DistanceUnit;
use chrono::NaiveDate;

record! {
    /// An odometer note.
    OdometerNote = due::OdometerNote {
        on: Text<NaiveDate>,
        reading: Quantity<DistanceUnit>,
    }
}

record! {
    /// A walk, and where it begins.
    WalkBegun = projection::WalkBegun {
        id: Text<WalkId>,
        begun: u64,
    }
}

record! {
    /// What the list of rigs tells of one.
    RigGlance = projection::RigGlance {
        rig: Rig,
        walk: Option<WalkBegun>,
        last_walk: Option<Text<NaiveDate>>,
        last_end: Option<Text<NaiveDate>>,
        odometer: Vec<OdometerNote>,
        open_findings: u64,
    }
}

record! {
    /// A bay in an outline.
    OutlineBay = projection::OutlineBay {
        bay: Bay,
        points: u64,
    }
}

record! {
    /// What the screen of a rig shows of its book.
    RigOutline = projection::RigOutline {
        bays: Vec<OutlineBay>,
        points: u64,
        second_look: Vec<Text<Code>>,
    }
}
