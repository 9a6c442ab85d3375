//! A small rig and a walker: acts go through `decide` and `fold`, as a logbook would do it.

use baywalk_domain::coded::Coded;
use baywalk_domain::due::OdometerNote;
use baywalk_domain::finding::Finding;
use baywalk_domain::ids::{ActId, BayId, DeviceId, PointId, RigId, SourceId, ToolId};
use baywalk_domain::isolation::{MeterKind, checks_of};
use baywalk_domain::moment::{Boot, Moment};
use baywalk_domain::rig::{
    Bay, Book, Code, Conductor, ConductorSet, Device, DeviceKind, Drive, DriveKind, Fastening,
    FasteningKind, Isolation, LookKind, MakerTorque, Material, Point, PointKind, Presence, Recheck,
    Rig, RigKind, Role, ServiceKind, SetSystem, Side, Source, SourceKind, Station, Strands,
    SupplyKind, Terminal, ThreadState, Tool, ToolKind, TorqueBasis, Wire, WireSize, YearlyRule,
};
use baywalk_domain::torque::Practice;
use baywalk_domain::units::{Stated, TorqueUnit, VoltageUnit};
use baywalk_domain::walk::{
    Act, Away, Call, Context, Entry, ReadyAnswer, ReadyItem, Refusal, Scope, WalkState, decide,
};
use chrono::{DateTime, Duration};
use std::collections::BTreeMap;
use uuid::Uuid;

pub fn id(n: u128) -> Uuid {
    Uuid::from_u128(n)
}

pub const RIG: u128 = 1;
pub const SHORE: u128 = 11;
pub const SOLAR: u128 = 12;
pub const BANK: u128 = 13;
pub const AC_BAY: u128 = 21;
pub const DC_BAY: u128 = 22;
pub const SWITCH: u128 = 31;
pub const BATTERY: u128 = 32;
pub const LINE: u128 = 41;
pub const NEUTRAL: u128 = 42;
pub const POST: u128 = 43;
pub const SMELL: u128 = 44;
pub const CLAMP: u128 = 45;
pub const DRIVER: u128 = 51;

pub fn code(text: &str) -> Code {
    Code::parse(text).unwrap()
}

pub fn torque(text: &str) -> Stated<TorqueUnit> {
    Stated::parse_pair(text).unwrap()
}

pub fn volts(text: &str) -> Stated<VoltageUnit> {
    Stated::parse(text, VoltageUnit::Volts).unwrap()
}

fn source(
    n: u128,
    word: &str,
    kind: SourceKind,
    supply: SupplyKind,
    most: &str,
    isolation: Isolation,
) -> Source {
    Source {
        id: SourceId::new(id(n)),
        code: code(word),
        name: kind.code().to_owned(),
        kind,
        presence: Presence::Have,
        supply,
        highest: Some(volts(most)),
        isolation,
        how: String::new(),
        wait: None,
        retired: false,
    }
}

fn bay(n: u128, word: &str, station: u16, fed_by: &[u128]) -> Bay {
    Bay {
        id: BayId::new(id(n)),
        code: code(word),
        name: format!("bay {word}"),
        place: String::new(),
        station: Station::new(station).unwrap(),
        side: Side::Left,
        open_minutes: 1,
        close_minutes: 1,
        fed_by: fed_by
            .iter()
            .map(|source| SourceId::new(id(*source)))
            .collect(),
        keep_out: String::new(),
        retired: false,
    }
}

fn device(
    n: u128,
    word: &str,
    bay: u128,
    kind: DeviceKind,
    sets: &[(&str, SetSystem)],
    unswitched: &[&str],
) -> Device {
    Device {
        id: DeviceId::new(id(n)),
        code: code(word),
        bay: BayId::new(id(bay)),
        name: kind.code().to_owned(),
        kind,
        sets: sets
            .iter()
            .map(|(name, system)| ConductorSet {
                name: (*name).to_owned(),
                system: *system,
            })
            .collect(),
        unswitched: unswitched.iter().map(|word| code(word)).collect(),
        retired: false,
    }
}

