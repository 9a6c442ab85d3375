//! What holds for every service that is judged.
#![expect(
    clippy::unwrap_used,
    reason = "a test that can't go on stops with the reason"
)]

use baywalk_domain::coded::Coded;
use baywalk_domain::rig::ServiceKind;
use baywalk_domain::service::{
    Ask, Fault, Judgement, Load, Meter, Pair, Place, Standing, State, Survey, SurveyFault, judge,
};
use baywalk_domain::supply::SafeAct;
use baywalk_domain::units::Voltage;
use proptest::prelude::*;

fn volts(value: f64) -> Voltage {
    Voltage::from_volts(value).unwrap()
}

fn state(loads: (Option<f64>, Option<f64>), read: [f64; 6]) -> State {
    let load = |watts: Option<f64>| watts.map(|watts| Load::watts(watts).unwrap());
    Pair::ALL.iter().zip(read).fold(
        State::loaded(load(loads.0), load(loads.1)),
        |state, (pair, value)| state.with(*pair, volts(value)),
    )
}

fn judged(place: Place, states: Vec<State>) -> Judgement {
    judge(&Survey::new(ServiceKind::Amp50, place, Meter::usual(), states).unwrap())
}

fn faults(judgement: &Judgement) -> Vec<Fault> {
    judgement.consistent.iter().map(|one| one.fault).collect()
}

/// 1 V steps around the nominal values, wild ones among them.
fn reading() -> impl Strategy<Value = f64> {
    prop_oneof![
        3 => 0.0..600.0_f64,
        2 => Just(0.0),
        5 => 110.0..130.0_f64,
        3 => 200.0..250.0_f64,
    ]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    #[test]
    fn whatever_was_read_the_answer_is_ordered_and_never_careless(
        read in prop::array::uniform6(reading()),
        loaded in prop::option::of(300.0..1800.0_f64),
        outlet in any::<bool>(),
    ) {
        let place = if outlet { Place::Outlet } else { Place::Coach };
        let judgement = judged(place, vec![state((loaded, None), read)]);
        prop_assert_eq!(&judgement, &judged(place, vec![state((loaded, None), read)]));
        let weights: Vec<f64> = judgement.consistent.iter().map(|one| one.weight).collect();
        prop_assert!(weights.windows(2).all(|two| two[0] >= two[1]), "{weights:?}");
        for one in &judgement.consistent {
            prop_assert!(one.worst <= 1.05, "{one:?}");
            prop_assert!(one.level.least <= one.level.most);
            prop_assert!(one.ohms.is_none_or(|ohms| 0.0 < ohms.least && ohms.least <= ohms.most));
            prop_assert_eq!(one.explained.len(), 1);
        }
        let first = judgement.consistent.first().map(|one| one.fault);
        let harmless = [
            Fault::Healthy,
            Fault::LowService,
            Fault::HighService,
            Fault::Supply208,
            Fault::OneLegAdapter,
        ];
        if judgement.act == SafeAct::GoOn {
            prop_assert!(first.is_some_and(|first| harmless.contains(&first)), "{first:?}");
        }
        prop_assert_eq!(judgement.standing == Standing::Unexplained, first.is_none());
        prop_assert_eq!(first.is_none(), judgement.apart.iter().any(|next| next.ask == Ask::AllAgain));
    }

    /// V1 = 2E · R1/(R1 + R2) by Ohm's law; the meter is off by up to its class at each reading.
    #[test]
    fn an_open_neutral_is_never_missed_and_never_fine(
        level in 112.0..125.0_f64,
        one in 300.0..1800.0_f64,
        share in prop_oneof![0.2..0.7_f64, 1.4..5.0_f64],
        off in prop::array::uniform6(-1.0..1.0_f64),
    ) {
        let two = (one * share).clamp(60.0, 5000.0);
        let first = 2.0 * level * two / (one + two);
        let second = 2.0 * level - first;
        let true_volts = [first, second, 2.0 * level, level, level, (level - first).abs()];
        let meter = Meter::usual();
        let read = std::array::from_fn(|at| {
            (true_volts[at] + off[at] * meter.error(true_volts[at]) * 0.99).max(0.0)
        });
        let judgement = judged(Place::Coach, vec![state((Some(one), Some(two)), read)]);
        let faults = faults(&judgement);
        prop_assert!(faults.contains(&Fault::OpenNeutral), "{faults:?}");
        prop_assert!(!faults.contains(&Fault::Healthy), "{faults:?}");
        prop_assert_eq!(judgement.act, SafeAct::SupplyAway);
    }
}

