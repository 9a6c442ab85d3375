//! Published facts on glowing joints, for the help text.

/// A joint that glowed in a published trial.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Glow {
    /// Its heat in watts.
    pub watts: f64,
    /// The current in amperes.
    pub amperes: f64,
}

impl Glow {
    /// The drop across it in volts, P/I.
    #[must_use]
    pub fn volts(&self) -> f64 {
        self.watts / self.amperes
    }

    /// Its resistance in ohms, P/I².
    #[must_use]
    pub fn ohms(&self) -> f64 {
        self.watts / (self.amperes * self.amperes)
    }
}

/// Glowing joints of NBSIR 76-1011 and NBS Building Science Series 103 (second hand): up to 35 W at
/// 15 A, and 5 W at 0.8 A. Neither breaker, fuse nor ground-fault device trips on them.
///
/// # Example
/// ```
/// use baywalk_domain::joint::GLOW;
/// let [largest, _] = GLOW;
/// assert!((largest.volts() - 2.33).abs() < 0.005 && (largest.ohms() - 0.156).abs() < 0.0005);
/// ```
pub const GLOW: [Glow; 2] = [
    Glow {
        watts: 35.0,
        amperes: 15.0,
    },
    Glow {
        watts: 5.0,
        amperes: 0.8,
    },
];
