//! The dead proof: what locks a terminal, and what makes a proof stale.

use crate::acts::{bay, driver, found, held, point};
use crate::rehearsal::{
    AC_BAY, DC_BAY, LINE, SHORE, SMELL, SWITCH, Walker, book, id, torque, volts,
};
use baywalk_domain::ids::{DeviceId, SourceId};
use baywalk_domain::isolation::{Lapse, Meter, MeterCategory, MeterKind, checks_of};
use baywalk_domain::rig::{BookChange, SupplyKind};
use baywalk_domain::walk::{Act, Needs, Refusal, Seen};

#[test]
fn a_terminal_is_locked_until_its_set_is_proved_dead() {
    let mut walker = Walker::new(book());
    walker.start();
    walker.isolate();
    assert!(matches!(
        walker.act(found(LINE, held())),
        Err(Refusal::Phase { .. })
    ));
    walker.act(Act::Open { bay: bay(AC_BAY) }).unwrap();
    let Err(Refusal::Locked {
        needs: Needs::Pairs { left, .. },
        ..
    }) = walker.act(found(LINE, held()))
    else {
        panic!("the terminal was touched before the proof");
    };
    assert_eq!(left, 12);
    walker.prove(AC_BAY, SWITCH);
    walker.set_tool("36 lbf.in");
    walker.act(found(LINE, held())).unwrap();
}

#[test]
fn the_meter_must_show_it_works_again_and_be_a_contact_meter() {
    let mut walker = Walker::new(book());
    walker.start();
    walker.isolate();
    walker.act(Act::Open { bay: bay(AC_BAY) }).unwrap();
    let pen = Act::KnownLive {
        bay: bay(AC_BAY),
        supply: SupplyKind::Ac,
        place: "supply outlet".into(),
        meter: Meter {
            kind: MeterKind::Proximity,
            ..Meter::contact("pen", MeterCategory::Three)
        },
        volts: volts("120"),
    };
    assert_eq!(walker.act(pen), Err(Refusal::Proximity));
    for supply in [SupplyKind::Ac, SupplyKind::Dc] {
        walker.known_live(AC_BAY, supply).unwrap();
        walker.read_all(SWITCH, supply, "0.2");
    }
    let refused = walker.act(found(LINE, held()));
    assert!(
        matches!(
            refused,
            Err(Refusal::Locked {
                needs: Needs::LiveAgain(SupplyKind::Ac),
                ..
            })
        ),
        "{refused:?}"
    );
}

#[test]
fn a_live_reading_locks_the_bay_and_names_the_sources() {
    let mut walker = Walker::at_ac_bay();
    walker.known_live(AC_BAY, SupplyKind::Ac).unwrap();
    let device = walker
        .book
        .device(DeviceId::new(id(SWITCH)))
        .unwrap()
        .clone();
    let check = checks_of(&device.sets).remove(0);
    let entry = walker
        .act(Act::Read {
            device: device.id,
            check,
            volts: volts("118"),
        })
        .unwrap();
    assert_eq!(entry.shown.dead, Some(false));
    assert_eq!(entry.shown.suspects, vec![SourceId::new(id(SHORE))]);
    let refused = walker.act(found(LINE, held()));
    assert!(matches!(
        refused,
        Err(Refusal::Locked {
            needs: Needs::FoundLive(_),
            ..
        })
    ));
    walker.prove(AC_BAY, SWITCH);
    walker.act(found(LINE, held())).unwrap();
}

#[test]
fn a_pause_a_restart_idling_and_a_clock_jump_make_the_proof_stale() {
    for (lapse, disturb) in [
        (
            Lapse::Pause,
            (|walker: &mut Walker| {
                walker.act(Act::Pause).unwrap();
                assert_eq!(walker.act(found(LINE, held())), Err(Refusal::Paused));
                walker.act(Act::Resume).unwrap();
            }) as fn(&mut Walker),
        ),
        (Lapse::Restart, |walker: &mut Walker| walker.boot = "second"),
        (Lapse::Idle, |walker: &mut Walker| walker.seconds += 31 * 60),
    ] {
        let mut walker = Walker::at_ac_bay();
        disturb(&mut walker);
        let refused = walker.act(found(LINE, held()));
        let Err(Refusal::Locked {
            needs: Needs::Lapsed(found),
            ..
        }) = refused
        else {
            panic!("{lapse:?}: {refused:?}");
        };
        assert_eq!(found, lapse);
    }
}

