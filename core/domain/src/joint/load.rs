//! A temperature rise brought from the load at hand to the normal load.

use super::Rise;
use crate::units::Current;

/// The exponents between which a rise follows the current: 1.6 (thermographers, from memory) to 2
/// (constant resistance and linear cooling; 1.5 to 2 measured, second hand).
pub const EXPONENTS: (f64, f64) = (1.6, 2.0);

/// Below this share of the normal load nothing is brought up to it: surveys are made at no less
/// than 40 % of normal load (NFPA 70B-2023, 7.4.5 and 7.4.6, second hand).
pub const LEAST_LOAD: f64 = 0.4;

/// The current while a rise was measured, and the normal current of the circuit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Loading {
    now: f64,
    normal: f64,
}

/// Why a rise is not brought to normal load.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum LoadFault {
    /// No normal current.
    #[error("a normal current of 0 A; expected more")]
    NoNormal,
    /// Too little current while it was measured.
    #[error("{share} of normal load; expected {LEAST_LOAD} or more")]
    TooLight {
        /// The share of the normal load, 0 to 1.
        share: f64,
    },
}

impl Loading {
    /// Takes the two currents.
    ///
    /// # Errors
    /// [`LoadFault`] where the normal current is 0, or the load below 40 % of it.
    pub fn new(now: Current, normal: Current) -> Result<Self, LoadFault> {
        let (now, normal) = (now.amperes(), normal.amperes());
        if normal <= 0.0 {
            return Err(LoadFault::NoNormal);
        }
        let share = now / normal;
        if share < LEAST_LOAD {
            return Err(LoadFault::TooLight { share });
        }
        Ok(Self { now, normal })
    }

    /// The share of the normal load that was on.
    #[must_use]
    pub fn share(&self) -> f64 {
        self.now / self.normal
    }
}

/// The rise at normal load, as a range: ΔT₂ = ΔT₁ · (I₂/I₁)ⁿ with n from 1.6 to 2.
///
/// It holds for a steady state and a resistance that stays; a loose joint's does not, so the range is
/// an orientation, never a measurement.
///
/// # Example
/// ```
/// use baywalk_domain::joint::{Loading, Rise, at_normal_load};
/// use baywalk_domain::units::Current;
/// let amperes = Current::from_amperes;
/// let loading = Loading::new(amperes(30.0)?, amperes(50.0)?)?;
/// // Computed: 10 degrees at 30 A are 22.64 to 27.78 at 50 A.
/// let (least, most) = at_normal_load(Rise::new(10.0)?, &loading);
/// assert!((least - 22.64).abs() < 0.005 && (most - 27.78).abs() < 0.005);
/// assert!(Loading::new(amperes(19.0)?, amperes(50.0)?).is_err());
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn at_normal_load(rise: Rise, loading: &Loading) -> (f64, f64) {
    let factor = loading.normal / loading.now;
    let ends = [EXPONENTS.0, EXPONENTS.1].map(|n| rise.kelvin() * factor.powf(n));
    let [a, b] = ends;
    (a.min(b), a.max(b))
}
