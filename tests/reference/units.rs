//! Unit factors, exact by the definitions of the pound (0.453 592 37 kg), standard gravity
//! (9.806 65 m/s²) and the inch (25.4 mm); the digits agree with scipy.constants.

use baywalk_domain::units::{Stated, TorqueUnit, Unit};
use proptest::prelude::*;

#[test]
fn one_of_each_torque_unit_in_newton_metres_by_definition() {
    let one = |unit: TorqueUnit| unit.quantity(1.0).unwrap().newton_metres();
    for (unit, newton_metres) in [
        (TorqueUnit::NewtonMetres, 1.0),
        (TorqueUnit::InchPounds, 0.112_984_829_027_616_7),
        (TorqueUnit::FootPounds, 1.355_817_948_331_400_4),
        (TorqueUnit::KilogramForceCentimetres, 0.098_066_5),
    ] {
        assert!((one(unit) / newton_metres - 1.0).abs() < 1e-15, "{unit:?}");
    }
    let twelve = TorqueUnit::InchPounds
        .quantity(12.0)
        .unwrap()
        .newton_metres();
    assert!((twelve / one(TorqueUnit::FootPounds) - 1.0).abs() < 1e-15);
    let one = TorqueUnit::NewtonMetres.quantity(1.0).unwrap();
    assert!((one.in_unit(TorqueUnit::InchPounds) - 8.850_745_791_327).abs() < 1e-12);
}

#[test]
fn the_newton_metres_printed_in_table_i_3_are_no_conversion() {
    // 120 lbf·in is printed 13.8 N·m and is 13.558 (computed): the printed inch-pounds lead.
    let stated = Stated::parse("120", TorqueUnit::InchPounds).unwrap();
    assert!((stated.quantity().newton_metres() - 13.558).abs() < 5e-4);
}

proptest! {
    #[test]
    fn typed_text_comes_back_verbatim_and_converts_within_1e_12(
        number in "[1-9][0-9]{0,2}([.,][0-9]{1,4})?",
        unit in proptest::sample::select(vec![
            TorqueUnit::NewtonMetres,
            TorqueUnit::InchPounds,
            TorqueUnit::KilogramForceCentimetres,
        ]),
    ) {
        let stated = Stated::parse(&number, unit).unwrap();
        prop_assert_eq!(stated.text(), number.as_str());
        let back = stated.quantity().in_unit(unit);
        prop_assert!((back / stated.value() - 1.0).abs() < 1e-12);
    }
}
