//! What the advice must hold for every terminal, and the way of each kind of fastening.

use super::{
    Action, Advice, Basis, BasisKind, Caution, FoundBy, LeftBy, Missing, Past, Practice, advise,
};
use crate::coded::Coded;
use crate::rig::{
    BoltGrade, Drive, DriveKind, Fastening, FasteningKind as K, Landing, Locking, MakerTorque,
    Material, Nut, Recheck, Role, Strands, Terminal, Thread, ThreadState, TorqueBasis, Washer,
    WireSize,
};
use crate::units::{Stated, StatedLength, TorqueUnit};
use proptest::prelude::*;

fn of(kind: K) -> Terminal {
    Terminal::of(Fastening::of(kind))
}

fn socket(text: &str) -> Drive {
    Drive {
        across: Some(StatedLength::parse(text).unwrap()),
        ..Drive::unsized_of(DriveKind::Allen)
    }
}

fn lug_screw() -> Terminal {
    let mut terminal = of(K::PressureScrew);
    terminal.fastening.drives = vec![socket("5/32 in")];
    terminal.wire.size = Some(WireSize::Awg(6));
    terminal
}

fn stud(thread: &str, grade: BoltGrade) -> Terminal {
    let mut terminal = of(K::Stud);
    terminal.fastening.thread = Some(Thread::parse(thread).unwrap());
    terminal.fastening.grade = Some(grade);
    terminal.fastening.landing = Landing::Ring;
    terminal.fastening.nut = Nut::Plain;
    terminal.fastening.metal_to_metal = true;
    terminal
}

fn with_maker(mut terminal: Terminal, figure: &str) -> Terminal {
    terminal.maker = Some(MakerTorque {
        torque: Stated::parse_pair(figure).unwrap(),
        basis: TorqueBasis::Label,
        source: "label in the cover".to_owned(),
        recheck: Recheck::Unsaid,
    });
    terminal
}

fn plain(terminal: &Terminal) -> Advice {
    advise(terminal, Past::default(), &Practice::default())
}

fn way(advice: &Advice) -> (Action, FoundBy, LeftBy) {
    (advice.action, advice.found_by, advice.left_by)
}

#[test]
fn a_kind_without_figure_gets_no_number_but_its_own_way() {
    use Action as A;
    let ways = [
        (
            K::PressureScrew,
            A::AskMaker,
            FoundBy::Tug,
            LeftBy::OutOfService,
        ),
        (
            K::SplitBolt,
            A::AskMaker,
            FoundBy::Tug,
            LeftBy::OutOfService,
        ),
        (
            K::DeviceScrew,
            A::AskMaker,
            FoundBy::Tug,
            LeftBy::OutOfService,
        ),
        (K::BoardScrew, A::AskMaker, FoundBy::Look, LeftBy::Refer),
        (
            K::BlockScrew,
            A::AskMaker,
            FoundBy::Tug,
            LeftBy::OutOfService,
        ),
        (
            K::Stud,
            A::AskMaker,
            FoundBy::LugByFinger,
            LeftBy::OutOfService,
        ),
        (
            K::Bolt,
            A::AskMaker,
            FoundBy::LugByFinger,
            LeftBy::OutOfService,
        ),
        (
            K::BatteryPost,
            A::AskMaker,
            FoundBy::TwistClamp,
            LeftBy::OutOfService,
        ),
        (
            K::WingNut,
            A::AskMaker,
            FoundBy::LugByFinger,
            LeftBy::OutOfService,
        ),
        (K::ShearBolt, A::LeaveAlone, FoundBy::Look, LeftBy::Replace),
        (
            K::PushIn,
            A::LookAndTug,
            FoundBy::PullEach,
            LeftBy::StripAnew,
        ),
        (
            K::SpringClamp,
            A::LookAndTug,
            FoundBy::PullEach,
            LeftBy::StripAnew,
        ),
        (
            K::Lever,
            A::LookAndTug,
            FoundBy::PullEach,
            LeftBy::StripAnew,
        ),
        (
            K::Blade,
            A::LookAndTug,
            FoundBy::SeatAndHeat,
            LeftBy::Replace,
        ),
        (
            K::PlugOnBreaker,
            A::LookAndTug,
            FoundBy::SeatAndHeat,
            LeftBy::Replace,
        ),
        (
            K::BoltOnBreaker,
            A::AskMaker,
            FoundBy::LugByFinger,
            LeftBy::OutOfService,
        ),
        (
            K::Plug,
            A::LookAndTug,
            FoundBy::SeatAndHeat,
            LeftBy::Replace,
        ),
        (
            K::WireConnector,
            A::LookAndTug,
            FoundBy::Tug,
            LeftBy::RemakeSplice,
        ),
        (K::Crimp, A::LookAndTug, FoundBy::Tug, LeftBy::RemakeSplice),
        (
            K::Piercing,
            A::LookAndTug,
            FoundBy::Tug,
            LeftBy::RemakeSplice,
        ),
        (
            K::ChassisScrew,
            A::LookAndTug,
            FoundBy::Tug,
            LeftBy::RemakeChassis,
        ),
        (K::Sealed, A::Refer, FoundBy::Look, LeftBy::Refer),
        (K::CellLink, A::Refer, FoundBy::Look, LeftBy::Refer),
        (K::SenseLead, A::Refer, FoundBy::Look, LeftBy::Refer),
    ];
    assert_eq!(ways.len(), K::ALL.len());
    for (kind, action, found_by, left_by) in ways {
        let advice = plain(&of(kind));
        assert_eq!(way(&advice), (action, found_by, left_by), "{kind:?}");
        assert_eq!((advice.target, advice.check), (None, None), "{kind:?}");
        let asks = advice.missing.contains(&Missing::MakerTorque);
        assert_eq!(asks, kind.takes_torque(), "{kind:?}");
    }
}

