//! What tells when to look again.

use super::shape::{choice, record};
use super::{Quantity, Shape, ShapeCause, ShapeFault, Text, Word};
use baywalk_domain::due::{self, Anchor, EventKind, Restart};
use baywalk_domain::ids::{ActId, BayId, PointId, RuleId};
use baywalk_domain::rig::FasteningKind;
use baywalk_domain::units::{DistanceUnit, HourUnit};

choice! {
    /// What a rule or an event is about.
    Reach = due::Reach {
        Rig,
        Bay(bay: Text<BayId>),
        Kind(kind: Word<FasteningKind>),
        Point(point: Text<PointId>),
    }
}

/// A day that comes each year, as month and day.
#[derive(Debug, Clone, PartialEq, serde::Serialize, serde::Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct YearDay {
    month: u8,
    day: u8,
}

impl Shape for YearDay {
    type Domain = due::YearDay;
    fn of(domain: &due::YearDay) -> Self {
        Self {
            month: domain.month(),
            day: domain.day(),
        }
    }
    fn domain(self) -> Result<due::YearDay, ShapeFault> {
        let cause = ShapeCause::Form {
            found: format!("{}-{}", self.month, self.day),
            expected: "month and day of a year",
        };
        due::YearDay::new(self.month, self.day).ok_or_else(|| cause.into())
    }
}

choice! {
    /// One limit of a rule.
    RuleLimit = due::Limit {
        Months(months: u8),
        Distance(distance: Quantity<DistanceUnit>),
        Hours(hours: Quantity<HourUnit>),
        Season { anchor: Word<Anchor>, on: YearDay },
        After {
            event: Word<EventKind>,
            days: u16,
            distance: Option<Quantity<DistanceUnit>>,
        },
        Chance(chance: u8),
    }
}

record! {
    /// A rule of the owner.
    Rule = due::Rule {
        id: Text<RuleId>,
        reach: Reach,
        limits: Vec<RuleLimit>,
        word: String,
    }
}

choice! {
    /// A change of the rules.
    RuleChange = due::RuleChange {
        Set(set: Rule),
        Drop(drop: Text<RuleId>),
    }
}

choice! {
    /// What is asked to be looked at again.
    Asked = due::Asked {
        Walk,
        SecondLook,
        Rule(rule: Text<RuleId>),
        Event(event: Text<ActId>),
    }
}

choice! {
    /// What happened between walks.
    Usage = due::Usage {
        Hours(hours: Quantity<HourUnit>),
        Trip(trip: Quantity<DistanceUnit>),
        Restart { reading: Quantity<DistanceUnit>, why: Word<Restart> },
        Event {
            event: Word<EventKind>,
            reach: Reach,
            distance: Option<Quantity<DistanceUnit>>,
            note: String,
        },
    }
}
