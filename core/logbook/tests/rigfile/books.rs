//! Any book that holds together.

use crate::tried::act;
use crate::values::{name, one, stated, terminal, text};
use baywalk_domain::ids::{BayId, DeviceId, PointId, RigId, SourceId, ToolId};
use baywalk_domain::rig::{
    Bay, Book, Code, ConductorSet, Device, Feed, Opening, Point, PointKind, Priority, Rig, Source,
    Station, Tool, Wait, YearlyRule,
};
use baywalk_domain::units::Stated;
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::{Index, select};
use proptest::strategy::Union;

type Kind = (PointKind, Option<(Index, Index)>);

fn kind() -> Union<BoxedStrategy<Kind>> {
    let look = one().prop_map(|look| (PointKind::Look(look), None)).boxed();
    let held = terminal().prop_map(|(t, place)| (PointKind::Terminal(Box::new(t)), place));
    Union::new([look, held.boxed()])
}

fn sources() -> impl Strategy<Value = Vec<Source>> {
    let kinds = (one(), one(), one(), one());
    let wait = (any::<u16>(), name()).prop_map(|(minutes, basis)| Wait { minutes, basis });
    let facts = (
        option::of(stated()),
        text(),
        option::of(wait),
        any::<bool>(),
    );
    let source = (name(), kinds, facts);
    vec(source, 0..4).prop_map(|list| {
        let numbered = list.into_iter().enumerate();
        let made = numbered.map(|(number, (name, kinds, (highest, how, wait, retired)))| {
            let code = Code::parse(&format!("S{number}")).unwrap();
            Source {
                id: SourceId::made_by(act(), &format!("source:{code}")),
                code,
                name,
                kind: kinds.0,
                presence: kinds.1,
                supply: kinds.2,
                highest,
                isolation: kinds.3,
                opens: None,
                how,
                wait,
                retired,
            }
        });
        made.collect()
    })
}

fn bays(sources: Vec<Source>) -> impl Strategy<Value = Vec<Bay>> {
    let feeds = proptest::sample::subsequence(sources.clone(), 0..=sources.len());
    let place = (0_u16..=1000, one(), any::<u16>(), any::<u16>());
    vec((name(), text(), place, feeds, text(), any::<bool>()), 1..4).prop_map(|list| {
        let numbered = list.into_iter().enumerate();
        let made = numbered.map(
            |(number, (name, place, (station, side, open, close), feeds, keep_out, retired))| {
                let code = Code::parse(&format!("B{number}")).unwrap();
                Bay {
                    id: BayId::made_by(act(), &format!("bay:{code}")),
                    code,
                    name,
                    place,
                    station: Station::new(station).unwrap(),
                    side,
                    open_minutes: open,
                    close_minutes: close,
                    fed_by: feeds.iter().map(|source| source.id).collect(),
                    keep_out,
                    retired,
                }
            },
        );
        made.collect()
    })
}

fn devices(sources: Vec<Source>, bays: Vec<Bay>) -> impl Strategy<Value = Vec<Device>> {
    let posts = proptest::sample::subsequence(sources.clone(), 0..=sources.len());
    let sets = vec((name(), one()), 0..3);
    vec(
        (name(), select(bays), one(), sets, posts, any::<bool>()),
        1..4,
    )
    .prop_map(|list| {
        let numbered = list.into_iter().enumerate();
        let made = numbered.map(|(number, (name, bay, kind, sets, posts, retired))| {
            let code = Code::parse(&format!("D{number}")).unwrap();
            let named = sets.into_iter().enumerate();
            let set = |(number, (name, system))| ConductorSet {
                name: format!("{name}{number}"),
                system,
                from: Vec::new(),
            };
            Device {
                id: DeviceId::made_by(act(), &format!("device:{code}")),
                code,
                bay: bay.id,
                name,
                kind,
                sets: named.map(set).collect(),
                unswitched: posts.into_iter().map(|source| source.code).collect(),
                retired,
            }
        });
        made.collect()
    })
}

/// Puts a terminal on a conductor of its device, where the device has one.
fn landed(kind: Kind, device: &Device) -> PointKind {
    let (PointKind::Terminal(mut terminal), Some((set, conductor))) = kind.clone() else {
        return kind.0;
    };
    if !device.sets.is_empty() {
        let set = set.get(&device.sets);
        let conductors = set.system.conductors();
        if !conductors.is_empty() {
            terminal.set = Some(set.name.clone());
            terminal.conductor = Some(*conductor.get(conductors));
        }
    }
    PointKind::Terminal(terminal)
}

