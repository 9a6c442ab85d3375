//! What holds for every joint, rise and bank.
#![expect(
    clippy::unwrap_used,
    reason = "a test that can't go on stops with the reason"
)]

use baywalk_domain::bank::{self, BankFinding, BankReading, Nominal};
use baywalk_domain::joint::{
    Compared, HeatClass, INVESTIGATE_ABOVE, LoadFault, Loading, MicroOhms, Rise, against_like,
    against_wire, at_normal_load, class, measure,
};
use baywalk_domain::units::{Current, Voltage};
use proptest::prelude::*;

fn amperes(value: f64) -> Current {
    Current::from_amperes(value).unwrap()
}

fn volts(value: f64) -> Voltage {
    Voltage::from_volts(value).unwrap()
}

proptest! {
    #[test]
    fn heat_is_resistance_times_the_square_of_the_current(
        drop in -1.0..1.0_f64, current in 0.5..500.0_f64, error in 0.0..0.01_f64,
    ) {
        let joint = measure(volts(drop), amperes(current), volts(error)).unwrap();
        let watts = joint.resistance.micro_ohms() * 1e-6 * current * current;
        prop_assert!((watts - joint.watts).abs() <= 1e-9 * joint.watts.max(1.0));
        prop_assert!(joint.range.0 <= joint.resistance && joint.resistance <= joint.range.1);
    }

    #[test]
    fn the_lowest_is_never_investigated_and_scale_does_not_matter(
        joints in prop::collection::vec(1.0..1000.0_f64, 2..9), scale in 0.1..10.0_f64,
    ) {
        let of = |scale: f64| -> Vec<MicroOhms> {
            joints.iter().map(|one| MicroOhms::new(one * scale).unwrap()).collect()
        };
        let against = against_like(&of(1.0)).unwrap();
        let lowest = against.iter().map(|one| one.ratio).fold(f64::INFINITY, f64::min);
        prop_assert!((lowest - 1.0).abs() < 1e-12);
        for one in &against {
            let clear = (one.ratio - INVESTIGATE_ABOVE).abs() > 1e-9;
            prop_assert!(!clear || one.investigate == (one.ratio > INVESTIGATE_ABOVE));
        }
        for (one, scaled) in against.iter().zip(against_like(&of(scale)).unwrap()) {
            prop_assert!((one.ratio - scaled.ratio).abs() < 1e-9);
        }
    }

    #[test]
    fn more_heat_is_never_a_lesser_class(rise in -50.0..200.0_f64, more in 0.0..100.0_f64) {
        for compared in [Compared::Similar, Compared::Ambient] {
            let of = |kelvin| class(compared, Rise::new(kelvin).unwrap());
            prop_assert!(of(rise) <= of(rise + more));
        }
    }

    #[test]
    fn a_rise_at_normal_load_encloses_the_middle_exponent(
        rise in 0.5..100.0_f64, share in 0.4..2.0_f64,
    ) {
        let loading = Loading::new(amperes(50.0 * share), amperes(50.0)).unwrap();
        let (least, most) = at_normal_load(Rise::new(rise).unwrap(), &loading);
        let middle = rise * share.powf(-1.8);
        prop_assert!(least <= middle + 1e-9 && middle <= most + 1e-9);
    }

    #[test]
    fn a_bank_with_its_probes_exchanged_is_reversed(level in 2.0..14.0_f64) {
        let reading = BankReading::new(volts(-level), None, volts(0.05)).unwrap();
        let judged = bank::judge(Nominal::V12, &reading);
        prop_assert_eq!(judged.findings.first(), Some(&BankFinding::Reversed));
    }
}

/// NETA table 100.18 (second hand) with the boundary rule of this project: the next class starts
/// just above 3 and 15, and just above 10, 20 and 40.
#[test]
fn every_boundary_of_the_classes() {
    use HeatClass::{Major, Monitor, Possible, Probable, Unclassed};
    let rows = [
        (
            Compared::Similar,
            vec![
                (0.9, Unclassed),
                (1.0, Possible),
                (3.0, Possible),
                (3.01, Probable),
                (4.0, Probable),
                (15.0, Probable),
                (15.01, Major),
                (16.0, Major),
            ],
        ),
        (
            Compared::Ambient,
            vec![
                (0.9, Unclassed),
                (1.0, Possible),
                (10.0, Possible),
                (10.01, Probable),
                (11.0, Probable),
                (20.0, Probable),
                (20.01, Monitor),
                (21.0, Monitor),
                (40.0, Monitor),
                (40.01, Major),
            ],
        ),
    ];
    for (compared, row) in rows {
        for (kelvin, expected) in row {
            assert_eq!(
                class(compared, Rise::new(kelvin).unwrap()),
                expected,
                "{compared:?} {kelvin}"
            );
        }
    }
}

/// 40 % of normal load is the least (NFPA 70B-2023, 7.4.5 and 7.4.6, second hand); at just that load
/// the factors are 4.332 and 6.25 (computed).
#[test]
fn below_forty_percent_nothing_is_brought_to_normal_load() {
    let at = Loading::new(amperes(20.0), amperes(50.0)).unwrap();
    let (least, most) = at_normal_load(Rise::new(1.0).unwrap(), &at);
    assert!((least - 4.332).abs() < 5e-4 && (most - 6.25).abs() < 1e-9);
    assert!(matches!(
        Loading::new(amperes(19.9), amperes(50.0)),
        Err(LoadFault::TooLight { .. })
    ));
    assert_eq!(
        Loading::new(amperes(1.0), amperes(0.0)),
        Err(LoadFault::NoNormal)
    );
}

#[test]
fn wire_and_like_joints_refuse_what_can_not_be() {
    let joint = MicroOhms::new(100.0).unwrap();
    assert!(against_wire(joint, 0.0, 0.001).is_err());
    assert!(against_wire(joint, f64::NAN, 0.001).is_err());
    assert!(against_like(&[joint]).is_err());
    assert!(against_like(&[joint, MicroOhms::new(0.0).unwrap()]).is_err());
    assert!(MicroOhms::new(-1.0).is_err() && MicroOhms::new(f64::NAN).is_err());
}
