//! The entries of one walk on the invented rig, with one of each thing that a report tells.

use crate::book::{
    BANK, BATTERY_BAY, CONTROL, DRIVER, GROUND, L1_IN, LOOK, N_IN, PORTABLE, POST, POSTS, Pen, RIG,
    SHORE, SWITCH, SWITCH_BAY, book,
};
use baywalk_domain::finding::{About, FindingKind, Raised};
use baywalk_domain::ids::{ActId, FindingId, WalkId};
use baywalk_domain::isolation::{Lapse, Meter, MeterCategory, checks_of};
use baywalk_domain::moment::{Boot, Moment};
use baywalk_domain::rig::{ServiceKind, SupplyKind};
use baywalk_domain::supply::{Measured, Reading, ReadingStep, judge};
use baywalk_domain::torque::{Action, BasisKind};
use baywalk_domain::units::{Stated, TorqueUnit};
use baywalk_domain::walk::{
    Act, AdviceShown, Angle, AsFound, AsLeft, Away, Counted, Damage, Ending, Entry, Flags,
    Movement, NotJudgedWhy, ReadyAnswer, ReadyItem, Scope, Seen, Shown, Test,
};
use uuid::Uuid;

pub(crate) const WALK: WalkId = WalkId::new(Uuid::from_u128(100));
const DIGEST: &str = "4f1c6a0d3be8927755a1c0de4f1c6a0d3be8927755a1c0de4f1c6a0d3be89277";

/// Notes acts one minute after the other.
struct Recorder {
    pen: Pen,
    entries: Vec<Entry>,
}

pub(crate) fn moment(minutes: u64) -> Moment {
    let start = chrono::DateTime::parse_from_rfc3339("2027-03-20T09:00:00-07:00").unwrap();
    Moment {
        wall: start + chrono::Duration::minutes(i64::try_from(minutes).unwrap()),
        boot: Boot::new("a", minutes * 60),
    }
}

impl Recorder {
    fn act(&mut self, act: Act) {
        self.shown(act, Shown::default());
    }

    fn shown(&mut self, act: Act, shown: Shown) {
        let number = u64::try_from(self.entries.len()).unwrap();
        self.entries.push(Entry {
            id: ActId::new(Uuid::from_u128(1000 + u128::from(number))),
            rig: RIG,
            walk: Some(WALK),
            at: moment(number),
            flags: Flags::default(),
            act,
            shown,
        });
    }

    fn text(&self, text: &str) -> String {
        (self.pen)(text)
    }

    fn known_live(&mut self, bay: baywalk_domain::ids::BayId, supply: SupplyKind, volts: &str) {
        let act = Act::KnownLive {
            bay,
            supply,
            place: self.text("supply outlet"),
            meter: Meter::contact("blue meter", MeterCategory::Three),
            volts: Stated::parse_pair(volts).unwrap(),
        };
        self.act(act);
    }

    /// Reads every pair of the transfer switch of one kind of supply, the last one a little higher.
    fn prove(&mut self, supply: SupplyKind, volts: &str) {
        self.known_live(SWITCH_BAY, supply, volts);
        let book = book(self.pen);
        let checks = checks_of(&book.device(SWITCH).unwrap().sets);
        let pairs = checks.into_iter().filter(|check| check.supply == supply);
        for (place, check) in pairs.enumerate() {
            let volts = if place == 5 { "0.3 V" } else { "0.1 V" };
            let read = Act::Read {
                device: SWITCH,
                check,
                volts: Stated::parse_pair(volts).unwrap(),
            };
            let dead = Shown {
                dead: Some(true),
                ..Shown::default()
            };
            self.shown(read, dead);
        }
        self.known_live(SWITCH_BAY, supply, volts);
    }

    fn measure(&mut self, step: ReadingStep, measured: Measured) {
        let place = self.text("outlet in the galley");
        let reading = Reading {
            step,
            place,
            measured,
        };
        let judged = judge(&reading, ServiceKind::Amp50, |_| None);
        let shown = Shown {
            judged: Some(judged),
            ..Shown::default()
        };
        self.shown(Act::Measure(reading), shown);
    }

    fn found(&mut self, act: Act, findings: Vec<Raised>) {
        let torque = |text| Stated::parse_pair(text).ok();
        let advice = AdviceShown {
            action: Action::CheckThenSet,
            target: torque("45 lbf.in"),
            check: torque("36 lbf.in"),
            basis: Some(BasisKind::Label),
            source: self.text("inside the cover"),
        };
        let shown = Shown {
            advice: Some(advice),
            findings,
            ..Shown::default()
        };
        self.shown(act, shown);
    }
}

fn raised(number: u128, kind: FindingKind, about: About) -> Raised {
    Raised {
        id: FindingId::new(Uuid::from_u128(number)),
        kind,
        about,
    }
}

fn torque(text: &str) -> Stated<TorqueUnit> {
    Stated::parse_pair(text).unwrap()
}

