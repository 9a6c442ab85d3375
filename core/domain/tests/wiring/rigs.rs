//! Random rigs: a few sources, bays and devices, their sets wired at random or not at all.

use baywalk_domain::coded::Coded;
use baywalk_domain::ids::{BayId, DeviceId, RigId, SourceId};
use baywalk_domain::rig::{
    Bay, Book, Code, ConductorSet, Device, DeviceKind, Feed, Isolation, Opening, Presence, Rig,
    RigKind, ServiceKind, SetSystem, Side, Source, SourceKind, Station, SupplyKind, YearlyRule,
};
use proptest::collection::vec;
use proptest::prelude::*;
use uuid::Uuid;

const SETS: usize = 2;

fn code(letter: char, n: usize) -> Code {
    Code::parse(&format!("{letter}{n}")).unwrap()
}

fn id(n: usize) -> Uuid {
    Uuid::from_u128(u128::try_from(n).unwrap() + 1)
}

fn pick<T: Coded>(n: u8) -> T {
    T::ALL[usize::from(n) % T::ALL.len()]
}

fn source(n: usize, (kind, isolation, opens): (u8, u8, u8)) -> Source {
    let kind: SourceKind = pick(kind);
    let opens = (opens % 3 == 0).then(|| Opening {
        device: code('D', usize::from(opens) % 4),
        set: (opens % 2 == 0).then(|| "0".to_owned()),
    });
    Source {
        id: SourceId::new(id(n)),
        code: code('S', n),
        name: "source".to_owned(),
        kind,
        presence: Presence::Have,
        supply: if kind.is_lasting() {
            SupplyKind::Dc
        } else {
            SupplyKind::Ac
        },
        highest: None,
        isolation: pick::<Isolation>(isolation),
        opens,
        how: String::new(),
        wait: None,
        retired: false,
    }
}

fn device(n: usize, kind: u8, wires: &[Vec<u8>], sources: usize, devices: usize) -> Device {
    let feed = |wire: &u8| {
        let at = usize::from(*wire) % (sources + devices * SETS);
        match at.checked_sub(sources) {
            None => Feed::Source(code('S', at)),
            Some(set) => Feed::Set {
                device: code('D', set / SETS),
                set: (set % SETS).to_string(),
            },
        }
    };
    let set = |(at, wires): (usize, &Vec<u8>)| ConductorSet {
        name: at.to_string(),
        system: SetSystem::Dc,
        from: wires.iter().map(feed).collect(),
    };
    Device {
        id: DeviceId::new(id(n)),
        code: code('D', n),
        bay: BayId::new(id(n % 2)),
        name: "device".to_owned(),
        kind: pick::<DeviceKind>(kind),
        sets: wires.iter().enumerate().map(set).collect(),
        unswitched: Vec::new(),
        retired: false,
    }
}

fn bay(n: usize) -> Bay {
    Bay {
        id: BayId::new(id(n)),
        code: code('B', n),
        name: "bay".to_owned(),
        place: String::new(),
        station: Station::new(0).unwrap(),
        side: Side::Left,
        open_minutes: 1,
        close_minutes: 1,
        fed_by: Vec::new(),
        keep_out: String::new(),
        retired: false,
    }
}

/// A rig of two bays, with up to five sources and six devices.
pub(crate) fn rig() -> impl Strategy<Value = Book> {
    let wires = vec(vec(any::<u8>(), 0..3), SETS);
    let devices = vec((any::<u8>(), wires), 1..6);
    (vec(any::<(u8, u8, u8)>(), 1..5), devices).prop_map(|(sources, devices)| {
        let rule = YearlyRule {
            months: 12,
            distance: None,
        };
        let mut book = Book::new(Rig {
            id: RigId::new(id(0)),
            name: "Wren".to_owned(),
            kind: RigKind::Motorhome,
            service: ServiceKind::None,
            rule,
            note: String::new(),
        });
        let (many, count) = (sources.len(), devices.len());
        book.sources = sources
            .into_iter()
            .enumerate()
            .map(|(n, of)| source(n, of))
            .collect();
        book.bays = (0..2).map(bay).collect();
        let made = devices.iter().enumerate();
        book.devices = made
            .map(|(n, (kind, wires))| device(n, *kind, wires, many, count))
            .collect();
        book
    })
}