pub fn screw(set: &str, conductor: Conductor, label: Option<&str>) -> Terminal {
    let mut fastening = Fastening::of(FasteningKind::PressureScrew);
    fastening.drives = vec![Drive::unsized_of(DriveKind::Slotted)];
    Terminal {
        set: Some(set.to_owned()),
        conductor: Some(conductor),
        role: Role::Power,
        fastening,
        wire: Wire {
            size: Some(WireSize::Awg(6)),
            material: Material::Copper,
            strands: Strands::Stranded,
        },
        landed: 1,
        allowed: 1,
        range: None,
        current: None,
        thread_state: ThreadState::Dry,
        maker: label.map(|label| MakerTorque {
            torque: torque(label),
            basis: TorqueBasis::Label,
            source: "label inside the cover".to_owned(),
            recheck: Recheck::Unsaid,
        }),
    }
}

fn point(n: u128, word: &str, device: u128, kind: PointKind) -> Point {
    Point {
        id: PointId::new(id(n)),
        code: code(word),
        device: DeviceId::new(id(device)),
        name: format!("point {word}"),
        place: String::new(),
        kind,
        note: String::new(),
        retired: false,
    }
}

/// One AC bay with a transfer switch, one DC bay with a 12 V bank that no switch cuts off.
pub fn book() -> Book {
    let mut post = screw("bank", Conductor::Plus, None);
    post.fastening = Fastening::of(FasteningKind::BatteryPost);
    let mut clamp = screw("shore", Conductor::L2, None);
    clamp.fastening = Fastening::of(FasteningKind::PushIn);
    let mut book = Book::new(Rig {
        id: RigId::new(id(RIG)),
        name: "Wren".to_owned(),
        kind: RigKind::Motorhome,
        service: ServiceKind::Amp50,
        rule: YearlyRule {
            months: 12,
            distance: None,
        },
        note: String::new(),
    });
    book.sources = vec![
        source(
            SHORE,
            "S1",
            SourceKind::Shore,
            SupplyKind::Ac,
            "250",
            Isolation::Unplug,
        ),
        source(
            SOLAR,
            "S2",
            SourceKind::Solar,
            SupplyKind::Dc,
            "24",
            Isolation::Switch,
        ),
        source(
            BANK,
            "S3",
            SourceKind::HouseBattery,
            SupplyKind::Dc,
            "14.6",
            Isolation::LeadOff,
        ),
    ];
    book.bays = vec![
        bay(AC_BAY, "A", 100, &[SHORE]),
        bay(DC_BAY, "B", 500, &[BANK, SOLAR]),
    ];
    book.devices = vec![
        device(
            SWITCH,
            "ATS",
            AC_BAY,
            DeviceKind::TransferSwitch,
            &[("shore", SetSystem::SplitPhase)],
            &[],
        ),
        device(
            BATTERY,
            "BAT",
            DC_BAY,
            DeviceKind::BatteryBank,
            &[("bank", SetSystem::Dc)],
            &["S3"],
        ),
    ];
    book.points = vec![
        point(
            LINE,
            "A1",
            SWITCH,
            PointKind::Terminal(Box::new(screw("shore", Conductor::L1, Some("45 lbf.in")))),
        ),
        point(
            NEUTRAL,
            "A2",
            SWITCH,
            PointKind::Terminal(Box::new(screw("shore", Conductor::N, Some("45 lbf.in")))),
        ),
        point(CLAMP, "A3", SWITCH, PointKind::Terminal(Box::new(clamp))),
        point(POST, "B1", BATTERY, PointKind::Terminal(Box::new(post))),
        point(SMELL, "A4", SWITCH, PointKind::Look(LookKind::HeatMark)),
    ];
    book.tools = vec![Tool {
        id: ToolId::new(id(DRIVER)),
        code: code("T1"),
        name: "driver".to_owned(),
        kind: ToolKind::ClickDriver,
        least: torque("10 lbf.in"),
        most: torque("60 lbf.in"),
        step: torque("1 lbf.in"),
        calibrated: None,
        cycles: 0,
        retired: false,
    }];
    book
}

