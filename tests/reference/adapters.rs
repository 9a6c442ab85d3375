//! Adapter correction T·L/(L + E·cos θ): statics, vectors computed elsewhere.

use baywalk_domain::torque::Adapter;
use baywalk_domain::units::{Length, Torque, TorqueUnit, Unit};

/// Torque, lever, adapter, angle in degrees, setting; the unit of length falls out.
const VECTORS: &[(f64, f64, f64, f64, f64)] = &[
    (25.0, 10.0, 1.5, 0.0, 21.739),
    (25.0, 10.0, 1.5, 45.0, 22.603),
    (25.0, 10.0, 1.5, 90.0, 25.0),
    (35.0, 9.0, 1.25, 0.0, 30.732),
];

fn inches(value: f64) -> Length {
    Length::from_millimetres(value * 25.4).unwrap()
}

#[test]
fn vectors_computed() {
    for (torque, lever, extension, degrees, setting) in VECTORS {
        let adapter = Adapter::new(inches(*lever), inches(*extension), *degrees).unwrap();
        let wanted = TorqueUnit::InchPounds.quantity(*torque).unwrap();
        let found = adapter
            .at_tool(wanted)
            .unwrap()
            .in_unit(TorqueUnit::InchPounds);
        assert!(
            (found - setting).abs() < 0.0006,
            "{found}, expected {setting}"
        );
    }
}

#[test]
fn turned_back_the_adapter_shortens_the_lever() {
    // L/(L − E) at 180°: statics.
    let adapter = Adapter::new(inches(10.0), inches(1.5), 180.0).unwrap();
    let found = adapter
        .at_tool(Torque::from_newton_metres(25.0).unwrap())
        .unwrap();
    assert!((found.newton_metres() - 25.0 * 10.0 / 8.5).abs() < 1e-9);
}

#[test]
fn what_the_tool_gives_comes_back_at_the_joint() {
    let adapter = Adapter::new(inches(9.0), inches(1.25), 30.0).unwrap();
    let joint = Torque::from_newton_metres(12.0).unwrap();
    let back = adapter.at_joint(adapter.at_tool(joint).unwrap()).unwrap();
    assert!((back.newton_metres() - 12.0).abs() < 1e-12);
}