fn points(devices: Vec<Device>) -> impl Strategy<Value = Vec<Point>> {
    vec(
        (
            name(),
            text(),
            select(devices),
            kind(),
            text(),
            any::<(bool, bool)>(),
        ),
        0..6,
    )
    .prop_map(|list| {
        let numbered = list.into_iter().enumerate();
        let made = numbered.map(
            |(number, (name, place, device, kind, note, (priority, retired)))| {
                let code = Code::parse(&format!("P{number}")).unwrap();
                Point {
                    id: PointId::made_by(act(), &format!("point:{code}")),
                    code,
                    device: device.id,
                    name,
                    place,
                    kind: landed(kind, &device),
                    priority: priority.then_some(Priority::Raise),
                    note,
                    retired,
                }
            },
        );
        made.collect()
    })
}

fn tools() -> impl Strategy<Value = Vec<Tool>> {
    let day = (1970_i32..2100, 1_u32..366)
        .prop_map(|(year, day)| chrono::NaiveDate::from_yo_opt(year, day).unwrap());
    let facts = (option::of(day), any::<u32>(), any::<bool>());
    let scale = (one(), 1_u16..200, 0_u16..200, 1_u8..20);
    vec((name(), one(), scale, facts), 0..3).prop_map(|list| {
        let numbered = list.into_iter().enumerate();
        let made = numbered.map(
            |(number, (name, kind, (unit, least, more, step), (calibrated, cycles, retired)))| {
                let stated = |number: u16| Stated::parse(&number.to_string(), unit).unwrap();
                let code = Code::parse(&format!("T{number}")).unwrap();
                Tool {
                    id: ToolId::made_by(act(), &format!("tool:{code}")),
                    code,
                    name,
                    kind,
                    least: stated(least),
                    most: stated(least + more),
                    step: stated(u16::from(step)),
                    calibrated,
                    cycles,
                    retired,
                }
            },
        );
        made.collect()
    })
}

fn rig() -> impl Strategy<Value = Rig> {
    (
        name(),
        one(),
        one(),
        1_u8..=12,
        option::of(stated()),
        text(),
    )
        .prop_map(|(name, kind, service, months, distance, note)| Rig {
            id: RigId::made_by(act(), "rig"),
            name,
            kind,
            service,
            rule: YearlyRule { months, distance },
            note,
        })
}

/// A book of a few records of every kind.
pub(crate) fn book() -> impl Strategy<Value = Book> {
    let placed = sources().prop_flat_map(|sources| (Just(sources.clone()), bays(sources)));
    let held = placed.prop_flat_map(|(sources, bays)| {
        (
            Just(sources.clone()),
            Just(bays.clone()),
            devices(sources, bays),
        )
    });
    let pointed = held.prop_flat_map(|(sources, bays, devices)| {
        (
            Just(sources),
            Just(bays),
            Just(devices.clone()),
            points(devices),
        )
    });
    let wires = vec(any::<(u8, u8)>(), 0..6);
    (rig(), pointed, tools(), wires).prop_map(
        |(rig, (sources, bays, devices, points), tools, wires)| {
            let book = Book {
                rig,
                sources,
                bays,
                devices,
                points,
                tools,
                bay_photos: Vec::new(),
            };
            wired(book, &wires)
        },
    )
}

/// Wires some sets of a book to its sources and sets, and lets a source open a device.
fn wired(mut book: Book, wires: &[(u8, u8)]) -> Book {
    let sources = book
        .sources
        .iter()
        .map(|source| Feed::Source(source.code.clone()));
    let set = |device: &Device, set: &ConductorSet| Feed::Set {
        device: device.code.clone(),
        set: set.name.clone(),
    };
    let sets = book.devices.iter();
    let sets = sets.flat_map(|device| device.sets.iter().map(move |one| set(device, one)));
    let feeds: Vec<Feed> = sources.chain(sets).collect();
    for (at, to) in wires
        .iter()
        .map(|(at, to)| (usize::from(*at), usize::from(*to)))
    {
        let mut sets: Vec<&mut ConductorSet> = book
            .devices
            .iter_mut()
            .flat_map(|device| &mut device.sets)
            .collect();
        let count = sets.len();
        if let Some(set) = sets.get_mut(at % count.max(1)) {
            set.from.push(feeds[to % feeds.len()].clone());
        }
    }
    let opening = book.devices.first().map(|device| Opening {
        device: device.code.clone(),
        set: device.sets.first().map(|set| set.name.clone()),
    });
    if let Some(source) = book.sources.first_mut() {
        source.opens = opening.filter(|_| wires.len() % 2 == 1);
    }
    book
}
