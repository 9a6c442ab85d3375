//! A small rig, and one of every refusal there is.

use baywalk_domain::coded::Coded;
use baywalk_domain::finding::FindingKind;
use baywalk_domain::ids::{ActId, BayId, DeviceId, PointId, RigId, SourceId, ToolId};
use baywalk_domain::isolation::Lapse;
use baywalk_domain::isolation::MeterCategory;
use baywalk_domain::rig::{
    Bay, Book, BookFault, Check, Code, Conductor, Device, DeviceKind, Fastening, FasteningKind,
    Isolation, Point, PointKind, Presence, Rig, RigKind, ServiceKind, Side, Source, SourceKind,
    Station, SupplyKind, Terminal, YearlyRule,
};
use baywalk_domain::supply::ReadingStep;
use baywalk_domain::torque::Action;
use baywalk_domain::walk::{BayStage, Needs, NoException, Phase, ReadyItem, Refusal};
use uuid::Uuid;

pub(crate) const ID: Uuid = Uuid::from_u128(7);

fn code(text: &str) -> Code {
    Code::parse(text).unwrap()
}

/// A rig with one of each: source S1, bay F, device F1, point F8.
pub(crate) fn book() -> Book {
    let mut book = Book::new(Rig {
        id: RigId::new(ID),
        name: "Sample".into(),
        kind: RigKind::Motorhome,
        service: ServiceKind::Amp50,
        rule: YearlyRule {
            months: 12,
            distance: None,
        },
        note: String::new(),
    });
    book.sources.push(Source {
        id: SourceId::new(ID),
        code: code("S1"),
        name: "shore, 50 A".into(),
        kind: SourceKind::Shore,
        presence: Presence::Have,
        supply: SupplyKind::Ac,
        highest: None,
        isolation: Isolation::Unplug,
        opens: None,
        how: String::new(),
        wait: None,
        retired: false,
    });
    book.bays.push(Bay {
        id: BayId::new(ID),
        code: code("F"),
        name: "transfer switch bay".into(),
        place: String::new(),
        station: Station::new(850).unwrap(),
        side: Side::Left,
        open_minutes: 1,
        close_minutes: 1,
        fed_by: Vec::new(),
        keep_out: String::new(),
        retired: false,
    });
    book.devices.push(Device {
        id: DeviceId::new(ID),
        code: code("F1"),
        bay: BayId::new(ID),
        name: "transfer switch".into(),
        kind: DeviceKind::TransferSwitch,
        sets: Vec::new(),
        unswitched: Vec::new(),
        retired: false,
    });
    book.points.push(Point {
        id: PointId::new(ID),
        code: code("F8"),
        device: DeviceId::new(ID),
        name: "N in shore".into(),
        place: String::new(),
        kind: PointKind::Terminal(Box::new(Terminal::of(Fastening::of(
            FasteningKind::PressureScrew,
        )))),
        priority: None,
        note: String::new(),
        retired: false,
    });
    book
}

pub(crate) fn pair() -> Check {
    Check {
        set: "shore in".into(),
        from: Conductor::L1,
        other_set: "generator in".into(),
        to: Conductor::L2,
        supply: SupplyKind::Ac,
    }
}

fn needs() -> Vec<Needs> {
    let device = DeviceId::new(ID);
    let mut all = vec![
        Needs::OpenBay(BayId::new(ID)),
        Needs::Source(SourceId::new(ID)),
        Needs::Sets(device),
        Needs::LiveAgain(SupplyKind::Ac),
        Needs::FoundLive(device),
    ];
    let pairs = |left| Needs::Pairs {
        device,
        left,
        next: pair(),
    };
    all.extend([pairs(1), pairs(12)]);
    all.extend(Lapse::ALL.iter().map(|lapse| Needs::Lapsed(*lapse)));
    all
}

