//! What the frozen samples were when they were written.

use crate::rehearsal::rig::RIG;
use crate::rehearsal::{
    AC_BAY, BANK, CLAMP, DRIVER, LINE, NEUTRAL, SHORE, SMELL, SWITCH, book, id, torque, volts,
    wired_book,
};
use crate::timing::timing;
use baywalk_domain::due::DueReason;
use baywalk_domain::finding::{About, Decision, FindingKind, FollowUp, Raised};
use baywalk_domain::ids::{
    ActId, BayId, DeviceId, FindingId, PointId, RigId, SourceId, ToolId, WalkId,
};
use baywalk_domain::isolation::{Lapse, Meter, MeterCategory};
use baywalk_domain::moment::{Boot, Moment};
use baywalk_domain::rig::{
    BayPhoto, Book, BookChange, Check, Conductor, Pin, Priority, SupplyKind,
};
use baywalk_domain::service::{
    Ask, AskSeen, Caution, Conductor as ServiceConductor, Fault, FaultSeen, Pair, ServiceSeen,
    Standing,
};
use baywalk_domain::supply::{
    Judged, LimitBasis, Measured, Reading, ReadingStep, SafeAct, Verdict,
};
use baywalk_domain::torque::{Action, BasisKind};
use baywalk_domain::units::{DistanceUnit, Stated};
use baywalk_domain::walk::{
    Act, AdviceShown, Angle, AsFound, AsLeft, Away, Counted, Damage, DueShown, Ending, Entry,
    Flags, Mark, Movement, ReadyAnswer, ReadyItem, Recovery, Route, RouteStop, Scope, Seen, Shown,
    Span, Test,
};
use chrono::{DateTime, NaiveDate};

fn point(n: u128) -> PointId {
    PointId::new(id(n))
}
fn bay() -> BayId {
    BayId::new(id(AC_BAY))
}
fn driver() -> ToolId {
    ToolId::new(id(DRIVER))
}
pub(crate) fn day(text: &str) -> NaiveDate {
    text.parse().unwrap()
}
pub(crate) fn miles(text: &str) -> Stated<DistanceUnit> {
    Stated::parse(text, DistanceUnit::Miles).unwrap()
}
fn raised(kind: FindingKind, about: About) -> Vec<Raised> {
    vec![Raised {
        id: FindingId::new(id(801)),
        kind,
        about,
    }]
}
fn bay_photo() -> BayPhoto {
    let pin = Pin::new(point(LINE), 420, 1000).unwrap();
    BayPhoto::new(bay(), "1f".repeat(32)).with(point(LINE), Some(pin))
}
fn check() -> Check {
    Check {
        set: "shore".to_owned(),
        from: Conductor::L1,
        other_set: "shore".to_owned(),
        to: Conductor::N,
        supply: SupplyKind::Ac,
    }
}
fn advice() -> AdviceShown {
    AdviceShown {
        action: Action::CheckThenSet,
        target: Some(torque("45 lbf.in")),
        check: Some(torque("36 lbf.in")),
        basis: Some(BasisKind::Label),
        source: "label inside the cover".to_owned(),
    }
}

fn entry(n: u64, act: Act, shown: Shown) -> Entry {
    let wall = DateTime::parse_from_rfc3339("2027-03-20T09:31:00.25-07:00").unwrap();
    Entry {
        id: ActId::new(id(1000 + u128::from(n))),
        rig: RigId::new(id(RIG)),
        walk: Some(WalkId::new(id(701))),
        at: Moment {
            wall: wall + chrono::Duration::seconds(i64::try_from(n).unwrap()),
            boot: Boot::new("3f0c", 600 + n),
        },
        flags: Flags::default(),
        act,
        shown,
    }
}

/// One entry of each kind and version, in the order in which they were frozen.
pub(crate) fn expected() -> Vec<(u32, Entry)> {
    let first = outside()
        .into_iter()
        .chain(proving())
        .chain(judging())
        .chain(origins());
    let first = first.map(|(act, shown)| (1, act, shown));
    let mut entries: Vec<(u32, Entry)> = (1..)
        .zip(first.chain(later()).chain(timing()))
        .map(|(n, (version, act, shown))| (version, entry(n, act, shown)))
        .collect();
    for (_, entry) in &mut entries {
        match entry.act {
            Act::Book(_) => entry.walk = None,
            Act::Odometer(_) => entry.flags.clock_back = true,
            Act::Resume => entry.flags.lapse = Some(Lapse::Pause),
            Act::FromBackup { .. } => entry.flags.lapse = Some(Lapse::Restored),
            _ => {}
        }
    }
    entries
}

