//! Why no law is fitted.

use super::{Life, Prior};
use crate::coded::coded;

coded! {
    /// Why no law is fitted to lives.
    NoFit as "no-fit" {
        /// No joint was judged at an age above 0.
        Nothing = "nothing",
        /// None had moved.
        NoneMoved = "none_moved",
        /// Fewer had moved than a law can be told from: a proportion and its interval say all.
        FewMoved = "few_moved",
        /// All could have moved at one and the same age, so that the shape has no upper end.
        OneAge = "one_age",
        /// Joints moved no later than others held: some were never tight, and an age tells nothing.
        FromTheStart = "from_the_start",
        /// The search for the most likely law came to no end.
        NoEnd = "no_end",
    }
}

impl std::fmt::Display for NoFit {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(match self {
            Self::Nothing => "no life tells anything, expected ages above 0",
            Self::NoneMoved => "none of the joints had moved, expected some, or beliefs",
            Self::FewMoved => "fewer than five joints had moved, the proportion says all",
            Self::OneAge => "all could have moved at one age, expected checks at several ages",
            Self::FromTheStart => "joints moved no later than others held, no law fits that",
            Self::NoEnd => "the search came to no end, expected lives that tell a law",
        })
    }
}

impl std::error::Error for NoFit {}

/// Whether a most likely law exists.
///
/// In (k, k ln λ) the log-likelihood is concave, since the law of ln t is log-concave and so is the
/// chance of any interval (Prékopa). It has no highest point just where it still rises for k → ∞
/// (all lives share one age) or for k → 0 (every joint that moved did so before its first check,
/// and, on the average of the logarithms, no later than others still held).
pub(super) fn exists(lives: &[Life], prior: &Prior) -> Result<(), NoFit> {
    let telling = || {
        lives
            .iter()
            .filter(|life| life.by().is_some() || life.after() > 0.0)
    };
    if telling().next().is_none() {
        return Err(NoFit::Nothing);
    }
    if prior.scale.is_none() && telling().all(|life| life.by().is_none()) {
        return Err(NoFit::NoneMoved);
    }
    let held = telling().fold(0.0, |most: f64, life| most.max(life.after()));
    let moved = telling().filter_map(Life::by).fold(f64::INFINITY, f64::min);
    let endless = prior.shape.is_none() || prior.scale.is_none() && held <= 0.0;
    if endless && held <= moved {
        return Err(NoFit::OneAge);
    }
    let first = telling().all(|life| life.by().is_none() || life.after() <= 0.0);
    if prior.shape.is_none() && first && mean_log(lives, Life::by) <= mean_log(lives, still) {
        return Err(NoFit::FromTheStart);
    }
    Ok(())
}

/// The age at which a joint still held that never moved.
fn still(life: &Life) -> Option<f64> {
    Some(life.after()).filter(|age| life.by().is_none() && *age > 0.0)
}

/// The mean logarithm of the ages that a reader gives.
fn mean_log(lives: &[Life], age: impl Fn(&Life) -> Option<f64>) -> f64 {
    let (mut sum, mut count) = (0.0, 0.0);
    for life in lives {
        if let Some(age) = age(life) {
            sum += f64::from(life.count()) * age.ln();
            count += f64::from(life.count());
        }
    }
    sum / count
}
