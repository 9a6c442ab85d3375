//! A rig's book.

use super::shape::{is_plain, record};
use super::{Bay, BayPhoto, Device, Point, Quantity, Source, Text, Tool, Word};
use baywalk_domain::ids::RigId;
use baywalk_domain::rig::{self, RigKind, ServiceKind};
use baywalk_domain::units::DistanceUnit;

record! {
    /// When to walk again.
    YearlyRule = rig::YearlyRule {
        months: u8,
        distance: Option<Quantity<DistanceUnit>>,
    }
}

record! {
    /// A rig, without what is in it.
    Rig = rig::Rig {
        id: Text<RigId>,
        name: String,
        kind: Word<RigKind>,
        service: Word<ServiceKind>,
        rule: YearlyRule,
        note: String,
    }
}

record! {
    /// A rig with all that is in it.
    Book = rig::Book {
        rig: Rig,
        sources: Vec<Source>,
        bays: Vec<Bay>,
        devices: Vec<Device>,
        points: Vec<Point>,
        tools: Vec<Tool>,
        #[serde(default, skip_serializing_if = "is_plain")]
        bay_photos: Vec<BayPhoto>,
    }
}
