//! Frozen samples of what tells when to look again.

use crate::expected::{day, miles};
use crate::rehearsal::{AC_BAY, id};
use baywalk_domain::due::{
    Anchor, Asked, EventKind, Limit, Reach, Rule, RuleChange, Usage, YearDay,
};
use baywalk_domain::ids::{BayId, RuleId};
use baywalk_domain::rig::FasteningKind;
use baywalk_domain::units::{HourUnit, Stated};
use baywalk_domain::walk::{Act, Shown};

/// The acts with the version in which they are stored.
pub(crate) fn timing() -> Vec<(u32, Act, Shown)> {
    let put_off = Act::PutOff {
        asked: Asked::Rule(RuleId::new(id(901))),
        until: day("2027-05-01"),
        why: "the hall is locked until May".to_owned(),
    };
    let acts = [rule(), usage(), put_off];
    acts.map(|act| (1, act, Shown::default())).to_vec()
}

fn rule() -> Act {
    Act::Rule(RuleChange::Set(Rule {
        id: RuleId::new(id(901)),
        reach: Reach::Kind(FasteningKind::BatteryPost),
        limits: vec![
            Limit::Months(6),
            Limit::Distance(miles("3000")),
            Limit::Hours(Stated::parse("100", HourUnit::Hours).unwrap()),
            Limit::Season {
                anchor: Anchor::FirstTrip,
                on: YearDay::new(2, 29).unwrap(),
            },
            Limit::After {
                event: EventKind::RoughRoad,
                days: 3,
                distance: Some(miles("40")),
            },
            Limit::Chance(5),
        ],
        word: "stands by the sea".to_owned(),
    }))
}

fn usage() -> Act {
    Act::Usage(Usage::Event {
        event: EventKind::CircuitWork,
        reach: Reach::Bay(BayId::new(id(AC_BAY))),
        distance: None,
        note: "outlet by the door replaced".to_owned(),
    })
}
