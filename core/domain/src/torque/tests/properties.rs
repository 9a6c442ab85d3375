//! What holds for every terminal.

use crate::coded::Coded;
use crate::rig::{
    BoltGrade, Drive, DriveKind, Fastening, FasteningKind as K, Landing, Locking, MakerTorque,
    Material, Nut, Recheck, Role, Strands, Terminal, Thread, ThreadState, TorqueBasis, Washer,
    WireSize,
};
use crate::torque::{Action, Basis, FoundBy, Past, Practice, advise};
use crate::units::{Stated, StatedLength, TorqueUnit};
use proptest::prelude::*;

fn any<C: Coded + std::fmt::Debug>() -> impl Strategy<Value = C> {
    proptest::sample::select(C::ALL.to_vec())
}

prop_compose! {
    fn any_drive()(
        kind in any::<DriveKind>(),
        across in proptest::option::of("[1-9]/(4|8|16|32) in"),
        width in proptest::option::of("0\\.0[1-9] in"),
        length in proptest::option::of("[1-9]/32 in"),
    ) -> Drive {
        let read = |text: Option<String>| text.and_then(|text| StatedLength::parse(&text).ok());
        Drive { kind, across: read(across), slot_width: read(width), slot_length: read(length) }
    }
}

prop_compose! {
    fn any_fastening()(
        kind in any::<K>(),
        thread in proptest::option::of(proptest::sample::select(vec![
            "#6-32", "#10-32", "1/4-20", "5/16-18", "3/8-16", "1/2-13", "1/4", "M4", "M8", "M10x1.5",
        ])),
        drives in proptest::collection::vec(any_drive(), 0..3),
        landing in any::<Landing>(),
        nut in any::<Nut>(),
        washer in any::<Washer>(),
        locking in any::<Locking>(),
        grade in proptest::option::of(any::<BoltGrade>()),
        metal_to_metal in proptest::bool::ANY,
    ) -> Fastening {
        let thread = thread.map(|text| Thread::parse(text).unwrap());
        Fastening { kind, thread, drives, landing, nut, washer, locking, grade, metal_to_metal }
    }
}

prop_compose! {
    fn any_maker()(
        number in "[1-9][0-9]{0,1}([.,][0-9]{1,3})?",
        unit in any::<TorqueUnit>(),
        basis in any::<TorqueBasis>(),
        recheck in any::<Recheck>(),
    ) -> MakerTorque {
        let torque = Stated::parse(&number, unit).unwrap();
        MakerTorque { torque, basis, source: "a label".to_owned(), recheck }
    }
}

prop_compose! {
    fn any_terminal()(
        fastening in any_fastening(),
        role in any::<Role>(),
        size in proptest::option::of((-3_i8..=30).prop_map(WireSize::Awg)),
        material in any::<Material>(),
        strands in any::<Strands>(),
        thread_state in any::<ThreadState>(),
        maker in proptest::option::of(any_maker()),
        landed in 0_u8..6,
    ) -> Terminal {
        let mut terminal = Terminal::of(fastening);
        terminal.role = role;
        terminal.wire.size = size;
        terminal.wire.material = material;
        terminal.wire.strands = strands;
        terminal.thread_state = thread_state;
        terminal.maker = maker;
        terminal.landed = landed;
        terminal
    }
}

prop_compose! {
    fn any_past()(
        moved_running in 0_u8..4,
        spoiled in proptest::bool::ANY,
        mark_offset in proptest::bool::ANY,
    ) -> Past {
        Past { moved_running, spoiled, mark_offset }
    }
}

proptest! {
    #[test]
    fn the_advice_holds_together(
        terminal in any_terminal(),
        past in any_past(),
        percent in Practice::LEAST..=Practice::MOST,
    ) {
        let advice = advise(&terminal, past, &Practice::new(percent).unwrap());
        // A figure of the maker always wins, and comes back as it was typed.
        if let (Some(maker), Some(target)) = (&terminal.maker, &advice.target) {
            prop_assert_eq!(&target.torque, &maker.torque);
            prop_assert_eq!(target.torque.text(), maker.torque.text());
            let by_maker = matches!(target.basis, Basis::Maker { .. });
            prop_assert!(by_maker);
        }
        // A check stands only where a torque check is right, and never above the full value.
        prop_assert!(advice.check.is_none() || advice.action == Action::CheckThenSet);
        if let (Some(check), Some(target)) = (&advice.check, &advice.target) {
            prop_assert_eq!(check.unit(), target.torque.unit());
            let share = check.value() / target.torque.value();
            let full = advice.found_by == FoundBy::FullValue;
            let wanted = if full { 1.0 } else { f64::from(percent) / 100.0 };
            prop_assert!((share - wanted).abs() < 1e-12, "{share} {wanted}");
        }
        // A number of a table or a calculation never exceeds what any table gives for the part.
        if let (None, Some(target)) = (&terminal.maker, &advice.target) {

                let torque = target.torque.quantity();
                for other in &advice.others {
                    let standing = match other.basis {
                        Basis::Table { table, .. } => table.table().unwrap().head().standing,
                        _ => continue,
                    };
                    if standing == crate::published::Standing::Default {
                        prop_assert!(torque <= other.torque.quantity());
                    }
                }
                if let Basis::Calculation(bolt) = target.basis {
                    prop_assert!(torque <= bolt.torque);
                }
            }
        // Checking and setting need a figure; asking the maker has none and says what is missing.
        if advice.action == Action::CheckThenSet {
            prop_assert!(advice.target.is_some());
        }
        if advice.action == Action::AskMaker {
            prop_assert!(advice.target.is_none() && !advice.missing.is_empty());
        }
        if past.asks_remake() {
            prop_assert!(matches!(advice.action, Action::Remake | Action::Refer));
        }
    }

    #[test]
    fn a_plastic_body_or_a_post_never_gets_a_number_of_ours(
        mut terminal in any_terminal(),
        past in any_past(),
        post in proptest::bool::ANY,
    ) {
        terminal.maker = None;
        terminal.fastening.kind = if post { K::BatteryPost } else { K::Stud };
        terminal.fastening.metal_to_metal &= post;
        let advice = advise(&terminal, past, &Practice::default());
        prop_assert_eq!(advice.target, None);
        prop_assert_eq!(advice.others, []);
    }
}