#[test]
fn exchanged_legs_are_no_fault() {
    let read = [119.0, 121.0, 240.0, 119.5, 120.5, 0.3];
    let exchanged = [121.0, 119.0, 240.0, 120.5, 119.5, 0.3];
    for read in [read, exchanged] {
        let judgement = judged(Place::Outlet, vec![state((None, None), read)]);
        assert_eq!(faults(&judgement).first(), Some(&Fault::Healthy));
        // Plugging in may go on; what hides until it is loaded is not called sound.
        assert_eq!(judgement.standing, Standing::SoFar);
        assert_eq!(judgement.act, SafeAct::GoOn);
    }
}

#[test]
fn a_live_body_is_told_and_hands_stay_off() {
    // Line 1 and ground exchanged: L1 is dead, the ground carries the line.
    let read = [0.0, 120.0, 120.0, 120.0, 240.0, 120.0];
    let judgement = judged(Place::Coach, vec![state((None, None), read)]);
    assert_eq!(faults(&judgement).first(), Some(&Fault::LineGroundSwapped));
    assert_eq!(judgement.act, SafeAct::DontTouch);
    let read = [120.0, 120.0, 0.0, 0.0, 120.0, 0.0];
    assert!(
        !faults(&judged(Place::Coach, vec![state((None, None), read)])).contains(&Fault::Healthy)
    );
}

#[test]
fn one_reading_alone_is_not_enough_to_go_on() {
    let plain = State::loaded(None, None).with(Pair::L1N, volts(120.0));
    let judgement = judged(Place::Outlet, vec![plain]);
    assert_eq!(judgement.standing, Standing::Open);
    assert_eq!(judgement.act, SafeAct::MeasureOn);
    assert!(!judgement.apart.is_empty());
}

#[test]
fn a_low_impedance_finds_an_open_ground() {
    let low = Meter::new(2.0, 3.0, 0.1, 3000.0).unwrap();
    let read = [120.0, 120.0, 240.0, 3.0, 3.0, 0.0];
    let survey = Survey::new(
        ServiceKind::Amp50,
        Place::Outlet,
        low,
        vec![state((None, None), read)],
    );
    let judgement = judge(&survey.unwrap());
    assert_eq!(faults(&judgement), [Fault::OpenGround]);
    assert_eq!(judgement.act, SafeAct::DontPlugIn);
}

#[test]
fn what_a_service_has_not_is_refused() {
    let survey = |kind, states| Survey::new(kind, Place::Coach, Meter::usual(), states);
    let of = |pair, value| State::default().with(pair, volts(value));
    use ServiceKind::{Amp30, Amp50, None as Without};
    assert_eq!(
        survey(Without, vec![of(Pair::L1N, 1.0)]),
        Err(SurveyFault::NoService)
    );
    assert_eq!(survey(Amp50, vec![]), Err(SurveyFault::States { found: 0 }));
    assert_eq!(
        survey(Amp50, vec![State::default()]),
        Err(SurveyFault::NoReading)
    );
    assert_eq!(
        survey(Amp30, vec![of(Pair::L2N, 120.0)]),
        Err(SurveyFault::NoLine2 { pair: Pair::L2N })
    );
    assert_eq!(
        survey(Amp50, vec![of(Pair::L1N, -1.0)]),
        Err(SurveyFault::Reading {
            pair: Pair::L1N,
            volts: -1.0
        })
    );
    let heater = Some(Load::watts(1500.0).unwrap());
    let loaded = State::loaded(None, heater).with(Pair::L1N, volts(120.0));
    assert_eq!(survey(Amp30, vec![loaded]), Err(SurveyFault::NoLeg2));
    assert!(Load::watts(f64::NAN).is_err() && Load::amperes(80.0).is_err());
}