fn outside() -> Vec<(Act, Shown)> {
    let plain = |act| (act, Shown::default());
    vec![
        plain(Act::Book(BookChange::Whole(Box::new(book())))),
        plain(Act::Odometer(miles("41250"))),
        plain(Act::Start {
            person: "Ada".to_owned(),
            scope: Scope::Bays(vec![bay()]),
        }),
        plain(Act::Ready {
            item: ReadyItem::Company,
            answer: ReadyAnswer::Without("alone today".to_owned()),
        }),
        (
            Act::Isolate {
                source: SourceId::new(id(SHORE)),
                away: Away::NotFound("no inlet seen".to_owned()),
            },
            Shown {
                findings: raised(
                    FindingKind::SourceUnknown,
                    About::Source(SourceId::new(id(SHORE))),
                ),
                ..Shown::default()
            },
        ),
        plain(Act::Open { bay: bay() }),
        plain(Act::Pause),
        plain(Act::Resume),
        plain(Act::Decide {
            finding: FindingId::new(id(801)),
            follow_up: FollowUp {
                decision: Decision::Licensed,
                by: Some(day("2027-04-15")),
                note: "asked".to_owned(),
            },
        }),
        plain(Act::Strike {
            act: ActId::new(id(1004)),
        }),
    ]
}

fn proving() -> Vec<(Act, Shown)> {
    let plain = |act| (act, Shown::default());
    vec![
        plain(Act::KnownLive {
            bay: bay(),
            supply: SupplyKind::Ac,
            place: "supply outlet".to_owned(),
            meter: Meter::contact("", MeterCategory::NotNoted),
            volts: volts("121,3"),
        }),
        (
            Act::Read {
                device: DeviceId::new(id(SWITCH)),
                check: check(),
                volts: volts("-118.0"),
            },
            Shown {
                dead: Some(false),
                suspects: vec![SourceId::new(id(SHORE)), SourceId::new(id(BANK))],
                ..Shown::default()
            },
        ),
        plain(Act::Except {
            device: DeviceId::new(id(SWITCH)),
            set: "bank".to_owned(),
            reason: "no switch upstream".to_owned(),
        }),
        plain(Act::PowerUp),
        plain(Act::Restore {
            source: SourceId::new(id(BANK)),
        }),
        plain(Act::LeaveAway {
            source: SourceId::new(id(SHORE)),
            why: "outlet is wrong".to_owned(),
        }),
        (
            Act::Measure(Reading {
                step: ReadingStep::Load1Leg2,
                place: "outlet by the door".to_owned(),
                measured: Measured::Volts(volts("131.9")),
            }),
            Shown {
                judged: Some(Judged {
                    verdict: Verdict::Stop,
                    act: SafeAct::SupplyAway,
                    limits: Some((110.0, 120.1 + 0.2)),
                    basis: LimitBasis::Ours,
                }),
                findings: raised(
                    FindingKind::BadReading,
                    About::Reading(ReadingStep::Load1Leg2),
                ),
                ..Shown::default()
            },
        ),
        (
            Act::End(Ending::Early("dark".to_owned())),
            Shown {
                findings: raised(FindingKind::BayLeftOpen, About::Bay(bay())),
                due: Some(DueShown {
                    on: day("2028-02-29"),
                    reason: DueReason::Distance,
                    at: Some(miles("51250")),
                    second_look: Some(day("2027-03-21")),
                }),
                ..Shown::default()
            },
        ),
    ]
}

