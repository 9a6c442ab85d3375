//! As found and as left, undo, findings, the book on the way.

use crate::acts::{bay, driver, found, held, moved, point, set};
use crate::rehearsal::{AC_BAY, CLAMP, LINE, NEUTRAL, Walker, id, torque};
use baywalk_domain::finding::{FindingKind, FollowUp};
use baywalk_domain::ids::DeviceId;
use baywalk_domain::rig::BookChange;
use baywalk_domain::walk::{
    Act, AloneWhy, Angle, AsFound, AsLeft, Counted, Damage, Needs, Refusal, Test,
};

#[test]
fn undo_strikes_the_newest_alone_and_striking_a_proof_locks_again() {
    let mut walker = Walker::at_ac_bay();
    let first = walker.act(found(LINE, held())).unwrap();
    let second = walker.act(found(NEUTRAL, held())).unwrap();
    let refused = walker.act(Act::Strike { act: first.id });
    assert_eq!(refused, Err(Refusal::NotNewest { newest: second.id }));
    walker.act(Act::Strike { act: second.id }).unwrap();
    walker.act(Act::Strike { act: first.id }).unwrap();
    let setting = *walker.state().unwrap().standing.last().unwrap();
    walker.act(Act::Strike { act: setting }).unwrap();
    let last_proof = *walker.state().unwrap().standing.last().unwrap();
    walker.act(Act::Strike { act: last_proof }).unwrap();
    assert!(matches!(
        walker.act(found(LINE, held())),
        Err(Refusal::Locked { .. })
    ));
}

#[test]
fn only_what_moved_is_set_and_what_moved_twice_is_remade() {
    let mut walker = Walker::at_ac_bay();
    walker.moved_running.insert(point(NEUTRAL), 1);
    walker.act(found(LINE, held())).unwrap();
    assert_eq!(
        walker.act(set(LINE, "45 lbf.in")),
        Err(Refusal::LeaveWhatHeld(point(LINE)))
    );
    let entry = walker.act(found(NEUTRAL, moved(Angle::Eighth))).unwrap();
    assert_eq!(entry.shown.findings[0].kind, FindingKind::MovedAgain);
    let refused = walker.act(set(NEUTRAL, "45 lbf.in"));
    assert!(
        matches!(refused, Err(Refusal::RemakeNotSet { .. })),
        "{refused:?}"
    );
    let close = Act::Close {
        bay: bay(AC_BAY),
        counted: Counted::ALL,
    };
    assert_eq!(
        walker.act(close.clone()),
        Err(Refusal::WaitsForLeft(point(NEUTRAL)))
    );
    walker.set_tool("45 lbf.in");
    let left = AsLeft::Remade {
        set: Some((torque("45 lbf.in"), driver())),
    };
    walker
        .act(Act::Left {
            point: point(NEUTRAL),
            left,
        })
        .unwrap();
    walker.act(close).unwrap();
}

#[test]
fn the_advice_is_kept_as_it_was_shown() {
    let mut walker = Walker::at_ac_bay();
    let entry = walker.act(found(LINE, held())).unwrap();
    let advice = entry.shown.advice.unwrap();
    assert_eq!(advice.target.unwrap().pair(), "45 lbf.in");
    assert_eq!(advice.check.unwrap().pair(), "36 lbf.in");
    assert_eq!(advice.source, "label inside the cover");
}

#[test]
fn heat_means_remake_and_loose_is_never_left_so() {
    let mut walker = Walker::at_ac_bay();
    walker
        .act(Act::Damage {
            point: point(LINE),
            damage: Damage::Heat,
            note: String::new(),
        })
        .unwrap();
    walker.act(found(LINE, AsFound::Loose)).unwrap();
    assert!(matches!(
        walker.act(set(LINE, "45 lbf.in")),
        Err(Refusal::RemakeNotSet { .. })
    ));
    let alone = Act::Left {
        point: point(LINE),
        left: AsLeft::Alone(AloneWhy::NoTool),
    };
    assert_eq!(walker.act(alone), Err(Refusal::CantLeaveSo(point(LINE))));
    let out = AsLeft::OutOfService {
        how: "breaker off and taped".into(),
    };
    let entry = walker
        .act(Act::Left {
            point: point(LINE),
            left: out,
        })
        .unwrap();
    assert_eq!(entry.shown.findings[0].kind, FindingKind::OutOfService);
}

#[test]
fn a_clamp_is_tugged_and_never_judged_by_torque() {
    let mut walker = Walker::at_ac_bay();
    assert!(matches!(
        walker.act(found(CLAMP, held())),
        Err(Refusal::NotBy { .. })
    ));
    walker.act(found(CLAMP, AsFound::Held(Test::Tug))).unwrap();
    assert!(matches!(
        walker.act(found(LINE, AsFound::Held(Test::Tug))),
        Err(Refusal::NotBy { .. })
    ));
}

#[test]
fn a_finding_is_decided_and_an_unknown_one_refused() {
    let mut walker = Walker::at_ac_bay();
    let entry = walker.act(found(LINE, AsFound::Apart)).unwrap();
    let follow_up = FollowUp {
        decision: baywalk_domain::finding::Decision::Licensed,
        by: None,
        note: String::new(),
    };
    let finding = entry.shown.findings[0].id;
    walker
        .act(Act::Decide {
            finding,
            follow_up: follow_up.clone(),
        })
        .unwrap();
    let other = baywalk_domain::ids::FindingId::new(id(7));
    assert_eq!(
        walker.act(Act::Decide {
            finding: other,
            follow_up
        }),
        Err(Refusal::NoFinding)
    );
}

#[test]
fn the_book_grows_in_the_middle_of_a_walk_and_new_terminals_need_their_own_proof() {
    let mut walker = Walker::at_ac_bay();
    let mut added = walker.book.points[0].clone();
    added.id = point(99);
    added.code = crate::rehearsal::code("A9");
    walker
        .act(Act::Book(BookChange::Point(Box::new(added))))
        .unwrap();
    walker.act(found(99, held())).unwrap();
    let mut device = walker.book.devices[0].clone();
    device.sets.clear();
    device.id = DeviceId::new(id(98));
    device.code = crate::rehearsal::code("NEW");
    walker
        .act(Act::Book(BookChange::Device(Box::new(device))))
        .unwrap();
    let mut bare = walker.book.points[0].clone();
    bare.id = point(97);
    bare.code = crate::rehearsal::code("A10");
    bare.device = DeviceId::new(id(98));
    if let baywalk_domain::rig::PointKind::Terminal(terminal) = &mut bare.kind {
        terminal.set = None;
        terminal.conductor = None;
    }
    walker
        .act(Act::Book(BookChange::Point(Box::new(bare))))
        .unwrap();
    let refused = walker.act(found(97, held()));
    assert!(
        matches!(
            refused,
            Err(Refusal::Locked {
                needs: Needs::Sets(_),
                ..
            })
        ),
        "{refused:?}"
    );
}
