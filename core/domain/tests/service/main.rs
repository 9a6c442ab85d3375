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
        assert_eq!(judgement.standing, Standing::Sound);
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
    assert_eq!(judgement.act, SafeAct::MeasureLater);
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
