//! A rig whose every free text was typed by the same pen.

use baywalk_domain::due::{EventKind, Limit, Reach, Rule, RuleChange, Usage};
use baywalk_domain::finding::{About, Decision, Finding, FindingKind, FollowUp, Raised};
use baywalk_domain::moment::{Boot, Moment};
use baywalk_domain::rig::{Book, Rig, RigKind, ServiceKind, YearlyRule};
use baywalk_domain::supply::{Measured, Reading, ReadingStep};
use baywalk_domain::units::{DistanceUnit, Stated, VoltageUnit};
use baywalk_domain::walk::{Act, Ending, Scope, WalkState};
use baywalk_paper::table::{RigFacts, WalkFacts};

const ID: &str = "0190f0c4-0000-7000-8000-000000000001";

pub(crate) fn facts(pen: impl Fn(&str) -> String) -> RigFacts {
    let rig = Rig {
        id: ID.parse().unwrap(),
        name: pen("Alder"),
        kind: RigKind::Trailer,
        service: ServiceKind::Amp30,
        rule: YearlyRule {
            months: 12,
            distance: None,
        },
        note: String::new(),
    };
    let book = Book::new(rig);
    let at = Moment {
        wall: "2027-03-20T09:00:00-07:00".parse().unwrap(),
        boot: Boot::new("one", 7),
    };
    let day = at.date();
    let mut state = WalkState::new(ID.parse().unwrap(), &pen("Ada"), &Scope::Whole, &at);
    state.ending = Some(Ending::Early(pen("rain")));
    state
        .photos
        .push((About::Rig, "ab".repeat(32), pen("nose")));
    let measured = Measured::Volts(Stated::parse("121,30", VoltageUnit::Volts).unwrap());
    let reading = Reading {
        step: ReadingStep::Leg1,
        place: pen("galley"),
        measured,
    };
    state.readings.push((reading, None));
    let raised = Raised {
        id: ID.parse().unwrap(),
        kind: FindingKind::Worn,
        about: About::Rig,
    };
    let follow_up = FollowUp {
        decision: Decision::Accepted,
        by: Some(day),
        note: pen("kept"),
    };
    let event = Usage::Event {
        event: EventKind::RoughRoad,
        reach: Reach::Rig,
        distance: Some(Stated::parse("40", DistanceUnit::Miles).unwrap()),
        note: pen("gravel"),
    };
    let rule = Rule {
        id: ID.parse().unwrap(),
        reach: Reach::Rig,
        limits: vec![Limit::Months(18), Limit::Chance(5)],
        word: pen("in a hall"),
    };
    let id = ID.parse().unwrap();
    RigFacts {
        walks: vec![WalkFacts {
            state,
            book: book.clone(),
        }],
        findings: vec![Finding {
            raised,
            walk: None,
            on: day,
            follow_up: Some(follow_up),
        }],
        lives: Vec::new(),
        timing: vec![
            (day, id, Act::Usage(event)),
            (day, id, Act::Rule(RuleChange::Set(rule))),
        ],
        book,
    }
}
