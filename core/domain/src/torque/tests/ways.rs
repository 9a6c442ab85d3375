//! What is done with a terminal that has a figure.

use super::{lug_screw, of, plain, stud, with_maker};
use crate::rig::{
    BoltGrade, FasteningKind as K, Landing, Locking, Material, Nut, Recheck, ThreadState, Washer,
    WireSize,
};
use crate::torque::{Action, Caution, FoundBy, LeftBy, Missing, Past, Practice, advise};

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
