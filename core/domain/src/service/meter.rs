//! The meter: how far its reading may be off, and what it draws.

/// The share of a leak that a floating conductor has at the least, in ohms. Ours.
pub(super) const LEAST_LEAK: f64 = 100_000.0;

/// The accuracy class and input of an AC meter.
///
/// # Errors
/// [`MeterFault`] where a figure is outside what meters have.
///
/// # Example
/// ```
/// use baywalk_domain::service::Meter;
/// let meter = Meter::new(0.7, 2.0, 0.1, 10e6)?;
/// assert!((meter.error(120.0) - 1.04).abs() < 1e-12);
/// assert!(Meter::new(20.0, 2.0, 0.1, 10e6).is_err());
/// # Ok::<(), baywalk_domain::service::MeterFault>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Meter {
    percent: f64,
    counts: f64,
    resolution: f64,
    input: f64,
}

/// Why a meter was not taken.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[error("{figure} of the meter is {found}; expected {least} to {most}")]
pub struct MeterFault {
    /// Which figure.
    pub figure: &'static str,
    /// What was found.
    pub found: f64,
    /// The least that is taken.
    pub least: f64,
    /// The most that is taken.
    pub most: f64,
}

impl Meter {
    /// Takes the class as a data sheet gives it: percent of the reading, counts of the last digit,
    /// what one count is in volts, and the input in ohms (usually 10 MΩ; a low-impedance setting has
    /// a few kΩ).
    ///
    /// # Errors
    /// [`MeterFault`] outside 0–5 %, 0–50 counts, 0.001–1 V and 1 kΩ–1 GΩ.
    pub fn new(percent: f64, counts: f64, resolution: f64, input: f64) -> Result<Self, MeterFault> {
        let check = |figure, found: f64, least, most| {
            if found.is_finite() && (least..=most).contains(&found) {
                Ok(found)
            } else {
                Err(MeterFault {
                    figure,
                    found,
                    least,
                    most,
                })
            }
        };
        Ok(Self {
            percent: check("percent", percent, 0.0, 5.0)?,
            counts: check("counts", counts, 0.0, 50.0)?,
            resolution: check("resolution", resolution, 0.001, 1.0)?,
            input: check("input", input, 1e3, 1e9)?,
        })
    }

    /// A good hand meter: ±0.7 % and 2 counts of 0.1 V, about ±1 V at 120 V (second hand), 10 MΩ.
    #[must_use]
    pub const fn usual() -> Self {
        Self {
            percent: 0.7,
            counts: 2.0,
            resolution: 0.1,
            input: 10e6,
        }
    }

    /// How far a reading may be off, in volts, plus or minus; never less than half a digit.
    #[must_use]
    pub fn error(&self, volts: f64) -> f64 {
        (self.percent / 100.0 * volts.abs() + self.counts * self.resolution)
            .max(self.resolution / 2.0)
    }

    /// What it draws: its input in ohms.
    #[must_use]
    pub const fn input(&self) -> f64 {
        self.input
    }

    /// The largest part of a ghost voltage that this meter lets stand, 0 to 1.
    pub(super) fn ghost(&self) -> f64 {
        self.input / (self.input + LEAST_LEAK)
    }
}
