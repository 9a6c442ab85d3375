//! The layouts that come with the tool are sound and hold what their class of vehicle has.

use crate::tried::{act, texts};
use baywalk_domain::isolation::Wiring;
use baywalk_domain::rig::{
    Book, DeviceKind, FasteningKind, Isolation, LookKind, PointKind, Presence, SetSystem,
    SourceKind, Terminal,
};
use baywalk_logbook::rigfile::{layouts, write};
use std::collections::HashSet;

fn book(code: &str) -> Book {
    let layout = layouts().iter().find(|layout| layout.code == code).unwrap();
    layout.book(act()).unwrap()
}

fn terminals(book: &Book) -> impl Iterator<Item = &Terminal> {
    book.points.iter().filter_map(|point| point.terminal())
}

#[test]
fn every_layout_reads_without_fault_and_comes_back_equal() {
    for layout in layouts() {
        let book = layout.book(act()).unwrap_or_else(|faults| {
            let told: Vec<String> = faults.iter().map(ToString::to_string).collect();
            panic!("{}:\n{}", layout.code, told.join("\n"))
        });
        let files = write(&book);
        assert_eq!(
            texts(&files.toml, &files.csv).unwrap(),
            book,
            "{}",
            layout.code
        );
    }
}

#[test]
fn the_sample_motorhome_is_of_real_size() {
    let book = book("sample-motorhome");
    assert!(book.bays.len() >= 9);
    assert!(book.points.len() >= 120);
    let kinds: HashSet<DeviceKind> = book.devices.iter().map(|device| device.kind).collect();
    for kind in [
        DeviceKind::Inlet,
        DeviceKind::SurgeDevice,
        DeviceKind::TransferSwitch,
        DeviceKind::AcPanel,
        DeviceKind::DcPanel,
        DeviceKind::Inverter,
        DeviceKind::BatteryBank,
        DeviceKind::Battery,
        DeviceKind::FuseBlock,
        DeviceKind::Shunt,
        DeviceKind::Busbar,
        DeviceKind::SolarController,
        DeviceKind::Disconnect,
        DeviceKind::HydraulicPump,
        DeviceKind::Actuator,
        DeviceKind::ControlBoard,
        DeviceKind::Converter,
        DeviceKind::Generator,
        DeviceKind::Outlet,
        DeviceKind::GroundBond,
        DeviceKind::DcLink,
        DeviceKind::Detector,
        DeviceKind::WaterPump,
    ] {
        assert!(kinds.contains(&kind), "{kind:?}");
    }
}

#[test]
fn the_sample_motorhome_has_every_kind_of_source_answered() {
    let book = book("sample-motorhome");
    let kinds: HashSet<SourceKind> = book.sources.iter().map(|source| source.kind).collect();
    assert_eq!(kinds.len(), 9);
    let have = book.sources.iter().filter(|s| s.presence == Presence::Have);
    assert!(have.clone().count() >= 8);
    for source in have {
        assert!(
            source.highest.is_some() && !source.how.is_empty(),
            "{}",
            source.code
        );
    }
}

#[test]
fn the_transfer_switch_is_reached_by_shore_generator_and_portable_units_alone() {
    let book = book("sample-motorhome");
    let switch = book
        .devices
        .iter()
        .find(|device| device.code.as_str() == "FTS")
        .unwrap();
    assert_eq!(switch.sets.len(), 3);
    assert_eq!(
        book.points
            .iter()
            .filter(|point| point.device == switch.id)
            .count(),
        14
    );
    let feeds = Wiring::of(&book).feeding().bay(switch.bay).into_iter();
    let kinds: Vec<SourceKind> = feeds.map(|id| book.source(id).unwrap().kind).collect();
    assert_eq!(
        kinds,
        [
            SourceKind::Shore,
            SourceKind::Generator,
            SourceKind::Portable
        ]
    );
}

#[test]
fn the_sample_motorhome_offers_each_way_of_checking() {
    let book = book("sample-motorhome");
    let held: HashSet<FasteningKind> = terminals(&book).map(|t| t.fastening.kind).collect();
    assert!(held.len() >= 18, "{held:?}");
    let with_figure = terminals(&book).filter(|t| t.maker.is_some()).count();
    assert!(with_figure >= 40 && terminals(&book).count() - with_figure >= 60);
    assert!(
        terminals(&book).any(|t| t.landed > t.allowed),
        "one landed too many"
    );
    let looks: HashSet<LookKind> = book
        .points
        .iter()
        .filter_map(|point| match point.kind {
            PointKind::Look(look) => Some(look),
            PointKind::Terminal(_) => None,
        })
        .collect();
    assert_eq!(looks.len(), 7);
}

