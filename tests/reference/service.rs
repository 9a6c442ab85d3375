//! A service with a lost or failing neutral, by Ohm's law: computed values for plain loads.

use baywalk_domain::rig::ServiceKind;
use baywalk_domain::service::{Fault, Load, Meter, Pair, Place, State, Survey, judge};
use baywalk_domain::units::Voltage;

fn survey(watts: (f64, f64), volts: (f64, f64)) -> Survey {
    let volt = |value| Voltage::from_volts(value).unwrap();
    let state = State::loaded(
        Some(Load::watts(watts.0).unwrap()),
        Some(Load::watts(watts.1).unwrap()),
    )
    .with(Pair::L1N, volt(volts.0))
    .with(Pair::L2N, volt(volts.1))
    .with(Pair::L1L2, volt(volts.0 + volts.1));
    Survey::new(
        ServiceKind::Amp50,
        Place::Coach,
        Meter::usual(),
        vec![state],
    )
    .unwrap()
}

fn consistent(survey: &Survey) -> Vec<Fault> {
    judge(survey)
        .consistent
        .iter()
        .map(|one| one.fault)
        .collect()
}

/// V1 = 240 · R1 / (R1 + R2), R = 120² / P: by Ohm's law, computed.
#[test]
fn an_open_neutral_puts_the_wrong_voltage_on_each_leg() {
    let rows = [
        (1500.0, 500.0, 60.0, 180.0),
        (1500.0, 300.0, 40.0, 200.0),
        (1500.0, 100.0, 15.0, 225.0),
        (600.0, 1200.0, 160.0, 80.0),
    ];
    for (p1, p2, v1, v2) in rows {
        let faults = consistent(&survey((p1, p2), (v1, v2)));
        assert!(
            faults.contains(&Fault::OpenNeutral),
            "{p1}/{p2}: {faults:?}"
        );
        assert!(!faults.contains(&Fault::Healthy), "{p1}/{p2}: {faults:?}");
    }
}

/// 1,500 and 300 W with 0.1, 1 and 10 Ω in the neutral: computed by the same circuit.
#[test]
fn a_weak_neutral_is_found_with_its_resistance() {
    for (ohms, v1, v2) in [(1.0, 111.111, 128.889), (10.0, 75.556, 164.444)] {
        let judgement = judge(&survey((1500.0, 300.0), (v1, v2)));
        let weak = judgement
            .consistent
            .iter()
            .find(|one| one.fault == Fault::WeakNeutral);
        let span = weak
            .and_then(|one| one.ohms)
            .unwrap_or_else(|| panic!("{ohms}: {judgement:?}"));
        assert!(span.least <= ohms && ohms <= span.most, "{ohms}: {span:?}");
        assert!(
            judgement
                .consistent
                .iter()
                .all(|one| one.fault != Fault::Healthy),
            "{ohms}"
        );
    }
}

/// 0.01 Ω shifts the neutral by 0.1 V, far below a hand meter's error: nothing can be told.
#[test]
fn what_the_meter_can_not_show_is_not_claimed() {
    let judgement = judge(&survey((1500.0, 300.0), (119.9, 120.1)));
    assert_eq!(
        judgement.consistent.first().map(|one| one.fault),
        Some(Fault::Healthy)
    );
    assert!(
        judgement.consistent.iter().skip(1).all(|one| one.hidden),
        "{judgement:?}"
    );
}

/// 208Y/120: the lines are 208 V apart while each is 120 V to neutral (computed: 120 · √3).
#[test]
fn a_208_volt_supply_and_a_one_leg_adapter_are_told_apart() {
    let volt = |value| Voltage::from_volts(value).unwrap();
    for (lines, fault) in [(207.8, Fault::Supply208), (0.0, Fault::OneLegAdapter)] {
        let state = State::loaded(None, None)
            .with(Pair::L1N, volt(120.0))
            .with(Pair::L2N, volt(120.0))
            .with(Pair::L1L2, volt(lines));
        let survey = Survey::new(
            ServiceKind::Amp50,
            Place::Outlet,
            Meter::usual(),
            vec![state],
        )
        .unwrap();
        assert_eq!(consistent(&survey).first(), Some(&fault), "{lines}");
    }
}
