//! What holds for every service that is judged.
#![expect(
    clippy::unwrap_used,
    reason = "a test that can't go on stops with the reason"
)]

use baywalk_domain::coded::Coded;
use baywalk_domain::rig::ServiceKind;
use baywalk_domain::service::{
    Ask, Caution, Fault, Judgement, Load, Meter, Pair, Place, Standing, State, Survey, SurveyFault,
    judge,
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

/// 1,500 W on one leg behind 0.1 Ω a conductor: that leg falls by 2.3 V, the other rises by 1.2 V.
fn loaded_in_turn(bare: [f64; 6]) -> [State; 3] {
    let [v1, v2, lines, g1, g2, ng] = bare;
    let (near, far) = (1.15, 1.2);
    [
        state((None, None), bare),
        state(
            (Some(1500.0), None),
            [
                v1 - 2.0 * near,
                v2 + far,
                lines - near,
                g1 - near,
                g2,
                ng + near,
            ],
        ),
        state(
            (None, Some(1500.0)),
            [
                v1 + far,
                v2 - 2.0 * near,
                lines - near,
                g1,
                g2 - near,
                ng + near,
            ],
        ),
    ]
}

#[test]
fn exchanged_legs_are_no_fault() {
    let read = [119.0, 121.0, 240.0, 119.5, 120.5, 0.3];
    let exchanged = [121.0, 119.0, 240.0, 120.5, 119.5, 0.3];
    for read in [read, exchanged] {
        let judgement = judged(Place::Coach, loaded_in_turn(read).to_vec());
        assert_eq!(faults(&judgement).first(), Some(&Fault::Healthy));
        assert_eq!(judgement.standing, Standing::Sound);
        assert_eq!(judgement.act, SafeAct::GoOn);
    }
}

/// Common practice, no source: a weak neutral hides until it is loaded, on one leg and on the other.
#[test]
fn nothing_is_called_sound_before_each_leg_was_loaded() {
    let [bare, first, second] = loaded_in_turn([120.0, 120.0, 240.0, 120.0, 120.0, 0.1]);
    let asked = |judgement: &Judgement, ask| judgement.apart.iter().any(|next| next.ask == ask);
    for (states, one, two) in [
        (vec![bare], true, true),
        (vec![bare, first], false, true),
        (vec![bare, second], true, false),
    ] {
        for place in [Place::Outlet, Place::Coach] {
            let judgement = judged(place, states.clone());
            assert_eq!(judgement.standing, Standing::SoFar);
            // Loads come after plugging in: at an outlet every pair is all that can be read.
            let act = match place {
                Place::Outlet => SafeAct::GoOn,
                Place::Coach => SafeAct::MeasureOn,
            };
            assert_eq!(judgement.act, act);
            assert_eq!(
                asked(&judgement, Ask::LoadLeg1),
                one,
                "{:?}",
                judgement.apart
            );
            assert_eq!(
                asked(&judgement, Ask::LoadLeg2),
                two,
                "{:?}",
                judgement.apart
            );
        }
    }
    let small = State::loaded(Some(Load::watts(60.0).unwrap()), None)
        .with(Pair::L1N, volts(119.9))
        .with(Pair::L2N, volts(120.0));
    let judgement = judged(Place::Coach, vec![bare, small, second]);
    assert_eq!(judgement.act, SafeAct::MeasureOn, "60 W load nothing");
}

/// The legs alone do not tell which conductor is at the ground pin of a 30 A service.
#[test]
fn hands_stay_off_until_a_live_body_is_ruled_out() {
    let of = |place, states| {
        judge(&Survey::new(ServiceKind::Amp30, place, Meter::usual(), states).unwrap())
    };
    let leg = State::default().with(Pair::L1N, volts(120.0));
    assert_eq!(of(Place::Coach, vec![leg]).act, SafeAct::DontTouchYet);
    assert_eq!(of(Place::Outlet, vec![leg]).act, SafeAct::DontPlugInYet);
    let ground = leg.with(Pair::L1G, volts(120.0)).with(Pair::NG, volts(0.2));
    assert_eq!(of(Place::Coach, vec![ground]).act, SafeAct::MeasureOn);
    let load = Some(Load::watts(1500.0).unwrap());
    let loaded = State::loaded(load, None).with(Pair::L1N, volts(117.0));
    let judgement = of(Place::Coach, vec![ground, loaded]);
    assert_eq!(judgement.act, SafeAct::GoOn);
    assert_eq!(judgement.standing, Standing::Sound);
    // One leg of a 50 A service: line 2 and ground may have changed places.
    let judgement = judged(Place::Coach, vec![leg]);
    assert!(faults(&judgement).contains(&Fault::LineGroundSwapped));
    assert_eq!(judgement.act, SafeAct::DontTouchYet);
}

/// Line 1 is open and fed back by 1,500 W between the lines (38.4 Ω): it reads as a one-leg adapter
/// does, until 1,500 W on leg 1 (9.6 Ω) bring it to 120 · 9.6 / 48 = 24 V (Ohm's law, computed).
#[test]
fn an_open_line_that_is_fed_back_is_thought_of() {
    let bare = state((None, None), [120.0, 120.0, 0.0, 120.0, 120.0, 0.1]);
    let judgement = judged(Place::Coach, vec![bare]);
    assert_eq!(faults(&judgement).first(), Some(&Fault::OneLegAdapter));
    assert!(faults(&judgement).contains(&Fault::OpenLeg));
    assert_eq!(judgement.act, SafeAct::MeasureOn);
    assert!(judgement.cautions.contains(&Caution::BackFed));
    let loaded = state((Some(1500.0), None), [24.0, 119.8, 95.8, 24.0, 119.9, 0.1]);
    let judgement = judged(Place::Coach, vec![bare, loaded]);
    assert_eq!(faults(&judgement).first(), Some(&Fault::OpenLeg));
    assert_eq!(judgement.act, SafeAct::SupplyAway);
}

/// 104 to 132 V are the common cut-outs (common practice, no source); 120 · √3 = 208 V.
#[test]
fn a_supply_of_another_kind_goes_on_only_within_the_cut_outs() {
    for (level, goes) in [(120.0, true), (100.0, false)] {
        let lines = level * 3.0_f64.sqrt();
        let bare = [level, level, lines, level, level, 0.1];
        let on_1 = [
            level - 2.0,
            level + 0.4,
            lines - 1.5,
            level - 1.0,
            level,
            1.0,
        ];
        let on_2 = [
            level + 0.4,
            level - 2.0,
            lines - 1.5,
            level,
            level - 1.0,
            1.0,
        ];
        let states = vec![
            state((None, None), bare),
            state((Some(1500.0), None), on_1),
            state((None, Some(1500.0)), on_2),
        ];
        let judgement = judged(Place::Coach, states);
        assert_eq!(faults(&judgement).first(), Some(&Fault::Supply208));
        assert_eq!(
            judgement.act == SafeAct::GoOn,
            goes,
            "{level}: {judgement:?}"
        );
        assert!(judgement.cautions.contains(&Caution::LineLoadsAt208));
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
    assert_eq!(judgement.act, SafeAct::DontPlugInYet);
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
