//! The most likely Weibull law of lives.

use super::likelihood::Logged;
use super::refusal::exists;
use super::search::{Cohort, Posterior};
use super::{Law, Life, NoFit, Prior};

/// A law with how surely it is known.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fit {
    /// The law: the most likely one, or with beliefs the highest point of the posterior.
    pub law: Law,
    /// The log-likelihood of the lives under it.
    pub log_likelihood: f64,
    /// The variances of ln k and ln λ.
    pub variances: (f64, f64),
    /// Their covariance.
    pub covariance: f64,
}

impl Fit {
    /// The standard errors of ln k and ln λ.
    #[must_use]
    pub fn errors(&self) -> (f64, f64) {
        (self.variances.0.sqrt(), self.variances.1.sqrt())
    }
}

/// Fits a Weibull law to lives that are known by intervals.
///
/// Newton steps in (ln k, ln λ), with the exact slopes and curvatures, shortened until the
/// log-likelihood does not fall. Standard errors are from the curvature at the highest point.
///
/// # Errors
/// [`NoFit`] where no such law exists, or none that the lives can tell.
///
/// # Example
/// ```
/// use baywalk_domain::loosening::{Life, NoFit, Prior, fit};
/// // Two checks of 100 joints: 10 had moved at 12 months, 20 more at 24 (closed form: the shape is
/// // ln(ln 0.7 / ln 0.9) / ln 2).
/// let lives = [
///     Life::moved(0.0, 12.0)?.times(10)?,
///     Life::moved(12.0, 24.0)?.times(20)?,
///     Life::held(24.0)?.times(70)?,
/// ];
/// let found = fit(&lives, &Prior::FLAT)?;
/// assert!((found.law.shape() - 1.759_275_6).abs() < 1e-6);
/// assert!((found.law.scale() - 43.122_761_1).abs() < 1e-6);
/// let held = [Life::held(24.0)?.times(70)?];
/// assert_eq!(fit(&held, &Prior::FLAT), Err(NoFit::NoneMoved));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn fit(lives: &[Life], prior: &Prior) -> Result<Fit, NoFit> {
    let highest = highest(lives, prior)?;
    let ((shape, scale), (first, both, second)) = (highest.at, highest.spread);
    Ok(Fit {
        law: Law::new(shape.exp(), scale.exp()).ok_or(NoFit::NoEnd)?,
        log_likelihood: highest.log_likelihood,
        variances: (first, second),
        covariance: both,
    })
}

/// The posterior of one law, its highest point and how wide it is there.
pub(super) struct Highest {
    pub(super) posterior: Posterior,
    /// ln k and ln λ.
    pub(super) at: (f64, f64),
    /// The variance of ln k, the covariance, the variance of ln λ.
    pub(super) spread: (f64, f64, f64),
    log_likelihood: f64,
}

/// Finds the highest point of the posterior of one law.
pub(super) fn highest(lives: &[Life], prior: &Prior) -> Result<Highest, NoFit> {
    exists(lives, prior)?;
    let posterior = Posterior {
        cohorts: vec![Cohort {
            row: vec![1.0],
            lives: lives.iter().filter_map(Logged::new).collect(),
        }],
        beliefs: vec![prior.shape, prior.scale],
    };
    let peak = posterior.peak(vec![0.0, start(lives, prior)])?;
    let covariance = peak.curvature.inverse();
    let [shape, scale] = peak.at[..] else {
        return Err(NoFit::NoEnd);
    };
    Ok(Highest {
        posterior,
        at: (shape, scale),
        spread: (
            covariance.at(0, 0),
            covariance.at(1, 0),
            covariance.at(1, 1),
        ),
        log_likelihood: peak.log_likelihood,
    })
}

/// Where the search for ln λ starts: the joints' ages summed, over how many moved.
pub(super) fn start(lives: &[Life], prior: &Prior) -> f64 {
    let (mut ages, mut moved) = (0.0, 0.0);
    for life in lives {
        let count = f64::from(life.count());
        let middle = life.by().map(|by| 0.5 * (life.after() + by));
        ages += count * middle.unwrap_or(life.after());
        moved += middle.map_or(0.0, |_| count);
    }
    match prior.scale {
        Some(belief) if moved < 1.0 => belief.mean(),
        _ => (ages / moved.max(1.0)).ln(),
    }
}
