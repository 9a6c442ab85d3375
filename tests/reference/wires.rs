//! Conductors: ASTM B258 diameters, NEC chapter 9 table 8, IEC 60228, temperature.

use baywalk_domain::rig::{Material, Strands, WireSize};
use baywalk_domain::wire::{
    ResistanceBasis, area_mm2, diameter_mm, resistance, temperature_coefficient, temperature_factor,
};
use proptest::prelude::*;

fn size(text: &str) -> WireSize {
    WireSize::parse(text).unwrap()
}

/// Gauge; circular mils (NEC table 8, second hand); diameter in inches and area in mm² by the
/// formula of ASTM B258 (computed elsewhere).
const GAUGES: &[(&str, f64, f64, f64)] = &[
    ("18 AWG", 1620.0, 0.0403, 0.823),
    ("16 AWG", 2580.0, 0.0508, 1.31),
    ("14 AWG", 4110.0, 0.0641, 2.08),
    ("12 AWG", 6530.0, 0.0808, 3.31),
    ("10 AWG", 10380.0, 0.1019, 5.26),
    ("8 AWG", 16510.0, 0.1285, 8.37),
    ("6 AWG", 26240.0, 0.1620, 13.3),
    ("4 AWG", 41740.0, 0.2043, 21.2),
    ("3 AWG", 52620.0, 0.2294, 26.7),
    ("2 AWG", 66360.0, 0.2576, 33.6),
    ("1 AWG", 83690.0, 0.2893, 42.4),
    ("1/0 AWG", 105_600.0, 0.3249, 53.5),
    ("2/0 AWG", 133_100.0, 0.3648, 67.4),
    ("3/0 AWG", 167_800.0, 0.4096, 85.0),
    ("4/0 AWG", 211_600.0, 0.4600, 107.2),
];

#[test]
fn diameters_and_areas_of_astm_b258_second_hand() {
    for (name, mils, inches, area) in GAUGES {
        let found = diameter_mm(&size(name)) / 25.4;
        assert!((found - inches).abs() <= 0.000_051, "{name}: {found}");
        assert!(
            ((found * 1000.0).powi(2) / mils - 1.0).abs() < 0.004,
            "{name}"
        );
        assert!((area_mm2(&size(name)) / area - 1.0).abs() < 0.005, "{name}");
    }
}

/// Gauge; ohms per thousand feet at 75 °C: copper solid and stranded, tinned stranded, aluminium
/// solid and stranded; as printed.
type Ohms = (&'static str, [Option<&'static str>; 5]);

const TABLE_8: &[Ohms] = &[
    (
        "18 AWG",
        [
            Some("7.77"),
            Some("7.95"),
            Some("8.45"),
            Some("12.8"),
            Some("13.1"),
        ],
    ),
    (
        "16 AWG",
        [
            Some("4.89"),
            Some("4.99"),
            Some("5.29"),
            Some("8.05"),
            Some("8.21"),
        ],
    ),
    (
        "14 AWG",
        [
            Some("3.07"),
            Some("3.14"),
            Some("3.26"),
            Some("5.06"),
            Some("5.17"),
        ],
    ),
    (
        "12 AWG",
        [
            Some("1.93"),
            Some("1.98"),
            Some("2.05"),
            Some("3.18"),
            Some("3.25"),
        ],
    ),
    (
        "10 AWG",
        [
            Some("1.21"),
            Some("1.24"),
            Some("1.29"),
            Some("2.00"),
            Some("2.04"),
        ],
    ),
    (
        "8 AWG",
        [
            Some("0.764"),
            Some("0.778"),
            Some("0.809"),
            Some("1.26"),
            Some("1.28"),
        ],
    ),
    (
        "6 AWG",
        [None, Some("0.491"), Some("0.510"), None, Some("0.808")],
    ),
    (
        "4 AWG",
        [None, Some("0.308"), Some("0.321"), None, Some("0.508")],
    ),
    (
        "3 AWG",
        [None, Some("0.245"), Some("0.254"), None, Some("0.403")],
    ),
    (
        "2 AWG",
        [None, Some("0.194"), Some("0.201"), None, Some("0.319")],
    ),
    (
        "1 AWG",
        [None, Some("0.154"), Some("0.160"), None, Some("0.253")],
    ),
    (
        "1/0 AWG",
        [None, Some("0.122"), Some("0.127"), None, Some("0.201")],
    ),
    (
        "2/0 AWG",
        [None, Some("0.0967"), Some("0.101"), None, Some("0.159")],
    ),
    (
        "3/0 AWG",
        [None, Some("0.0766"), Some("0.0797"), None, Some("0.126")],
    ),
    (
        "4/0 AWG",
        [None, Some("0.0608"), Some("0.0626"), None, Some("0.100")],
    ),
];

const COLUMNS: [(Material, Strands); 5] = [
    (Material::Copper, Strands::Solid),
    (Material::Copper, Strands::Stranded),
    (Material::TinnedCopper, Strands::Stranded),
    (Material::Aluminium, Strands::Solid),
    (Material::Aluminium, Strands::Stranded),
];

