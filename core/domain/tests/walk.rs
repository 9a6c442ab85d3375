//! The rules of the walk, tried as a person would: what is refused, and why.
#![expect(
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test that can't go on stops with the reason"
)]

mod rehearsal;

use baywalk_domain::finding::{FindingKind, FollowUp};
use baywalk_domain::ids::{BayId, DeviceId, PointId, SourceId, ToolId};
use baywalk_domain::isolation::{Lapse, MeterKind, checks_of};
use baywalk_domain::rig::{BookChange, SupplyKind};
use baywalk_domain::supply::{Measured, Reading, ReadingStep, Verdict, steps_of};
use baywalk_domain::walk::{
    Act, AloneWhy, Angle, AsFound, AsLeft, Away, Counted, Damage, Ending, Movement, Needs, Next,
    NoException, Phase, ReadyAnswer, ReadyItem, Refusal, Seen, Test, summary,
};
use rehearsal::{
    AC_BAY, BANK, BATTERY, CLAMP, DC_BAY, DRIVER, LINE, NEUTRAL, POST, SHORE, SMELL, SOLAR, SWITCH,
    Walker, book, id, torque, volts,
};

fn point(n: u128) -> PointId {
    PointId::new(id(n))
}
fn bay(n: u128) -> BayId {
    BayId::new(id(n))
}
fn driver() -> ToolId {
    ToolId::new(id(DRIVER))
}
fn held() -> AsFound {
    AsFound::Held(Test::Torque {
        at: torque("36 lbf.in"),
        tool: driver(),
    })
}
fn moved(angle: Angle) -> AsFound {
    AsFound::Moved(Movement::Turned {
        angle,
        below: torque("36 lbf.in"),
        tool: driver(),
    })
}
fn found(n: u128, found: AsFound) -> Act {
    Act::Found {
        point: point(n),
        found,
    }
}
fn set(n: u128, to: &str) -> Act {
    Act::Left {
        point: point(n),
        left: AsLeft::Set {
            torque: torque(to),
            tool: driver(),
        },
    }
}

#[test]
fn isolating_waits_for_the_list_before() {
    let mut walker = Walker::new(book());
    walker
        .act(Act::Start {
            person: "Ada".into(),
            scope: baywalk_domain::walk::Scope::Whole,
        })
        .unwrap();
    let away = Away::Isolated(String::new());
    let refused = walker.act(Act::Isolate {
        source: SourceId::new(id(SHORE)),
        away,
    });
    assert!(matches!(refused, Err(Refusal::NotReady(_))));
    let answer = ReadyAnswer::Without("in a hurry".into());
    let refused = walker.act(Act::Ready {
        item: ReadyItem::Body,
        answer,
    });
    assert_eq!(refused, Err(Refusal::MustHave(ReadyItem::Body)));
}