/// Common practice, no source: a weak neutral hides until one leg, then the other, is loaded.
#[test]
fn a_service_in_the_coach_is_sound_only_once_each_leg_was_loaded() {
    let bare = state((None, None), [120.0, 120.0, 240.0, 120.0, 120.0, 0.3]);
    let so_far = judged(Place::Coach, vec![bare]);
    assert_eq!(so_far.standing, Standing::SoFar);
    assert_eq!(so_far.act, SafeAct::MeasureOn);
    assert!(faults(&so_far).contains(&Fault::WeakNeutral));
    let on_1 = state(
        (Some(1500.0), None),
        [118.5, 120.5, 239.0, 119.5, 120.0, 1.0],
    );
    let one = judged(Place::Coach, vec![bare, on_1]);
    assert_eq!(
        (one.standing, one.act),
        (Standing::SoFar, SafeAct::MeasureOn)
    );
    let on_2 = state(
        (None, Some(1500.0)),
        [120.5, 118.5, 239.0, 120.0, 119.5, 1.0],
    );
    let both = judged(Place::Coach, vec![bare, on_1, on_2]);
    assert_eq!((both.standing, both.act), (Standing::Sound, SafeAct::GoOn));
}

#[test]
fn hands_stay_off_the_body_until_it_can_not_be_live() {
    let plain = State::default().with(Pair::L1N, volts(120.0));
    let of = || {
        Survey::new(
            ServiceKind::Amp50,
            Place::Coach,
            Meter::usual(),
            vec![plain],
        )
        .unwrap()
    };
    let judgement = judge(&of());
    assert!(faults(&judgement).contains(&Fault::LineGroundSwapped));
    assert_eq!(faults(&judgement).first(), Some(&Fault::Healthy));
    assert_eq!(judgement.act, SafeAct::DontTouch);
    // Body metal read dead against the soil.
    let judgement = judge(&of().without(Fault::LineGroundSwapped));
    assert!(!faults(&judgement).contains(&Fault::LineGroundSwapped));
    assert_eq!(judgement.act, SafeAct::MeasureOn);
}

#[test]
fn another_supply_is_gone_on_with_only_at_a_level_that_appliances_take() {
    for (leg, lines, act) in [
        (120.0, 207.8, SafeAct::GoOn),
        (120.0, 0.0, SafeAct::GoOn),
        (140.0, 0.0, SafeAct::SupplyAway),
    ] {
        let read = [leg, leg, lines, leg, leg, 0.2];
        let judgement = judged(Place::Coach, vec![state((None, None), read)]);
        let first = judgement.consistent.first().unwrap();
        assert!(
            matches!(first.fault, Fault::Supply208 | Fault::OneLegAdapter),
            "{leg}/{lines}: {:?}",
            faults(&judgement)
        );
        assert_eq!(first.act, act, "{leg}/{lines}");
    }
}

/// 1 Ω in the neutral, 1,500 W on leg 1 and 300 W on leg 2: 111.1 and 128.9 V (Ohm's law).
#[test]
fn the_readings_of_powering_up_make_one_survey() {
    use baywalk_domain::service::survey_at;
    use baywalk_domain::supply::ReadingStep;
    let read = |step: ReadingStep| match step {
        ReadingStep::SupplyL1N | ReadingStep::SupplyL2N | ReadingStep::SupplyLG => Some(120.0),
        ReadingStep::SupplyL1L2 => Some(240.0),
        ReadingStep::SupplyNG | ReadingStep::HotSkin | ReadingStep::OutletNG => Some(0.3),
        ReadingStep::Leg1 | ReadingStep::Leg2 | ReadingStep::OutletLG => Some(120.0),
        _ => None,
    };
    let outlet = survey_at(ReadingStep::SupplyNG, ServiceKind::Amp50, &read).unwrap();
    assert_eq!((outlet.place(), outlet.states().len()), (Place::Outlet, 1));
    assert_eq!(judge(&outlet).act, SafeAct::GoOn);
    let coach = survey_at(ReadingStep::OutletNG, ServiceKind::Amp50, &read).unwrap();
    let judgement = judge(&coach);
    assert_eq!(
        (judgement.standing, judgement.act),
        (Standing::SoFar, SafeAct::MeasureOn)
    );
    let loaded = |step: ReadingStep| match step {
        ReadingStep::Load1Leg1 => Some(108.2),
        ReadingStep::Load1Leg2 => Some(131.6),
        step => read(step),
    };
    let weak = survey_at(ReadingStep::Load1Leg2, ServiceKind::Amp50, &loaded).unwrap();
    let judgement = judge(&weak);
    assert_eq!(faults(&judgement).first(), Some(&Fault::WeakNeutral));
    assert_eq!(judgement.act, SafeAct::SupplyAway);
    assert_eq!(
        survey_at(ReadingStep::DcBus, ServiceKind::Amp50, &read),
        None
    );
}