fn book_faults() -> Vec<BookFault> {
    let of = code("F8");
    let mut torque = Terminal::of(Fastening::of(FasteningKind::PushIn));
    torque.allowed = 0;
    vec![
        BookFault::CodeTaken { code: of.clone() },
        BookFault::Missing {
            of: of.clone(),
            what: "device",
        },
        BookFault::NoSuchSet { of: of.clone() },
        BookFault::Pin { bay: of.clone() },
        BookFault::NoPhoto { bay: of.clone() },
        BookFault::NoBay,
        BookFault::Terminal {
            of,
            fault: torque.checked().unwrap_err(),
        },
        BookFault::EmptyName,
        BookFault::Months { months: 14 },
    ]
}

fn plain() -> Vec<Refusal> {
    vec![
        Refusal::NoRig,
        Refusal::NoWalk,
        Refusal::WalkOpen,
        Refusal::Paused,
        Refusal::NotPaused,
        Refusal::NoRoute,
        Refusal::NoSources,
        Refusal::Proximity,
        Refusal::NoMeter,
        Refusal::NameMeter,
        Refusal::NoSuchPair,
        Refusal::NoTool,
        Refusal::ToolNotSet(ToolId::new(ID)),
        Refusal::SayWhy,
        Refusal::NoFinding,
        Refusal::OdometerBack,
        Refusal::NothingToMend,
        Refusal::PutOffTooFar,
        Refusal::Rule(baywalk_domain::due::RuleFault::NoWord),
        Refusal::NotNewest {
            newest: ActId::new(ID),
        },
        Refusal::NothingToStrike,
    ]
}

fn of_things() -> Vec<Refusal> {
    let (source, bay, point) = (SourceId::new(ID), BayId::new(ID), PointId::new(ID));
    vec![
        Refusal::SourceNotAway(source),
        Refusal::SourceFirst(source),
        Refusal::SourceDone(source),
        Refusal::AliveByChoice {
            bay,
            feeding: source,
        },
        Refusal::NotCounted(bay),
        Refusal::BayOpen(bay),
        Refusal::WrongKind(point),
        Refusal::NotedAlready(point),
        Refusal::NothingNoted(point),
        Refusal::LeaveWhatHeld(point),
        Refusal::CantLeaveSo(point),
        Refusal::WaitsForLeft(point),
    ]
}

fn by_lists() -> Vec<Refusal> {
    let (bay, point) = (BayId::new(ID), PointId::new(ID));
    let mut all = Vec::new();
    for found in Phase::ALL {
        for expected in Phase::ALL {
            let (found, expected) = (*found, *expected);
            all.push(Refusal::Phase { found, expected });
        }
    }
    for item in ReadyItem::ALL {
        all.extend([Refusal::NotReady(*item), Refusal::MustHave(*item)]);
    }
    for expected in BayStage::ALL {
        let (found, expected) = (BayStage::Shut, *expected);
        all.push(Refusal::Bay {
            bay,
            found,
            expected,
        });
    }
    for supply in SupplyKind::ALL {
        all.extend([Refusal::NotKnownLive(*supply), Refusal::NoProof(*supply)]);
    }
    for found in MeterCategory::ALL {
        all.push(Refusal::MeterCategory(*found));
    }
    for advice in Action::ALL {
        let advice = *advice;
        all.push(Refusal::NotBy { point, advice });
    }
    for because in FindingKind::ALL {
        let because = *because;
        all.push(Refusal::RemakeNotSet { point, because });
    }
    for step in ReadingStep::ALL {
        all.extend([
            Refusal::ReadingFirst(*step),
            Refusal::ReadingStops(*step),
            Refusal::NoSuchReading(*step),
            Refusal::WrongMeasure(*step),
        ]);
    }
    all.extend(
        NoException::ALL
            .iter()
            .map(|why| Refusal::NoException(*why)),
    );
    all.extend(
        needs()
            .into_iter()
            .map(|needs| Refusal::Locked { point, needs }),
    );
    all.extend(["bay", "point", "device", "source", "tool", "photo", "x"].map(Refusal::NotInBook));
    all.extend(book_faults().into_iter().map(Refusal::Book));
    all
}

/// One of every refusal, and of every list that it may carry.
pub(crate) fn refusals() -> Vec<Refusal> {
    [plain(), of_things(), by_lists()].concat()
}