fn judging() -> Vec<(Act, Shown)> {
    let plain = |act| (act, Shown::default());
    vec![
        plain(Act::SetTool {
            tool: driver(),
            at: torque("36 lbf.in"),
        }),
        (
            Act::Found {
                point: point(LINE),
                found: AsFound::Moved(Movement::Turned {
                    angle: Angle::Quarter,
                    below: torque("36.0 lbf.in"),
                    tool: driver(),
                }),
            },
            Shown {
                advice: Some(advice()),
                findings: raised(FindingKind::MovedAgain, About::Point(point(LINE))),
                ..Shown::default()
            },
        ),
        (
            Act::Correct {
                point: point(NEUTRAL),
                found: AsFound::Held(Test::Torque {
                    at: torque("36 lbf.in"),
                    tool: driver(),
                }),
                why: "wrong screw".to_owned(),
            },
            Shown {
                advice: Some(AdviceShown {
                    target: None,
                    check: None,
                    basis: None,
                    ..advice()
                }),
                ..Shown::default()
            },
        ),
        plain(Act::Look {
            point: point(SMELL),
            seen: Seen::Trouble("brown at the edge".to_owned()),
        }),
        plain(Act::Damage {
            point: point(CLAMP),
            damage: Damage::InsulationCaught,
            note: "under the clamp".to_owned(),
        }),
        plain(Act::Left {
            point: point(LINE),
            left: AsLeft::Remade {
                set: Some((torque("45 lbf.in"), driver())),
            },
        }),
        plain(Act::Photo {
            about: About::Rig,
            digest: "0f".repeat(32),
            caption: "the corner \u{201c}F\u{201d}".to_owned(),
        }),
        plain(Act::Close {
            bay: bay(),
            counted: Counted::ALL,
        }),
    ]
}

fn origins() -> Vec<(Act, Shown)> {
    let mark = |seq, pair: &str| Mark {
        seq,
        digest: pair.repeat(32),
    };
    let plain = |act| (act, Shown::default());
    vec![
        plain(Act::FromBackup {
            backup: mark(112, "1e"),
            replaced: Some(mark(130, "c7")),
        }),
        plain(Act::Recovered(Recovery {
            whole_to: mark(90, "5a"),
            reached: 130,
            missing: vec![Span { from: 91, to: 97 }, Span { from: 101, to: 101 }],
            sealed_anew: 32,
        })),
    ]
}

/// What came in with later versions of a kind.
fn later() -> Vec<(u32, Act, Shown)> {
    let plain = |version, act| (version, act, Shown::default());
    let live = Act::KnownLive {
        bay: bay(),
        supply: SupplyKind::Ac,
        place: "supply outlet".to_owned(),
        meter: Meter::contact("blue meter", MeterCategory::Three),
        volts: volts("121.3"),
    };
    vec![
        plain(2, Act::Book(BookChange::Whole(Box::new(wired_book())))),
        plain(2, live),
        (2, measured(), judged_by_the_circuit()),
        plain(3, Act::Book(BookChange::Whole(Box::new(pinned_book())))),
        plain(1, followed()),
        plain(1, Act::LeavePlan),
    ]
}

fn followed() -> Act {
    Act::Follow(Route {
        minutes: 30,
        spent: 421,
        stops: vec![RouteStop {
            bay: bay(),
            points: vec![point(LINE), point(NEUTRAL)],
        }],
    })
}

/// The wired book with the owner's word on two points.
fn pinned_book() -> Book {
    let mut book = wired_book();
    let words = [Some(Priority::Must), Some(Priority::Lower)];
    for (point, priority) in book.points.iter_mut().zip(words) {
        point.priority = priority;
    }
    book.bay_photos.push(bay_photo());
    book
}

fn measured() -> Act {
    Act::Measure(Reading {
        step: ReadingStep::Load1Leg2,
        place: "outlet by the door".to_owned(),
        measured: Measured::Volts(volts("128.9")),
    })
}

fn judged_by_the_circuit() -> Shown {
    let fault = |fault, at| FaultSeen { fault, at };
    Shown {
        judged: Some(Judged {
            verdict: Verdict::Watch,
            act: SafeAct::GoOn,
            limits: Some((110.0, 127.0)),
            basis: LimitBasis::AnsiB,
        }),
        service: Some(ServiceSeen {
            standing: Standing::Faulty,
            act: SafeAct::SupplyAway,
            cautions: vec![Caution::GlowingJoint],
            faults: vec![
                fault(Fault::WeakNeutral, Some(ServiceConductor::Neutral)),
                fault(Fault::OpenGround, None),
            ],
            next: vec![AskSeen {
                ask: Ask::ReadPair,
                pair: Some(Pair::L1N),
            }],
        }),
        findings: raised(
            FindingKind::BadReading,
            About::Reading(ReadingStep::Load1Leg2),
        ),
        ..Shown::default()
    }
}
