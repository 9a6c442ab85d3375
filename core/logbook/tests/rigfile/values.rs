//! Values of every kind that a record can have.

use baywalk_domain::coded::Coded;
use baywalk_domain::rig::{Drive, Fastening, MakerTorque, Terminal, Thread, Wire, WireSize};
use baywalk_domain::units::{Stated, StatedLength, Unit};
use baywalk_domain::wire::area_mm2;
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::{Index, select};
use std::fmt::Debug;

pub(crate) fn one<T: Coded + Debug>() -> impl Strategy<Value = T> {
    select(T::ALL)
}

/// Texts as people type them, with what TOML and CSV must guard; no blanks around.
pub(crate) fn text() -> impl Strategy<Value = String> {
    "[ -~éñ½\n\t\r\u{7f}\u{85}]{0,16}".prop_map(|text| text.trim().to_owned())
}

pub(crate) fn name() -> impl Strategy<Value = String> {
    text().prop_map(|text| {
        if text.is_empty() {
            "x".to_owned()
        } else {
            text
        }
    })
}

/// A number as typed: point or comma, zeros kept.
pub(crate) fn stated<U: Unit + Debug>() -> impl Strategy<Value = Stated<U>>
where
    U::Quantity: Debug,
{
    let number = select(vec!["45", "4.50", "4,5", "007", "1", "12.0"]);
    (number, one::<U>()).prop_filter_map("a quantity that can be", |(number, unit)| {
        Stated::parse(number, unit).ok()
    })
}

pub(crate) fn length() -> impl Strategy<Value = StatedLength> {
    select(vec!["3/16 in", "0.047 in", "5 mm", "6,5 mm", "1 /4  in"])
        .prop_map(|text| StatedLength::parse(text).unwrap())
}

pub(crate) fn wire_size() -> impl Strategy<Value = WireSize> {
    select(vec!["6 AWG", "4/0 AWG", "250 kcmil", "2.50 mm2", "2,5 mm2"])
        .prop_map(|text| WireSize::parse(text).unwrap())
}

pub(crate) fn thread() -> impl Strategy<Value = Thread> {
    select(vec!["#10-32", "1/4-20", "M6", "M8x1.25", "m4"])
        .prop_map(|text| Thread::parse(text).unwrap())
}

pub(crate) fn drive() -> impl Strategy<Value = Drive> {
    let sizes = (
        option::of(length()),
        option::of(length()),
        option::of(length()),
    );
    (one(), sizes).prop_map(|(kind, (across, slot_width, slot_length))| Drive {
        kind,
        across,
        slot_width,
        slot_length,
    })
}

pub(crate) fn fastening() -> impl Strategy<Value = Fastening> {
    let dress = (one(), one(), one(), one(), option::of(one()), any::<bool>());
    (one(), option::of(thread()), vec(drive(), 0..3), dress).prop_map(
        |(kind, thread, drives, (landing, nut, washer, locking, grade, metal_to_metal))| {
            Fastening {
                kind,
                thread,
                drives,
                landing,
                nut,
                washer,
                locking,
                grade,
                metal_to_metal,
            }
        },
    )
}

pub(crate) fn maker() -> impl Strategy<Value = MakerTorque> {
    (stated(), one(), text(), one()).prop_map(|(torque, basis, source, recheck)| MakerTorque {
        torque,
        basis,
        source,
        recheck,
    })
}

/// A terminal, and which set and conductor of its device it takes, if any.
pub(crate) fn terminal() -> impl Strategy<Value = (Terminal, Option<(Index, Index)>)> {
    let wire = (option::of(wire_size()), one(), one());
    let wire = wire.prop_map(|(size, material, strands)| Wire {
        size,
        material,
        strands,
    });
    let counts = (any::<u8>(), 1_u8..);
    let facts = (
        option::of((wire_size(), wire_size())),
        option::of(stated()),
        one(),
    );
    let place = option::of((any::<Index>(), any::<Index>()));
    (
        one(),
        fastening(),
        wire,
        counts,
        facts,
        option::of(maker()),
        place,
    )
        .prop_map(
            |(
                role,
                fastening,
                wire,
                (landed, allowed),
                (range, current, thread_state),
                maker,
                place,
            )| {
                let range = range.map(in_order);
                let maker = maker.filter(|_| fastening.kind.takes_torque());
                let terminal = Terminal {
                    set: None,
                    conductor: None,
                    role,
                    fastening,
                    wire,
                    landed,
                    allowed,
                    range,
                    current,
                    thread_state,
                    maker,
                };
                (terminal, place)
            },
        )
}

/// A range of sizes begins with the thinner one.
fn in_order((one, other): (WireSize, WireSize)) -> (WireSize, WireSize) {
    if area_mm2(&one) > area_mm2(&other) {
        (other, one)
    } else {
        (one, other)
    }
}