#[test]
fn every_set_of_a_layout_is_wired_and_something_feeds_every_bay_with_a_point() {
    for layout in layouts() {
        let book = layout.book(act()).unwrap();
        let reach = Wiring::of(&book).feeding();
        for device in &book.devices {
            for set in device
                .sets
                .iter()
                .filter(|set| set.system != SetSystem::Bond)
            {
                let of = format!("{} {}/{}", layout.code, device.code, set.name);
                assert!(!set.from.is_empty(), "{of} is not wired");
                assert!(
                    !reach.set(device.id, &set.name).is_empty(),
                    "{of} is fed by nothing"
                );
            }
        }
        for bay in &book.bays {
            let of = format!("{} {}", layout.code, bay.code);
            assert!(!reach.bay(bay.id).is_empty(), "{of}");
            assert!(!book.points_of(bay.id).is_empty(), "{of}");
        }
    }
}

#[test]
fn what_stays_live_in_the_sample_is_the_posts_the_array_sides_and_nothing_else() {
    let book = book("sample-motorhome");
    let staying = Wiring::of(&book).staying();
    let mut live: Vec<String> = book
        .devices
        .iter()
        .flat_map(|device| device.sets.iter().map(move |set| (device, set)))
        .filter(|(device, set)| !staying.set(device.id, &set.name).is_empty())
        .map(|(device, set)| format!("{}/{}", device.code, set.name))
        .collect();
    live.sort();
    let expected = [
        "ABT/posts",
        "DJB/array one",
        "DJB/array two",
        "EBB/posts",
        "EPV/array one",
        "EPV/array two",
    ];
    assert_eq!(live, expected);
}

#[test]
fn a_switch_that_opens_alone_leaves_what_is_wired_around_it() {
    let mut book = book("sample-motorhome");
    for source in &mut book.sources {
        if source.code.as_str() == "S8" {
            source.isolation = Isolation::Switch;
        }
    }
    let staying = Wiring::of(&book).staying();
    let bank = book
        .sources
        .iter()
        .find(|source| source.code.as_str() == "S8")
        .unwrap()
        .id;
    let around: Vec<String> = staying
        .sets_of(bank)
        .into_iter()
        .map(|(device, set)| format!("{}/{set}", book.device(device).unwrap().code))
        .collect();
    for wired in [
        "JLP/supply",
        "CGN/start",
        "EC1/battery",
        "EC2/battery",
        "EDS/bank",
    ] {
        assert!(
            around.iter().any(|name| name == wired),
            "{wired}: {around:?}"
        );
    }
    assert!(
        !around
            .iter()
            .any(|name| name == "EBP/house" || name == "LWP/supply")
    );
}
#[test]
fn points_of_circuits_belong_to_a_set_that_is_proved_dead() {
    for layout in layouts() {
        let book = layout.book(act()).unwrap();
        for point in &book.points {
            let free = point
                .terminal()
                .is_some_and(|terminal| terminal.set.is_none());
            assert!(!free, "{} {}", layout.code, point.code);
        }
    }
}

#[test]
fn point_codes_begin_with_the_code_of_their_bay() {
    for layout in layouts() {
        let book = layout.book(act()).unwrap();
        for point in &book.points {
            let bay = book.bay(book.bay_of(point).unwrap()).unwrap();
            assert!(
                point.code.as_str().starts_with(bay.code.as_str()),
                "{}",
                point.code
            );
        }
        let order: Vec<&str> = book
            .bays_in_order()
            .iter()
            .map(|bay| bay.code.as_str())
            .collect();
        assert!(
            order.is_sorted(),
            "{}: nose to tail, {order:?}",
            layout.code
        );
    }
}

#[test]
fn the_small_ones_are_small_and_starters_claim_no_torque() {
    let trailer = book("sample-trailer");
    assert_eq!(trailer.bays.len(), 6);
    assert!((35..=50).contains(&trailer.points.len()));
    for layout in layouts()
        .iter()
        .filter(|layout| layout.code.starts_with("starter"))
    {
        let book = layout.book(act()).unwrap();
        assert!(terminals(&book).all(|t| t.maker.is_none() && t.current.is_none()));
        assert!(book.sources.iter().any(|s| s.presence == Presence::NotSure));
        assert!(book.tools.is_empty());
    }
}