#[test]
fn a_listed_connector_takes_the_table() {
    let advice = plain(&lug_screw());
    assert_eq!(
        way(&advice),
        (Action::CheckThenSet, FoundBy::CheckScrew, LeftBy::SetOnce)
    );
    assert_eq!(advice.target.unwrap().torque.pair(), "100 lbf.in");
    assert_eq!(advice.check.unwrap().pair(), "80 lbf.in");
    assert_eq!(advice.missing, []);
}

#[test]
fn no_generic_table_speaks_of_what_it_does_not_cover() {
    let board = |kind| {
        let mut terminal = lug_screw();
        terminal.fastening.kind = kind;
        terminal
    };
    let mut control = lug_screw();
    control.role = Role::Control;
    let mut metric = lug_screw();
    metric.fastening.thread = Some(Thread::parse("M6").unwrap());
    let mut fine = lug_screw();
    fine.wire.strands = Strands::Fine;
    let mut ring = lug_screw();
    ring.fastening.landing = Landing::Ring;
    for terminal in [
        board(K::BoardScrew),
        board(K::DeviceScrew),
        board(K::BlockScrew),
        board(K::BatteryPost),
        board(K::BoltOnBreaker),
        board(K::ChassisScrew),
        control,
        metric,
        fine,
        ring,
    ] {
        let advice = plain(&terminal);
        assert_eq!(advice.target, None, "{terminal:?}");
        assert!(advice.missing.contains(&Missing::MakerTorque));
        assert!(advice.cautions.contains(&Caution::OutOfServiceIfLoose));
    }
}

#[test]
fn a_metric_block_screw_gets_type_test_values_to_compare_alone() {
    let mut terminal = of(K::BlockScrew);
    terminal.fastening.thread = Some(Thread::parse("M4").unwrap());
    let advice = plain(&terminal);
    assert_eq!((advice.action, &advice.target), (Action::AskMaker, &None));
    let others: Vec<_> = advice.others.iter().map(|o| o.torque.pair()).collect();
    assert_eq!(others, ["1.2 N.m", "1.2 N.m"]);
}