/// All entries of the walk, oldest first.
pub(crate) fn entries(pen: Pen) -> Vec<Entry> {
    let mut walk = Recorder {
        pen,
        entries: Vec::new(),
    };
    before(&mut walk);
    proofs(&mut walk);
    terminals(&mut walk);
    after(&mut walk);
    walk.entries
}

fn before(walk: &mut Recorder) {
    let person = walk.text("Ines Falk");
    let why = walk.text("alone today");
    walk.act(Act::Start {
        person,
        scope: Scope::Whole,
    });
    walk.act(Act::Ready {
        item: ReadyItem::Company,
        answer: ReadyAnswer::Without(why),
    });
    let (locked, taped) = (walk.text("plug locked"), walk.text("lead taped"));
    let searched = walk.text("every cupboard");
    for (source, away) in [
        (SHORE, Away::Isolated(locked)),
        (PORTABLE, Away::NotFound(searched)),
        (BANK, Away::Isolated(taped)),
    ] {
        walk.act(Act::Isolate { source, away });
    }
}

fn proofs(walk: &mut Recorder) {
    walk.act(Act::Open { bay: SWITCH_BAY });
    walk.prove(SupplyKind::Ac, "121.3 V");
    walk.act(Act::Pause);
    walk.act(Act::Resume);
    if let Some(resumed) = walk.entries.last_mut() {
        resumed.flags.lapse = Some(Lapse::Pause);
    }
    walk.prove(SupplyKind::Ac, "121.2 V");
    walk.prove(SupplyKind::Dc, "12.7 V");
    walk.act(Act::Open { bay: BATTERY_BAY });
    let except = Act::Except {
        device: POSTS,
        set: walk.text("feed"),
        reason: walk.text("posts of the bank: nothing upstream to open"),
    };
    walk.act(except);
}

fn terminals(walk: &mut Recorder) {
    let held = |tool| {
        AsFound::Held(Test::Torque {
            at: torque("36 lbf.in"),
            tool,
        })
    };
    let turned = AsFound::Moved(Movement::Turned {
        angle: Angle::Quarter,
        below: torque("36 lbf.in"),
        tool: DRIVER,
    });
    let found = |point, found| Act::Found { point, found };
    walk.found(found(N_IN, held(DRIVER)), Vec::new());
    let why = walk.text("the click came late");
    walk.act(Act::Correct {
        point: N_IN,
        found: turned,
        why,
    });
    walk.act(Act::Left {
        point: N_IN,
        left: AsLeft::Set {
            torque: torque("45 lbf.in"),
            tool: DRIVER,
        },
    });
    let damaged = raised(200, FindingKind::Damaged, About::Point(L1_IN));
    let out = raised(201, FindingKind::OutOfService, About::Point(L1_IN));
    walk.found(found(L1_IN, AsFound::Loose), vec![damaged, out]);
    let note = walk.text("brown ring");
    walk.act(Act::Damage {
        point: L1_IN,
        damage: Damage::Heat,
        note,
    });
    let how = walk.text("breaker 9 off and tagged");
    walk.act(Act::Left {
        point: L1_IN,
        left: AsLeft::OutOfService { how },
    });
    walk.act(found(CONTROL, AsFound::Apart));
    walk.act(Act::Left {
        point: CONTROL,
        left: AsLeft::Remade { set: None },
    });
    walk.found(found(GROUND, held(DRIVER)), Vec::new());
    let seen = walk.text("soot above the screws");
    walk.act(Act::Look {
        point: LOOK,
        seen: Seen::Trouble(seen),
    });
    let note = walk.text("clamp under the strap");
    walk.act(found(
        POST,
        AsFound::NotJudged {
            why: NotJudgedWhy::Alive,
            note,
        },
    ));
    let caption = walk.text("N in before it was set");
    walk.act(Act::Photo {
        about: About::Point(N_IN),
        digest: DIGEST.to_owned(),
        caption,
    });
}

fn after(walk: &mut Recorder) {
    for bay in [SWITCH_BAY, BATTERY_BAY] {
        walk.act(Act::Close {
            bay,
            counted: Counted::ALL,
        });
    }
    walk.act(Act::PowerUp);
    walk.act(Act::Restore { source: BANK });
    walk.measure(
        ReadingStep::DcBus,
        Measured::Volts(Stated::parse_pair("12.9 V").unwrap()),
    );
    walk.measure(
        ReadingStep::SupplyL1N,
        Measured::Volts(Stated::parse_pair("98.5 V").unwrap()),
    );
    let not = walk.text("probes do not reach");
    walk.measure(ReadingStep::SupplyL1L2, Measured::Not(not));
    walk.measure(ReadingStep::Gfci, Measured::Fails);
    let why = walk.text("weak neutral, electrician asked");
    walk.act(Act::LeaveAway { source: SHORE, why });
    let why = walk.text("rain");
    walk.act(Act::End(Ending::Early(why)));
}
