//! The Weibull law.

/// A Weibull law of lives: the chance of having moved by age t is 1 − exp(−(t/λ)^k).
///
/// # Example
/// ```
/// use baywalk_domain::loosening::Law;
/// // Synthetic terminals, in months (computed by two statistics libraries).
/// let law = Law::new(1.261_992, 47.670_808).ok_or("no law")?;
/// assert!((law.moved_by(12.0) - 0.160_861).abs() < 1e-6);
/// assert!((law.moved_next(12.0, 24.0) - 0.217_472).abs() < 1e-6);
/// assert!((law.age_at(0.05) - 4.530_09).abs() < 1e-5);
/// # Ok::<(), &str>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Law {
    shape: f64,
    scale: f64,
}

impl Law {
    /// The law of a shape k and a scale λ, both above 0.
    #[must_use]
    pub fn new(shape: f64, scale: f64) -> Option<Self> {
        let sound = |value: f64| value > 0.0 && value.is_finite();
        (sound(shape) && sound(scale)).then_some(Self { shape, scale })
    }

    /// The shape k: below 1 joints move early or not, above 1 they wear.
    #[must_use]
    pub const fn shape(&self) -> f64 {
        self.shape
    }

    /// The scale λ: the age by which 63 % have moved.
    #[must_use]
    pub const fn scale(&self) -> f64 {
        self.scale
    }

    /// The cumulative hazard at an age.
    #[must_use]
    pub fn hazard(&self, age: f64) -> f64 {
        (age.max(0.0) / self.scale).powf(self.shape)
    }

    /// The chance of having moved by an age.
    #[must_use]
    pub fn moved_by(&self, age: f64) -> f64 {
        -(-self.hazard(age)).exp_m1()
    }

    /// The chance that a joint that held at one age has moved by a later one.
    #[must_use]
    pub fn moved_next(&self, held: f64, by: f64) -> f64 {
        -(self.hazard(held) - self.hazard(by.max(held))).exp_m1()
    }

    /// The age by which a share of the joints has moved.
    #[must_use]
    pub fn age_at(&self, chance: f64) -> f64 {
        self.age_next(0.0, chance)
    }

    /// The age by which a joint that held at one age has moved, with a chance.
    #[must_use]
    pub fn age_next(&self, held: f64, chance: f64) -> f64 {
        let hazard = self.hazard(held) - (-chance.clamp(0.0, 1.0)).ln_1p();
        self.scale * hazard.powf(1.0 / self.shape)
    }
}