#[test]
fn no_bolt_chart_for_a_post_or_a_plastic_body() {
    let mut post = stud("5/16-18", BoltGrade::Sae5);
    post.fastening.kind = K::BatteryPost;
    let mut plastic = stud("5/16-18", BoltGrade::Sae5);
    plastic.fastening.metal_to_metal = false;
    for terminal in [post, plastic] {
        let advice = plain(&terminal);
        assert_eq!((advice.action, advice.target), (Action::AskMaker, None));
        assert_eq!(advice.others, []);
    }
}

#[test]
fn studs_take_the_table_of_their_grade_then_the_calculation() {
    let steel = plain(&stud("3/8-16", BoltGrade::Sae5)).target.unwrap();
    assert_eq!(steel.torque.pair(), "20 lbf.ft");
    let bronze = plain(&stud("3/4-10", BoltGrade::SiliconBronze));
    assert_eq!(bronze.target.unwrap().torque.pair(), "70 lbf.ft");
    assert!(bronze.cautions.contains(&Caution::TablesDiffer));
    assert_eq!(bronze.others.len(), 1);
    let metric = plain(&stud("M8", BoltGrade::Iso88));
    let target = metric.target.unwrap();
    assert_eq!(target.torque.pair(), "25.4 N.m");
    assert_eq!(target.basis.kind(), BasisKind::Calculation);
    assert!(metric.cautions.contains(&Caution::Calculated));
    assert_eq!(metric.missing, [Missing::MakerTorque]);
    for grade in [BoltGrade::Brass, BoltGrade::Copper, BoltGrade::A270] {
        assert_eq!(plain(&stud("M8", grade)).action, Action::AskMaker);
    }
}

#[test]
fn what_a_stud_lacks_is_named() {
    let mut unknown = stud("1/4", BoltGrade::Sae2);
    assert_eq!(
        plain(&unknown).missing,
        [Missing::MakerTorque, Missing::Pitch]
    );
    unknown.fastening.thread = None;
    unknown.fastening.grade = None;
    let missing = plain(&unknown).missing;
    assert_eq!(
        missing,
        [Missing::MakerTorque, Missing::Thread, Missing::Grade]
    );
}

#[test]
fn what_a_screw_lacks_is_named() {
    let mut slot = of(K::PressureScrew);
    assert!(plain(&slot).missing.contains(&Missing::Drive));
    slot.fastening.drives = vec![Drive::unsized_of(DriveKind::Slotted)];
    let missing = plain(&slot).missing;
    for lacks in [
        Missing::Thread,
        Missing::SlotWidth,
        Missing::SlotLength,
        Missing::WireSize,
    ] {
        assert!(missing.contains(&lacks), "{lacks:?}");
    }
    slot.fastening.drives = vec![Drive::unsized_of(DriveKind::Star)];
    assert!(plain(&slot).missing.contains(&Missing::DriveInTable));
    slot.fastening.drives = vec![Drive::unsized_of(DriveKind::Hex)];
    slot.wire.size = Some(WireSize::Kcmil(750));
    assert!(plain(&slot).missing.contains(&Missing::SizeInTable));
    slot.fastening.drives = vec![socket("5 mm")];
    assert!(plain(&slot).missing.contains(&Missing::DriveInTable));
}

#[test]
fn of_several_drives_the_one_in_use_decides() {
    let mut both = lug_screw();
    both.fastening
        .drives
        .push(Drive::unsized_of(DriveKind::Hex));
    let by_socket = plain(&both);
    both.fastening.drives.reverse();
    let by_hexagon = plain(&both);
    assert_eq!(by_socket.target.unwrap().torque.pair(), "100 lbf.in");
    assert_eq!(by_hexagon.target.unwrap().torque.pair(), "110 lbf.in");
    assert!(by_hexagon.cautions.contains(&Caution::CombinationDrive));
}

#[test]
fn the_maker_decides_about_checking_again() {
    let mut terminal = with_maker(lug_screw(), "50 lbf.in");
    terminal.maker.as_mut().unwrap().recheck = Recheck::FullValue;
    let full = plain(&terminal);
    assert_eq!(full.found_by, FoundBy::FullValue);
    assert_eq!(full.check.unwrap().pair(), "50 lbf.in");
    terminal.maker.as_mut().unwrap().recheck = Recheck::Never;
    let never = plain(&terminal);
    assert_eq!((never.action, never.check), (Action::LeaveAlone, None));
}

