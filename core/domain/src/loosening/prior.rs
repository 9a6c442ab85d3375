//! What is believed before anything was counted.

/// A normal belief about a number.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Belief {
    mean: f64,
    deviation: f64,
}

/// Why a belief can't be.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[error(
    "found a mean of {mean} with a deviation of {deviation}, expected finite numbers and a deviation above 0"
)]
pub struct BeliefFault {
    /// The mean.
    pub mean: f64,
    /// The deviation.
    pub deviation: f64,
}

impl Belief {
    /// A belief with a mean and a standard deviation.
    ///
    /// # Errors
    /// [`BeliefFault`] where one is not finite, or the deviation is not above 0.
    pub const fn new(mean: f64, deviation: f64) -> Result<Self, BeliefFault> {
        if mean.is_finite() && deviation.is_finite() && deviation > 0.0 {
            Ok(Self { mean, deviation })
        } else {
            Err(BeliefFault { mean, deviation })
        }
    }

    /// A belief that is known to be sound.
    pub(super) const fn known(mean: f64, deviation: f64) -> Self {
        Self { mean, deviation }
    }

    /// The mean.
    #[must_use]
    pub const fn mean(&self) -> f64 {
        self.mean
    }

    /// The standard deviation.
    #[must_use]
    pub const fn deviation(&self) -> f64 {
        self.deviation
    }

    /// One over the variance.
    pub(super) fn weight(&self) -> f64 {
        self.deviation.powi(-2)
    }
}

/// What is believed of a Weibull law before anything was counted; nothing where left out.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Prior {
    /// Of the logarithm of its shape.
    pub shape: Option<Belief>,
    /// Of the logarithm of its scale.
    pub scale: Option<Belief>,
}

impl Prior {
    /// Nothing is believed: the most likely law is looked for.
    pub const FLAT: Self = Self {
        shape: None,
        scale: None,
    };

    /// Weak beliefs for ages in months (ours, no source: nothing is published on terminals of
    /// vehicles). Nine in ten shapes lie in 0.44 to 2.3, about the even hazard; nine in ten scales in
    /// 10 months to 118 years, about 35 years.
    pub const WEAK: Self = Self {
        shape: Some(Belief::known(0.0, 0.5)),
        scale: Some(Belief::known(6.04, 1.5)),
    };
}
