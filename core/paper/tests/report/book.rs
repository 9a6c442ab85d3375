//! An invented rig of three bays; every free text goes through the pen.

use baywalk_domain::ids::{BayId, DeviceId, PointId, RigId, SourceId, ToolId};
use baywalk_domain::rig::{
    Bay, Book, Code, Conductor, ConductorSet, Device, DeviceKind, Fastening, FasteningKind,
    Isolation, LookKind, MakerTorque, Point, PointKind, Presence, Recheck, Rig, RigKind,
    ServiceKind, SetSystem, Side, Source, SourceKind, Station, SupplyKind, Terminal, Tool,
    ToolKind, TorqueBasis, Wait, WireSize, YearlyRule,
};
use baywalk_domain::units::Stated;
use uuid::Uuid;

/// Writes every free text of a scene.
pub(crate) type Pen = fn(&str) -> String;

macro_rules! ids {
    ($($name:ident: $kind:ident = $number:literal),+ $(,)?) => {
        $(pub(crate) const $name: $kind = $kind::new(Uuid::from_u128($number));)+
    };
}

ids! {
    RIG: RigId = 1,
    SHORE: SourceId = 2, BANK: SourceId = 3, PORTABLE: SourceId = 4,
    SWITCH_BAY: BayId = 10, BATTERY_BAY: BayId = 11, ROOF_BAY: BayId = 12,
    SWITCH: DeviceId = 20, POSTS: DeviceId = 21, JUNCTION: DeviceId = 22,
    N_IN: PointId = 30, L1_IN: PointId = 31, CONTROL: PointId = 32, LOOK: PointId = 33,
    GROUND: PointId = 34, POST: PointId = 35, ROOF_PLUS: PointId = 36, ROOF_MINUS: PointId = 37,
    DRIVER: ToolId = 40, WRENCH: ToolId = 41,
}

pub(crate) fn code(text: &str) -> Code {
    Code::parse(text).unwrap()
}

pub(crate) fn book(pen: Pen) -> Book {
    let mut book = Book::new(Rig {
        id: RIG,
        name: pen("Alder"),
        kind: RigKind::Motorhome,
        service: ServiceKind::Amp50,
        rule: YearlyRule {
            months: 12,
            distance: None,
        },
        note: pen("kept under the oak"),
    });
    book.sources = sources(pen);
    book.bays = vec![
        bay(pen, SWITCH_BAY, "F", "transfer switch bay", 600),
        bay(pen, BATTERY_BAY, "E", "battery bay", 800),
        bay(pen, ROOF_BAY, "D", "roof junction", 900),
    ];
    book.devices = vec![
        device(pen, SWITCH, "FTS", SWITCH_BAY, SetSystem::SplitPhase),
        device(pen, POSTS, "EBB", BATTERY_BAY, SetSystem::Dc),
        device(pen, JUNCTION, "DJB", ROOF_BAY, SetSystem::Dc),
    ];
    book.points = points(pen);
    book.tools = vec![
        tool(pen, DRIVER, "T1", ToolKind::ClickDriver, Some("2026-11-04")),
        tool(pen, WRENCH, "T2", ToolKind::ClickWrench, None),
    ];
    book
}

fn sources(pen: Pen) -> Vec<Source> {
    let source = |id, word: &str, name: &str, kind, presence, supply| Source {
        id,
        code: code(word),
        name: pen(name),
        kind,
        presence,
        supply,
        highest: None,
        isolation: Isolation::Unplug,
        opens: None,
        how: pen("cord in the locked box"),
        wait: Some(Wait {
            minutes: 5,
            basis: pen("label on the inverter"),
        }),
        retired: false,
    };
    let have = Presence::Have;
    let ac = SupplyKind::Ac;
    vec![
        source(SHORE, "S1", "shore power", SourceKind::Shore, have, ac),
        source(
            BANK,
            "S2",
            "house bank",
            SourceKind::HouseBattery,
            have,
            SupplyKind::Dc,
        ),
        source(
            PORTABLE,
            "S3",
            "portable unit",
            SourceKind::Portable,
            Presence::NotSure,
            ac,
        ),
    ]
}

fn bay(pen: Pen, id: BayId, word: &str, name: &str, station: u16) -> Bay {
    Bay {
        id,
        code: code(word),
        name: pen(name),
        place: pen("third door"),
        station: Station::new(station).unwrap(),
        side: Side::Left,
        open_minutes: 2,
        close_minutes: 2,
        fed_by: vec![SHORE, BANK],
        keep_out: pen("yellow plugs: leave them alone"),
        retired: false,
    }
}

fn device(pen: Pen, id: DeviceId, word: &str, bay: BayId, system: SetSystem) -> Device {
    Device {
        id,
        code: code(word),
        bay,
        name: pen("device"),
        kind: DeviceKind::Other,
        sets: vec![ConductorSet {
            name: pen("feed"),
            system,
            from: Vec::new(),
        }],
        unswitched: Vec::new(),
        retired: false,
    }
}

fn points(pen: Pen) -> Vec<Point> {
    let point = |id, word: &str, device, name: &str, kind| Point {
        id,
        code: code(word),
        device,
        name: pen(name),
        place: pen("lower row"),
        kind,
        priority: None,
        note: pen("worn label"),
        retired: false,
    };
    let screw = |conductor| terminal(pen, FasteningKind::PressureScrew, conductor, true);
    let clamp = terminal(pen, FasteningKind::PushIn, Conductor::L1, false);
    let stud = |conductor| terminal(pen, FasteningKind::BatteryPost, conductor, false);
    vec![
        point(N_IN, "F8", SWITCH, "N in, shore", screw(Conductor::N)),
        point(L1_IN, "F9", SWITCH, "L1 in, shore", screw(Conductor::L1)),
        point(CONTROL, "F10", SWITCH, "control lead", clamp),
        point(GROUND, "F11", SWITCH, "ground in", screw(Conductor::G)),
        point(
            LOOK,
            "F12",
            SWITCH,
            "marks of heat",
            PointKind::Look(LookKind::HeatMark),
        ),
        point(POST, "E1", POSTS, "positive post", stud(Conductor::Plus)),
        point(
            ROOF_PLUS,
            "D1",
            JUNCTION,
            "array plus",
            stud(Conductor::Plus),
        ),
        point(
            ROOF_MINUS,
            "D2",
            JUNCTION,
            "array minus",
            stud(Conductor::Minus),
        ),
    ]
}

fn terminal(pen: Pen, kind: FasteningKind, conductor: Conductor, label: bool) -> PointKind {
    let mut terminal = Terminal::of(Fastening::of(kind));
    terminal.set = Some(pen("feed"));
    terminal.conductor = Some(conductor);
    terminal.wire.size = Some(WireSize::Awg(6));
    terminal.maker = label.then(|| MakerTorque {
        torque: Stated::parse_pair("45 lbf.in").unwrap(),
        basis: TorqueBasis::Label,
        source: pen("inside the cover"),
        recheck: Recheck::Unsaid,
    });
    PointKind::Terminal(Box::new(terminal))
}

fn tool(pen: Pen, id: ToolId, word: &str, kind: ToolKind, day: Option<&str>) -> Tool {
    let torque = |text| Stated::parse_pair(text).unwrap();
    Tool {
        id,
        code: code(word),
        name: pen("torque screwdriver"),
        kind,
        least: torque("5 lbf.in"),
        most: torque("50 lbf.in"),
        step: torque("1 lbf.in"),
        calibrated: day.map(|day| day.parse().unwrap()),
        cycles: 40,
        retired: false,
    }
}