#[test]
fn greased_threads_void_the_figure() {
    let mut terminal = with_maker(lug_screw(), "50 lbf.in");
    terminal.thread_state = ThreadState::Greased;
    let advice = plain(&terminal);
    assert_eq!((advice.action, advice.target), (Action::AskMaker, None));
    assert_eq!(advice.missing, [Missing::DryThread]);
}

#[test]
fn what_tightening_harms_is_not_checked_by_torque() {
    let base = || with_maker(lug_screw(), "50 lbf.in");
    let mut aluminium = base();
    aluminium.wire.material = Material::Aluminium;
    let mut locked = base();
    locked.fastening.locking = Locking::ThreadLocker;
    let mut nylon = base();
    nylon.fastening.nut = Nut::Nylon;
    let mut marked = base();
    marked.fastening.locking = Locking::WitnessMark;
    for (terminal, action, found_by) in [
        (&aluminium, Action::LeaveAlone, FoundBy::Look),
        (&locked, Action::LookAndTug, FoundBy::LugByFinger),
        (&nylon, Action::LookAndTug, FoundBy::LugByFinger),
        (&marked, Action::LookAndTug, FoundBy::Mark),
    ] {
        let advice = plain(terminal);
        assert_eq!((advice.action, advice.found_by), (action, found_by));
        assert_eq!(advice.check, None);
    }
    let off = Past {
        mark_offset: true,
        ..Past::default()
    };
    let advice = advise(&marked, off, &Practice::default());
    assert_eq!(advice.action, Action::CheckThenSet);
    assert!(advice.cautions.contains(&Caution::MarkShowsRotation));
}

#[test]
fn what_moved_twice_or_is_spoiled_is_made_anew() {
    let past = |moved_running, spoiled| Past {
        moved_running,
        spoiled,
        mark_offset: false,
    };
    for past in [past(2, false), past(0, true)] {
        let advice = advise(&lug_screw(), past, &Practice::default());
        assert_eq!((advice.action, advice.check), (Action::Remake, None));
        assert_eq!(advice.left_by, LeftBy::CutBack);
        let sealed = advise(&of(K::Sealed), past, &Practice::default());
        assert_eq!(sealed.action, Action::Refer);
    }
    let once = advise(&lug_screw(), past(1, false), &Practice::default());
    assert_eq!(once.action, Action::CheckThenSet);
    assert!(once.cautions.contains(&Caution::MovedBefore));
}

#[test]
fn doubtful_labels_are_questioned() {
    let feet = plain(&with_maker(lug_screw(), "45 lbf.ft"));
    assert!(feet.cautions.contains(&Caution::FootPounds));
    assert!(feet.cautions.contains(&Caution::FarFromTable));
    let stud = plain(&with_maker(stud("3/8-16", BoltGrade::Sae5), "20 lbf.ft"));
    assert!(!stud.cautions.contains(&Caution::FootPounds));
}

#[test]
fn the_joint_names_its_own_cautions() {
    let mut terminal = with_maker(stud("5/16-18", BoltGrade::Sae5), "100 lbf.in");
    terminal.fastening.nut = Nut::OverJam;
    terminal.fastening.washer = Washer::Split;
    terminal.fastening.landing = Landing::Fork;
    terminal.landed = 5;
    terminal.range = Some((WireSize::Awg(6), WireSize::Awg(2)));
    terminal.wire.size = Some(WireSize::Awg(10));
    let cautions = plain(&terminal).cautions;
    for caution in [
        Caution::Crowded,
        Caution::SizeOutside,
        Caution::HoldJamNut,
        Caution::SplitWasher,
        Caution::ForkLug,
    ] {
        assert!(cautions.contains(&caution), "{caution:?}");
    }
}

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
        if terminal.maker.is_none() {
            if let Some(target) = &advice.target {
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
