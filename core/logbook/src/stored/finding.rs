//! Findings and what was decided about them.

use super::shape::{choice, record};
use super::{Text, Word};
use baywalk_domain::finding::{self, Decision, FindingKind};
use baywalk_domain::ids::{BayId, FindingId, PointId, SourceId};
use baywalk_domain::supply::ReadingStep;
use chrono::NaiveDate;

choice! {
    /// What something is about.
    About = finding::About {
        Rig,
        Bay(bay: Text<BayId>),
        Point(point: Text<PointId>),
        Source(source: Text<SourceId>),
        Reading(reading: Word<ReadingStep>),
    }
}

record! {
    /// A finding as it was raised.
    Raised = finding::Raised {
        id: Text<FindingId>,
        kind: Word<FindingKind>,
        about: About,
    }
}

record! {
    /// What was decided about a finding.
    FollowUp = finding::FollowUp {
        decision: Word<Decision>,
        by: Option<Text<NaiveDate>>,
        note: String,
    }
}
