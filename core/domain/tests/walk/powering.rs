//! Bringing power back, and ending.

use crate::acts::{bay, found, good, held, measure, powering_up};
use crate::rehearsal::{AC_BAY, BANK, LINE, NEUTRAL, SHORE, SOLAR, Walker, id};
use baywalk_domain::finding::FindingKind;
use baywalk_domain::ids::SourceId;
use baywalk_domain::supply::{ReadingStep, Verdict, steps_of};
use baywalk_domain::walk::{Act, Away, Counted, Ending, Refusal, summary};

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
    let sum = summary(&state, &walker.book);
    assert_eq!((sum.done, sum.total), (1, 5));
    assert_eq!(sum.not_judged.len(), 4);
    assert_eq!(sum.dead, vec![bay(AC_BAY)]);
    assert!(sum.alive.is_empty());
    let entry = walker.act(Act::End(Ending::Early("rain".into()))).unwrap();
    assert_eq!(entry.shown.findings[0].kind, FindingKind::BayLeftOpen);
    assert!(walker.state().is_none());
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
