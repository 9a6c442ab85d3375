//! Millivolts across a joint at a current: its resistance and its heat.

use crate::units::{Current, Voltage};

/// A resistance in millionths of an ohm, from 0 to 10 Ω.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct MicroOhms(f64);

/// The most that is taken for a joint, in micro-ohms: 10 Ω.
const MOST: f64 = 10e6;
/// The least current at which a drop is judged, in amperes. Ours: below it a hand meter's last digit
/// is all there is to see.
const LEAST_CURRENT: f64 = 0.5;

/// Why a joint can't be judged.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum JointFault {
    /// The current is too small for a drop to say something.
    #[error("{amperes} A is too little to judge a joint by; expected {LEAST_CURRENT} A or more")]
    Current {
        /// The current.
        amperes: f64,
    },
    /// A resistance that no joint has.
    #[error("{micro_ohms} micro-ohms; expected 0 to {MOST}")]
    Resistance {
        /// What was found.
        micro_ohms: f64,
    },
    /// A meter error that is none.
    #[error("a meter error of {volts} V; expected 0 or more")]
    Error {
        /// What was found.
        volts: f64,
    },
    /// Too few joints of a kind.
    #[error("{found} joint; expected 2 or more like joints")]
    TooFew {
        /// How many were found.
        found: usize,
    },
    /// The lowest like joint reads nothing.
    #[error("the lowest joint reads 0 micro-ohms; expected a meter that can still see it")]
    Nothing,
    /// A length or resistance of wire that is none.
    #[error("{metres} m of wire at {ohm_per_metre} ohm a metre; expected both above 0")]
    Wire {
        /// The length.
        metres: f64,
        /// The resistance of a metre.
        ohm_per_metre: f64,
    },
}

impl MicroOhms {
    /// Takes a resistance in micro-ohms.
    ///
    /// # Errors
    /// [`JointFault::Resistance`] below 0 and above 10 Ω.
    pub fn new(micro_ohms: f64) -> Result<Self, JointFault> {
        if (0.0..=MOST).contains(&micro_ohms) {
            Ok(Self(micro_ohms))
        } else {
            Err(JointFault::Resistance { micro_ohms })
        }
    }

    /// The number of micro-ohms.
    #[must_use]
    pub const fn micro_ohms(self) -> f64 {
        self.0
    }
}

/// What a drop at a current says of a joint.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Measured {
    /// Its resistance: drop over current.
    pub resistance: MicroOhms,
    /// The least and most that the meter's error allows.
    pub range: (MicroOhms, MicroOhms),
    /// Its heat in watts: drop times current.
    pub watts: f64,
}

/// The resistance and heat of a joint by Ohm's law, R = V/I and P = V·I.
///
/// The sign of the drop only tells the direction of the current. `error` is how far the drop may be
/// off; that of the current is for the caller to keep small.
///
/// # Errors
/// [`JointFault`] below 0.5 A, above 10 Ω, and for an error below 0.
///
/// # Example
/// ```
/// use baywalk_domain::joint::measure;
/// use baywalk_domain::units::{Current, Voltage};
/// let none = Voltage::from_volts(0.0)?;
/// // Computed: 100 mV at 200 A are 500 micro-ohms and 20 W.
/// let joint = measure(Voltage::from_volts(0.1)?, Current::from_amperes(200.0)?, none)?;
/// assert!((joint.resistance.micro_ohms() - 500.0).abs() < 1e-9);
/// assert!((joint.watts - 20.0).abs() < 1e-9);
/// assert!(measure(Voltage::from_volts(0.1)?, Current::from_amperes(0.1)?, none).is_err());
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn measure(drop: Voltage, current: Current, error: Voltage) -> Result<Measured, JointFault> {
    let (volts, amperes, off) = (drop.volts().abs(), current.amperes(), error.volts());
    if amperes < LEAST_CURRENT {
        return Err(JointFault::Current { amperes });
    }
    if off < 0.0 {
        return Err(JointFault::Error { volts: off });
    }
    let ohms = |volts: f64| MicroOhms::new(volts / amperes * 1e6);
    Ok(Measured {
        resistance: ohms(volts)?,
        range: (ohms((volts - off).max(0.0))?, ohms(volts + off)?),
        watts: volts * amperes,
    })
}