#[test]
fn every_source_goes_before_a_bay_opens_and_solar_before_the_battery() {
    let mut walker = Walker::new(book());
    walker.start();
    let isolate = |source| Act::Isolate {
        source: SourceId::new(id(source)),
        away: Away::Isolated(String::new()),
    };
    walker.act(isolate(SHORE)).unwrap();
    assert_eq!(
        walker.act(isolate(BANK)),
        Err(Refusal::SourceFirst(SourceId::new(id(SOLAR))))
    );
    walker.act(isolate(SOLAR)).unwrap();
    let open = Act::Open { bay: bay(AC_BAY) };
    assert_eq!(
        walker.act(open.clone()),
        Err(Refusal::SourceNotAway(SourceId::new(id(BANK))))
    );
    walker.act(isolate(BANK)).unwrap();
    walker.act(open).unwrap();
}

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
        meter: MeterKind::Proximity,
        volts: volts("120"),
    };
    assert_eq!(walker.act(pen), Err(Refusal::Proximity));
    let device = walker
        .book
        .device(DeviceId::new(id(SWITCH)))
        .unwrap()
        .clone();
    for supply in [SupplyKind::Ac, SupplyKind::Dc] {
        walker.known_live(AC_BAY, supply).unwrap();
        for check in checks_of(&device.sets)
            .into_iter()
            .filter(|check| check.supply == supply)
        {
            walker
                .act(Act::Read {
                    device: device.id,
                    check,
                    volts: volts("0.2"),
                })
                .unwrap();
        }
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
fn undo_strikes_the_newest_alone_and_striking_a_proof_locks_again() {
    let mut walker = Walker::at_ac_bay();
    let first = walker.act(found(LINE, held())).unwrap();
    let second = walker.act(found(NEUTRAL, held())).unwrap();
    let refused = walker.act(Act::Strike { act: first.id });
    assert_eq!(refused, Err(Refusal::NotNewest { newest: second.id }));
    walker.act(Act::Strike { act: second.id }).unwrap();
    walker.act(Act::Strike { act: first.id }).unwrap();
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
fn a_bank_is_gone_on_at_by_exception_only_below_fifty_volts() {
    let mut high = book();
    high.sources[2].highest = Some(volts("58.4"));
    for (book, expected) in [(book(), None), (high, Some(NoException::TooHigh))] {
        let mut walker = Walker::new(book);
        walker.start();
        walker.isolate();
        walker.act(Act::Open { bay: bay(DC_BAY) }).unwrap();
        let except = Act::Except {
            device: DeviceId::new(id(BATTERY)),
            set: "bank".into(),
            reason: "its own posts; negative off and taped".into(),
        };
        let outcome = walker.act(except);
        match expected {
            None => {
                outcome.unwrap();
                walker
                    .act(found(POST, AsFound::LookedAt { tugged: true }))
                    .unwrap();
            }
            Some(why) => assert_eq!(outcome, Err(Refusal::NoException(why))),
        }
    }
}

#[test]
fn no_exception_for_ac() {
    let mut walker = Walker::new(book());
    walker.start();
    walker.isolate();
    walker.act(Act::Open { bay: bay(AC_BAY) }).unwrap();
    let except = Act::Except {
        device: DeviceId::new(id(SWITCH)),
        set: "shore".into(),
        reason: "quick look".into(),
    };
    assert_eq!(
        walker.act(except),
        Err(Refusal::NoException(NoException::Ac))
    );
}

#[test]
fn power_stays_away_while_a_bay_is_open() {
    let mut walker = Walker::at_ac_bay();
    assert_eq!(walker.act(Act::PowerUp), Err(Refusal::BayOpen(bay(AC_BAY))));
    let half = Counted {
        tools: false,
        ..Counted::ALL
    };
    let refused = walker.act(Act::Close {
        bay: bay(AC_BAY),
        counted: half,
    });
    assert_eq!(refused, Err(Refusal::NotCounted(bay(AC_BAY))));
}

#[test]
fn power_comes_back_dc_first_measured_first_and_stops_at_a_bad_reading() {
    let mut walker = powering_up();
    let shore = Act::Restore {
        source: SourceId::new(id(SHORE)),
    };
    assert_eq!(
        walker.act(shore.clone()),
        Err(Refusal::SourceFirst(SourceId::new(id(BANK))))
    );
    for source in [BANK, SOLAR] {
        walker
            .act(Act::Restore {
                source: SourceId::new(id(source)),
            })
            .unwrap();
    }
    assert!(matches!(
        walker.act(shore.clone()),
        Err(Refusal::ReadingFirst(ReadingStep::SupplyL1N))
    ));
    let steps = steps_of(&walker.book);
    for step in steps.iter().copied().filter(|step| step.is_before_shore()) {
        let reading = if step == ReadingStep::SupplyL2N {
            "152"
        } else {
            good(step)
        };
        walker.act(measure(step, reading)).unwrap();
    }
    assert_eq!(
        walker.act(shore.clone()),
        Err(Refusal::ReadingStops(ReadingStep::SupplyL2N))
    );
    walker.act(measure(ReadingStep::SupplyL2N, "119")).unwrap();
    walker.act(shore).unwrap();
    for step in steps {
        if walker.state().unwrap().reading(step).is_none() {
            walker.act(measure(step, good(step))).unwrap();
        }
    }
    let end = walker.act(Act::End(Ending::Whole)).unwrap();
    assert_eq!(end.shown.due.unwrap().on.to_string(), "2028-03-20");
}

#[test]
fn a_leg_that_rises_under_the_other_legs_load_is_a_weak_neutral() {
    let mut walker = powering_up();
    for source in [BANK, SOLAR] {
        walker
            .act(Act::Restore {
                source: SourceId::new(id(source)),
            })
            .unwrap();
    }
    for step in steps_of(&walker.book)
        .into_iter()
        .filter(|step| step.is_before_shore())
    {
        walker.act(measure(step, good(step))).unwrap();
    }
    walker
        .act(Act::Restore {
            source: SourceId::new(id(SHORE)),
        })
        .unwrap();
    walker.act(measure(ReadingStep::Leg2, "120")).unwrap();
    // Computed: 1 ohm in the neutral, 1500 W and 300 W loads: 111.1 and 128.9 V (Ohm's law).
    let entry = walker
        .act(measure(ReadingStep::Load1Leg2, "128.9"))
        .unwrap();
    assert_eq!(entry.shown.judged.unwrap().verdict, Verdict::Stop);
}

#[test]
fn a_walk_can_end_early_anywhere_and_says_what_was_not_judged() {
    let mut walker = Walker::at_ac_bay();
    walker.act(found(LINE, held())).unwrap();
    let state = walker.state().unwrap();
    let sum = summary(&state, &walker.book, &[]);
    assert_eq!((sum.done, sum.total), (1, 5));
    assert_eq!(sum.not_judged.len(), 4);
    assert_eq!(sum.dead, vec![bay(AC_BAY)]);
    assert!(sum.alive.is_empty());
    let entry = walker.act(Act::End(Ending::Early("rain".into()))).unwrap();
    assert_eq!(entry.shown.findings[0].kind, FindingKind::BayLeftOpen);
    assert!(walker.state().is_none());
}

#[test]
fn the_book_grows_in_the_middle_of_a_walk_and_new_terminals_need_their_own_proof() {
    let mut walker = Walker::at_ac_bay();
    let mut added = walker.book.points[0].clone();
    added.id = point(99);
    added.code = rehearsal::code("A9");
    walker
        .act(Act::Book(BookChange::Point(Box::new(added))))
        .unwrap();
    walker.act(found(99, held())).unwrap();
    let mut device = walker.book.devices[0].clone();
    device.sets.clear();
    device.id = DeviceId::new(id(98));
    device.code = rehearsal::code("NEW");
    walker
        .act(Act::Book(BookChange::Device(Box::new(device))))
        .unwrap();
    let mut bare = walker.book.points[0].clone();
    bare.id = point(97);
    bare.code = rehearsal::code("A10");
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

#[test]
fn a_source_met_on_the_way_locks_everything_until_it_is_away() {
    let mut walker = Walker::at_ac_bay();
    let mut met = walker.book.sources[0].clone();
    met.id = SourceId::new(id(19));
    met.code = rehearsal::code("S9");
    walker
        .act(Act::Book(BookChange::Source(Box::new(met))))
        .unwrap();
    let refused = walker.act(found(LINE, held()));
    assert!(
        matches!(
            refused,
            Err(Refusal::Locked {
                needs: Needs::Source(_),
                ..
            })
        ),
        "{refused:?}"
    );
    let away = Away::Isolated("unplugged".into());
    walker
        .act(Act::Isolate {
            source: SourceId::new(id(19)),
            away,
        })
        .unwrap();
    let refused = walker.act(found(LINE, held()));
    assert!(
        matches!(
            refused,
            Err(Refusal::Locked {
                needs: Needs::Lapsed(Lapse::Isolation),
                ..
            })
        ),
        "{refused:?}"
    );
    walker.prove(AC_BAY, SWITCH);
    walker.act(found(LINE, held())).unwrap();
}

#[test]
fn a_bay_opens_again_only_when_what_came_back_is_away_again() {
    let mut walker = powering_up();
    walker
        .act(Act::Restore {
            source: SourceId::new(id(BANK)),
        })
        .unwrap();
    let open = Act::Open { bay: bay(AC_BAY) };
    assert_eq!(
        walker.act(open.clone()),
        Err(Refusal::SourceNotAway(SourceId::new(id(BANK))))
    );
    let away = Away::Isolated("negative off".into());
    walker
        .act(Act::Isolate {
            source: SourceId::new(id(BANK)),
            away,
        })
        .unwrap();
    walker.act(open).unwrap();
    assert!(matches!(
        walker.act(found(NEUTRAL, held())),
        Err(Refusal::Locked { .. })
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

fn powering_up() -> Walker {
    let mut walker = Walker::at_ac_bay();
    walker.act(found(LINE, held())).unwrap();
    walker
        .act(Act::Close {
            bay: bay(AC_BAY),
            counted: Counted::ALL,
        })
        .unwrap();
    walker.act(Act::PowerUp).unwrap();
    assert_eq!(walker.state().unwrap().phase, Phase::PoweringUp);
    walker
}

fn measure(step: ReadingStep, reading: &str) -> Act {
    let measured = if step.is_voltage() {
        Measured::Volts(volts(reading))
    } else {
        Measured::Works
    };
    Act::Measure(Reading {
        step,
        place: "outlet by the door".into(),
        measured,
    })
}

fn good(step: ReadingStep) -> &'static str {
    match step {
        ReadingStep::SupplyL1L2 => "240",
        ReadingStep::SupplyNG | ReadingStep::OutletNG | ReadingStep::HotSkin => "0.4",
        ReadingStep::DcBus => "13.1",
        ReadingStep::Load1Leg1 | ReadingStep::Load2Leg2 => "117.5",
        _ => "120",
    }
}

#[test]
fn following_what_is_next_leads_through_the_whole_walk() {
    let mut walker = Walker::new(book());
    walker
        .act(Act::Start {
            person: "Ada".into(),
            scope: baywalk_domain::walk::Scope::Whole,
        })
        .unwrap();
    for _ in 0..200 {
        let state = walker.state().unwrap();
        let act = obey(&walker, &state.next(&walker.book, &[]));
        let ends = matches!(act, Act::End(_));
        walker.act(act).unwrap();
        if ends {
            let state =
                baywalk_domain::walk::WalkState::fold(&walker.entries, &walker.book).unwrap();
            let sum = summary(&state, &walker.book, &[]);
            assert_eq!((sum.done, sum.total, sum.not_judged.len()), (5, 5, 0));
            return;
        }
    }
    panic!("the walk did not end");
}

fn obey(walker: &Walker, next: &Next) -> Act {
    match next {
        Next::Ready(item) => Act::Ready {
            item: *item,
            answer: ReadyAnswer::Done,
        },
        Next::Isolate(source) => Act::Isolate {
            source: *source,
            away: Away::Isolated(String::new()),
        },
        Next::Open(bay) => Act::Open { bay: *bay },
        Next::Except { device, set } => Act::Except {
            device: *device,
            set: set.clone(),
            reason: "no switch upstream".into(),
        },
        Next::KnownLive { bay, supply, .. } => Act::KnownLive {
            bay: *bay,
            supply: *supply,
            place: "outlet".into(),
            meter: MeterKind::Contact,
            volts: volts("120"),
        },
        Next::Read { device, check } => Act::Read {
            device: *device,
            check: check.clone(),
            volts: volts("0"),
        },
        Next::Point(id) => match &walker.book.point(*id).unwrap().kind {
            baywalk_domain::rig::PointKind::Look(_) => Act::Look {
                point: *id,
                seen: Seen::Clear,
            },
            baywalk_domain::rig::PointKind::Terminal(terminal) => {
                let found = match terminal.fastening.kind {
                    baywalk_domain::rig::FasteningKind::PressureScrew => moved(Angle::Hair),
                    baywalk_domain::rig::FasteningKind::PushIn => AsFound::Held(Test::Tug),
                    _ => AsFound::LookedAt { tugged: true },
                };
                Act::Found { point: *id, found }
            }
        },
        Next::Left(id) => Act::Left {
            point: *id,
            left: AsLeft::Set {
                torque: torque("45 lbf.in"),
                tool: driver(),
            },
        },
        Next::Close(bay) => Act::Close {
            bay: *bay,
            counted: Counted::ALL,
        },
        Next::PowerUp => Act::PowerUp,
        Next::Restore(source) => Act::Restore { source: *source },
        Next::Measure(step) => measure(*step, good(*step)),
        Next::End => Act::End(Ending::Whole),
        Next::Resume | Next::Unsafe(_) => panic!("not expected: {next:?}"),
    }
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