#[test]
fn nec_table_8_second_hand() {
    for (name, ohms) in TABLE_8 {
        for ((material, strands), ohms) in COLUMNS.into_iter().zip(ohms) {
            let found = resistance(&size(name), material, strands, 75.0).unwrap();
            match ohms {
                Some(printed) => {
                    let ohms: f64 = printed.parse().unwrap();
                    let per_kft = found.ohm_per_metre * 304.8;
                    assert!((per_kft / ohms - 1.0).abs() < 1e-12, "{name} {material:?}");
                }
                None => assert_eq!(found.basis, ResistanceBasis::Calculation),
            }
        }
    }
}

/// The table over 12.6127 Ω·cmil/ft, which is copper at 75 °C, is 1.018 to 1.025: stranding
/// (computed).
#[test]
fn nec_table_8_agrees_with_resistivity_and_stranding_computed() {
    for ((name, mils, _, _), (_, ohms)) in GAUGES.iter().zip(TABLE_8) {
        let ohms: f64 = ohms[1].unwrap().parse().unwrap();
        let ratio = ohms / 1000.0 / (12.6127 / mils);
        assert!((1.015..1.030).contains(&ratio), "{name}: {ratio}");
    }
}

/// mm²; ohms per kilometre at 20 °C: class 2 copper, class 5 copper, class 2 aluminium.
const IEC_60228: &[(&str, f64, f64, Option<f64>)] = &[
    ("0.5 mm2", 36.0, 39.0, None),
    ("0.75 mm2", 24.5, 26.0, None),
    ("1 mm2", 18.1, 19.5, None),
    ("1.5 mm2", 12.1, 13.3, None),
    ("2.5 mm2", 7.41, 7.98, None),
    ("4 mm2", 4.61, 4.95, None),
    ("6 mm2", 3.08, 3.30, None),
    ("10 mm2", 1.83, 1.91, Some(3.08)),
    ("16 mm2", 1.15, 1.21, Some(1.91)),
    ("25 mm2", 0.727, 0.780, Some(1.20)),
    ("35 mm2", 0.524, 0.554, Some(0.868)),
    ("50 mm2", 0.387, 0.386, Some(0.641)),
    ("70 mm2", 0.268, 0.272, Some(0.443)),
    ("95 mm2", 0.193, 0.206, Some(0.320)),
    ("120 mm2", 0.153, 0.161, Some(0.253)),
];

#[test]
fn iec_60228_second_hand() {
    let close = |material, strands, name: &str, ohms: f64| {
        let found = resistance(&size(name), material, strands, 20.0).unwrap();
        assert!(
            (found.ohm_per_metre * 1000.0 / ohms - 1.0).abs() < 1e-12,
            "{name} {strands:?}"
        );
        assert!(matches!(found.basis, ResistanceBasis::Table { .. }));
    };
    for (name, class_2, class_5, aluminium) in IEC_60228 {
        close(Material::Copper, Strands::Stranded, name, *class_2);
        close(Material::Copper, Strands::Fine, name, *class_5);
        if let Some(aluminium) = aluminium {
            close(Material::Aluminium, Strands::Stranded, name, *aluminium);
        }
    }
}

#[test]
fn temperature_by_the_note_of_nec_table_8_from_memory() {
    // α75 is 0.00323 for copper and 0.00330 for aluminium: 0.0032315 and 0.0032988 computed.
    for (material, alpha) in [
        (Material::Copper, 0.003_231_5),
        (Material::Aluminium, 0.003_298_8),
    ] {
        let per_kelvin = temperature_factor(material, 75.0, 76.0) - 1.0;
        assert!((per_kelvin - alpha).abs() < 1e-7, "{per_kelvin}");
    }
    // (234.5 + T)/(254.5) for copper, (228.1 + T)/(248.1) for aluminium, to their printed digits.
    let copper = temperature_factor(Material::Copper, 20.0, 75.0);
    assert!((copper / ((234.5 + 75.0) / 254.5) - 1.0).abs() < 1e-3);
    let aluminium = temperature_factor(Material::Aluminium, 20.0, 75.0);
    assert!((aluminium / ((228.1 + 75.0) / 248.1) - 1.0).abs() < 1e-3);
}

#[test]
fn coefficients_of_iec_60028_second_hand() {
    assert!((temperature_coefficient(Material::Copper) - 0.003_93).abs() < 1e-12);
    assert!((temperature_coefficient(Material::Aluminium) - 0.004_03).abs() < 1e-12);
}

proptest! {
    #[test]
    fn a_thicker_gauge_has_less_resistance(gauge in -3_i8..=39, celsius in -40.0_f64..150.0) {
        for strands in [Strands::Solid, Strands::Stranded] {
            let ohms = |gauge| {
                resistance(&WireSize::Awg(gauge), Material::Copper, strands, celsius)
                    .unwrap()
                    .ohm_per_metre
            };
            prop_assert!(ohms(gauge) < ohms(gauge + 1));
        }
    }
}
