//! How far the neutral has left the middle between the two lines.

use super::{Measured, ReadingStep};
use crate::units::{Stated, VoltageUnit};

impl ReadingStep {
    /// The two readings, line 1 and line 2 to neutral, that belong together with this one.
    #[must_use]
    pub const fn legs(self) -> Option<(Self, Self)> {
        match self {
            Self::SupplyL1N | Self::SupplyL2N => Some((Self::SupplyL1N, Self::SupplyL2N)),
            Self::Leg1 | Self::Leg2 => Some((Self::Leg1, Self::Leg2)),
            Self::Load1Leg1 | Self::Load1Leg2 => Some((Self::Load1Leg1, Self::Load1Leg2)),
            Self::Load2Leg1 | Self::Load2Leg2 => Some((Self::Load2Leg1, Self::Load2Leg2)),
            _ => None,
        }
    }
}

/// Volts by which the neutral stands nearer to line 2 than to line 1: half of what the two readings to
/// neutral differ by. Below zero it stands nearer to line 1, whose voltage is the lower one. With both
/// lines of a split phase opposite, this is the neutral's distance from their middle.
///
/// `None` where one of them was not measured.
///
/// # Example
/// ```
/// use baywalk_domain::supply::{Measured, drift};
/// use baywalk_domain::units::{Stated, VoltageUnit};
/// let volts = |text| Measured::Volts(Stated::parse(text, VoltageUnit::Volts).unwrap());
/// let drifted = drift(&volts("111.1"), &volts("128.9")).unwrap();
/// assert!((drifted + 8.9).abs() < 1e-9);
/// assert_eq!(drift(&volts("120"), &Measured::Not("no second outlet".into())), None);
/// ```
#[must_use]
pub fn drift(line_1: &Measured, line_2: &Measured) -> Option<f64> {
    let volts = |measured: &Measured| match measured {
        Measured::Volts(stated) => Some(volts(stated)),
        Measured::Works | Measured::Fails | Measured::Not(_) => None,
    };
    Some((volts(line_1)? - volts(line_2)?) / 2.0)
}

fn volts(stated: &Stated<VoltageUnit>) -> f64 {
    stated.quantity().volts()
}