#[test]
fn a_lapse_stays_even_when_the_act_that_showed_it_is_struck() {
    let mut walker = Walker::at_ac_bay();
    walker.seconds += 31 * 60;
    let look = walker
        .act(Act::Look {
            point: point(SMELL),
            seen: Seen::Clear,
        })
        .unwrap();
    walker.act(Act::Strike { act: look.id }).unwrap();
    assert!(matches!(
        walker.act(found(LINE, held())),
        Err(Refusal::Locked { .. })
    ));
}

#[test]
fn a_device_that_moves_to_another_bay_takes_no_earlier_reading_with_it() {
    let mut walker = Walker::at_ac_bay();
    let started_with = walker.book.clone();
    let mut device = walker
        .book
        .device(DeviceId::new(id(SWITCH)))
        .unwrap()
        .clone();
    device.bay = bay(DC_BAY);
    walker
        .act(Act::Book(BookChange::Device(Box::new(device))))
        .unwrap();
    let (state, book) =
        baywalk_domain::walk::WalkState::fold_with_book(&walker.entries, started_with).unwrap();
    assert_eq!(book, walker.book);
    assert!(
        state.bays[&bay(AC_BAY)]
            .proofs
            .iter()
            .all(|proof| proof.after.is_some())
    );
    assert!(matches!(
        walker.act(found(LINE, held())),
        Err(Refusal::Locked { .. })
    ));
}

#[test]
fn a_tool_is_used_only_at_the_setting_that_was_said() {
    let mut walker = Walker::at_ac_bay();
    walker.set_tool("28 lbf.in");
    let refused = walker.act(found(LINE, held()));
    assert_eq!(refused, Err(Refusal::ToolNotSet(driver())));
    let out = Act::SetTool {
        tool: driver(),
        at: torque("90 lbf.in"),
    };
    assert_eq!(walker.act(out), Err(Refusal::NoTool), "beyond its range");
    walker.set_tool("36 lbf.in");
    walker.act(found(LINE, held())).unwrap();
}

#[test]
fn a_meter_is_named_and_marked_for_ac() {
    let mut walker = Walker::new(book());
    walker.start();
    walker.isolate();
    walker.act(Act::Open { bay: bay(AC_BAY) }).unwrap();
    let live = |supply, name: &str, category| Act::KnownLive {
        bay: bay(AC_BAY),
        supply,
        place: "supply outlet".into(),
        meter: Meter::contact(name, category),
        volts: volts("120"),
    };
    let named = walker.act(live(SupplyKind::Ac, " ", MeterCategory::Three));
    assert_eq!(named, Err(Refusal::NameMeter));
    for category in [MeterCategory::Unmarked, MeterCategory::NotNoted] {
        let marked = walker.act(live(SupplyKind::Ac, "old meter", category));
        assert_eq!(marked, Err(Refusal::MeterCategory(category)));
        walker
            .act(live(SupplyKind::Dc, "old meter", category))
            .unwrap();
    }
    walker
        .act(live(SupplyKind::Ac, "blue meter", MeterCategory::Two))
        .unwrap();
}

#[test]
fn another_meter_in_the_middle_begins_the_proof_anew() {
    let mut walker = Walker::new(book());
    walker.start();
    walker.isolate();
    walker.act(Act::Open { bay: bay(AC_BAY) }).unwrap();
    for supply in [SupplyKind::Ac, SupplyKind::Dc] {
        walker.known_live(AC_BAY, supply).unwrap();
        walker.read_all(SWITCH, supply, "0.2");
        let other = Act::KnownLive {
            bay: bay(AC_BAY),
            supply,
            place: "supply outlet".into(),
            meter: Meter::contact("red meter", MeterCategory::Three),
            volts: volts("120"),
        };
        walker.act(other).unwrap();
    }
    let Err(Refusal::Locked { needs, .. }) = walker.act(found(LINE, held())) else {
        panic!("touched with two meters in one proof");
    };
    assert!(matches!(needs, Needs::Pairs { left: 12, .. }), "{needs:?}");
    let walk = walker.state().unwrap();
    let proofs = &walk.bays[&bay(AC_BAY)].proofs;
    assert_eq!(proofs[0].lapsed, Some(Lapse::OtherMeter));
}
