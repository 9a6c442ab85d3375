//! Which figure a terminal gets, and which it never gets.

use super::{lug_screw, of, plain, socket, stud, way};
use crate::coded::Coded;
use crate::rig::{
    BoltGrade, Drive, DriveKind, FasteningKind as K, Landing, Role, Strands, Thread, WireSize,
};
use crate::torque::{Action, BasisKind, Caution, FoundBy, LeftBy, Missing};

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