/// Walks through a book, keeping the entries of one walk.
pub struct Walker {
    pub book: Book,
    pub entries: Vec<Entry>,
    pub moved_running: BTreeMap<PointId, u8>,
    pub findings: Vec<Finding>,
    pub odometer: Vec<OdometerNote>,
    pub seconds: u64,
    pub boot: &'static str,
    next: u128,
}

impl Walker {
    pub fn new(book: Book) -> Self {
        Self {
            book,
            entries: Vec::new(),
            moved_running: BTreeMap::new(),
            findings: Vec::new(),
            odometer: Vec::new(),
            seconds: 0,
            boot: "first",
            next: 1000,
        }
    }

    pub fn now(&self) -> Moment {
        let start = DateTime::parse_from_rfc3339("2027-03-20T09:00:00-07:00").unwrap();
        Moment {
            wall: start + Duration::seconds(i64::try_from(self.seconds).unwrap()),
            boot: Boot::new(self.boot, self.seconds),
        }
    }

    pub fn state(&self) -> Option<WalkState> {
        WalkState::fold(&self.entries, &self.book).filter(|state| state.ending.is_none())
    }

    pub fn act(&mut self, act: Act) -> Result<Entry, Refusal> {
        self.seconds += 5;
        self.next += 1;
        let now = self.now();
        let walk = self.state();
        let practice = Practice::default();
        let context = Context {
            book: Some(&self.book),
            walk: walk.as_ref(),
            moved_running: &self.moved_running,
            findings: &self.findings,
            odometer: &self.odometer,
            last_walk: None,
            unsettled: &[],
            newest: self.entries.last().map(|entry| &entry.at),
            practice: &practice,
        };
        let call = Call {
            id: ActId::new(id(self.next)),
            rig: RigId::new(id(RIG)),
            act,
        };
        let entry = decide(&context, &call, &now)?;
        if let Act::Book(change) = &entry.act {
            self.book.apply(change);
        }
        self.entries.push(entry.clone());
        Ok(entry)
    }

    pub fn start(&mut self) {
        self.act(Act::Start {
            person: "Ada".to_owned(),
            scope: Scope::Whole,
        })
        .unwrap();
        for item in ReadyItem::ALL {
            self.act(Act::Ready {
                item: *item,
                answer: ReadyAnswer::Done,
            })
            .unwrap();
        }
    }

    pub fn isolate(&mut self) {
        for source in [SHORE, SOLAR, BANK] {
            let away = Away::Isolated("tagged".to_owned());
            self.act(Act::Isolate {
                source: SourceId::new(id(source)),
                away,
            })
            .unwrap();
        }
    }

    pub fn known_live(&mut self, bay: u128, supply: SupplyKind) -> Result<Entry, Refusal> {
        let reading = if supply == SupplyKind::Ac {
            "121.3"
        } else {
            "12.8"
        };
        self.act(Act::KnownLive {
            bay: BayId::new(id(bay)),
            supply,
            place: "supply outlet".to_owned(),
            meter: MeterKind::Contact,
            volts: volts(reading),
        })
    }

    pub fn prove(&mut self, bay: u128, of: u128) {
        let device = self.book.device(DeviceId::new(id(of))).unwrap().clone();
        for supply in SupplyKind::ALL {
            let checks: Vec<_> = checks_of(&device.sets)
                .into_iter()
                .filter(|check| check.supply == *supply)
                .collect();
            if checks.is_empty() {
                continue;
            }
            self.known_live(bay, *supply).unwrap();
            for check in checks {
                self.act(Act::Read {
                    device: device.id,
                    check,
                    volts: volts("0.0"),
                })
                .unwrap();
            }
            self.known_live(bay, *supply).unwrap();
        }
    }

    /// Up to the open and proved AC bay.
    pub fn at_ac_bay() -> Self {
        let mut walker = Self::new(book());
        walker.start();
        walker.isolate();
        walker
            .act(Act::Open {
                bay: BayId::new(id(AC_BAY)),
            })
            .unwrap();
        walker.prove(AC_BAY, SWITCH);
        walker
    }
}
