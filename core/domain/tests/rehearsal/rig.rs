//! A small rig: one AC bay with a transfer switch, one DC bay with a bank no switch cuts off.

use baywalk_domain::coded::Coded;
use baywalk_domain::ids::{BayId, DeviceId, PointId, RigId, SourceId, ToolId};
use baywalk_domain::rig::{
    Bay, Book, Code, Conductor, ConductorSet, Device, DeviceKind, Drive, DriveKind, Fastening,
    FasteningKind, Feed, Isolation, LookKind, MakerTorque, Material, Opening, Point, PointKind,
    Presence, Recheck, Rig, RigKind, ServiceKind, SetSystem, Side, Source, SourceKind, Station,
    Strands, SupplyKind, Terminal, Tool, ToolKind, TorqueBasis, Wire, WireSize, YearlyRule,
};
use baywalk_domain::units::{Stated, TorqueUnit, VoltageUnit};
use uuid::Uuid;

pub(crate) fn id(n: u128) -> Uuid {
    Uuid::from_u128(n)
}

pub(crate) const RIG: u128 = 1;
pub(crate) const SHORE: u128 = 11;
pub(crate) const SOLAR: u128 = 12;
pub(crate) const BANK: u128 = 13;
pub(crate) const AC_BAY: u128 = 21;
pub(crate) const DC_BAY: u128 = 22;
pub(crate) const SWITCH: u128 = 31;
pub(crate) const BATTERY: u128 = 32;
pub(crate) const LINE: u128 = 41;
pub(crate) const NEUTRAL: u128 = 42;
pub(crate) const POST: u128 = 43;
pub(crate) const SMELL: u128 = 44;
pub(crate) const CLAMP: u128 = 45;
pub(crate) const DRIVER: u128 = 51;

pub(crate) fn code(text: &str) -> Code {
    Code::parse(text).unwrap()
}

pub(crate) fn torque(text: &str) -> Stated<TorqueUnit> {
    Stated::parse_pair(text).unwrap()
}

pub(crate) fn volts(text: &str) -> Stated<VoltageUnit> {
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
        opens: None,
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
                from: Vec::new(),
            })
            .collect(),
        unswitched: unswitched.iter().map(|word| code(word)).collect(),
        retired: false,
    }
}

pub(crate) fn screw(set: &str, conductor: Conductor, label: Option<&str>) -> Terminal {
    let mut fastening = Fastening::of(FasteningKind::PressureScrew);
    fastening.drives = vec![Drive::unsized_of(DriveKind::Slotted)];
    Terminal {
        set: Some(set.to_owned()),
        conductor: Some(conductor),
        wire: Wire {
            size: Some(WireSize::Awg(6)),
            material: Material::Copper,
            strands: Strands::Stranded,
        },
        maker: label.map(|label| MakerTorque {
            torque: torque(label),
            basis: TorqueBasis::Label,
            source: "label inside the cover".to_owned(),
            recheck: Recheck::Unsaid,
        }),
        ..Terminal::of(fastening)
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
        priority: None,
        note: String::new(),
        retired: false,
    }
}

/// One AC bay with a transfer switch, one DC bay with a 12 V bank that no switch cuts off.
pub(crate) fn book() -> Book {
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

/// The same rig with its wiring noted instead of what feeds its bays.
pub(crate) fn wired_book() -> Book {
    let mut book = book();
    let feed = |text: &str| Feed::parse(text).unwrap();
    for device in &mut book.devices {
        let from = match device.code.as_str() {
            "ATS" => vec![feed("S1")],
            _ => vec![feed("S2"), feed("S3")],
        };
        for set in &mut device.sets {
            set.from.clone_from(&from);
        }
        device.unswitched.clear();
    }
    for bay in &mut book.bays {
        bay.fed_by.clear();
    }
    for source in book
        .sources
        .iter_mut()
        .filter(|source| source.code.as_str() == "S2")
    {
        source.opens = Some(Opening::parse("BAT/bank").unwrap());
    }
    book
}
