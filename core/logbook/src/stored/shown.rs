//! What was decided and shown with an act.

use super::shape::{is_plain, record};
use super::{Judged, Quantity, Raised, ServiceSeen, Text, Word};
use baywalk_domain::due::DueReason;
use baywalk_domain::ids::SourceId;
use baywalk_domain::isolation::Lapse;
use baywalk_domain::torque::{Action, BasisKind};
use baywalk_domain::units::{DistanceUnit, TorqueUnit};
use baywalk_domain::walk;
use chrono::NaiveDate;

record! {
    /// The torque advice as it stood on the screen.
    AdviceShown = walk::AdviceShown {
        action: Word<Action>,
        target: Option<Quantity<TorqueUnit>>,
        check: Option<Quantity<TorqueUnit>>,
        basis: Option<Word<BasisKind>>,
        source: String,
    }
}

record! {
    /// The next due day as it was told.
    DueShown = walk::DueShown {
        on: Text<NaiveDate>,
        reason: Word<DueReason>,
        at: Option<Quantity<DistanceUnit>>,
        second_look: Option<Text<NaiveDate>>,
    }
}

record! {
    /// All that was decided and shown; what is not there is not stored.
    Shown = walk::Shown {
        #[serde(default, skip_serializing_if = "is_plain")]
        advice: Option<AdviceShown>,
        #[serde(default, skip_serializing_if = "is_plain")]
        dead: Option<bool>,
        #[serde(default, skip_serializing_if = "is_plain")]
        suspects: Vec<Text<SourceId>>,
        #[serde(default, skip_serializing_if = "is_plain")]
        judged: Option<Judged>,
        #[serde(default, skip_serializing_if = "is_plain")]
        service: Option<ServiceSeen>,
        #[serde(default, skip_serializing_if = "is_plain")]
        findings: Vec<Raised>,
        #[serde(default, skip_serializing_if = "is_plain")]
        due: Option<DueShown>,
    }
}

record! {
    /// What was noticed about the clocks.
    Flags = walk::Flags {
        #[serde(default, skip_serializing_if = "is_plain")]
        clock_back: bool,
        #[serde(default, skip_serializing_if = "is_plain")]
        lapse: Option<Word<Lapse>>,
    }
}
