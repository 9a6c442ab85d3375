//! A rig at a glance, and its outline.

use super::shape::record;
use super::timing::Asked;
use super::{Bay, Due, Rig, Text};
use crate::projection;
use baywalk_domain::ids::WalkId;
use baywalk_domain::rig::Code;
use chrono::NaiveDate;

record! {
    /// A walk, and where it begins.
    WalkBegun = projection::WalkBegun {
        id: Text<WalkId>,
        begun: u64,
    }
}

record! {
    /// What was due and is asked no longer.
    Gone = projection::Gone {
        asked: Asked,
        on: Text<NaiveDate>,
        by: u64,
        went: Text<NaiveDate>,
    }
}

record! {
    /// What the list of rigs tells of one.
    RigGlance = projection::RigGlance {
        rig: Rig,
        walk: Option<WalkBegun>,
        last_walk: Option<Text<NaiveDate>>,
        last_end: Option<Text<NaiveDate>>,
        noted: Text<NaiveDate>,
        due: Vec<Due>,
        due_since: u64,
        gone: Vec<Gone>,
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
