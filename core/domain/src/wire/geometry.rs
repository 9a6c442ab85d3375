//! Area and diameter of a conductor's metal.

use crate::rig::WireSize;
use std::f64::consts::FRAC_PI_4;

/// One inch in millimetres.
const INCH_MM: f64 = 25.4;

/// The nominal area of a conductor in square millimetres.
///
/// Gauges follow ASTM B258: d = 0.005 in · 92^((36 − n)/39) (formula from memory and seen second
/// hand). A circular mil is the area of a circle of one thousandth of an inch.
///
/// # Example
/// ```
/// use baywalk_domain::rig::WireSize;
/// use baywalk_domain::wire::area_mm2;
/// assert_eq!(format!("{:.1}", area_mm2(&WireSize::parse("4/0 AWG")?)), "107.2");
/// assert_eq!(format!("{:.1}", area_mm2(&WireSize::parse("250 kcmil")?)), "126.7");
/// # Ok::<(), baywalk_domain::rig::WireSizeFault>(())
/// ```
#[must_use]
pub fn area_mm2(size: &WireSize) -> f64 {
    match size {
        WireSize::Awg(gauge) => {
            let diameter = gauge_diameter_mm(*gauge);
            FRAC_PI_4 * diameter * diameter
        }
        WireSize::Kcmil(thousands) => {
            FRAC_PI_4 * f64::from(*thousands) * 1000.0 * (INCH_MM / 1000.0).powi(2)
        }
        WireSize::SquareMillimetres(area) => area.value(),
    }
}

/// The diameter in millimetres of one solid wire of that area; a stranded conductor is wider.
#[must_use]
pub fn diameter_mm(size: &WireSize) -> f64 {
    match size {
        WireSize::Awg(gauge) => gauge_diameter_mm(*gauge),
        other => (area_mm2(other) / FRAC_PI_4).sqrt(),
    }
}

fn gauge_diameter_mm(gauge: i8) -> f64 {
    0.005 * INCH_MM * 92_f64.powf((36.0 - f64::from(gauge)) / 39.0)
}
