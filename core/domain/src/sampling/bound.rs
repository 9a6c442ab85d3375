//! What a sample says of the points that were not gone through: the hypergeometric bound.

use super::{MOST_LIKE, SamplingFault};

/// What a sample says.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Said {
    /// The most that are loose among all of them, at the confidence that was asked for.
    pub most: u32,
    /// The most that are loose among those that were not gone through.
    pub most_of_rest: u32,
    /// How likely so few or fewer loose ones would have been seen if that many were loose.
    pub likely: f64,
}

/// What so many loose ones among so many seen of a number of like points say of all of them: the
/// largest number of loose ones under which so few or fewer would be seen with a probability above
/// one less the confidence. It holds where the sample was drawn without looking.
///
/// # Errors
/// [`SamplingFault`] where the counts can't be, or the confidence is not 0.5 to 0.999.
///
/// # Example
/// ```
/// use baywalk_domain::sampling::said;
/// // Ten of twenty outlets, none loose: with 95 % confidence at most 3 of the other ten are.
/// assert_eq!(said(20, 10, 0, 0.95)?.most_of_rest, 3);
/// assert_eq!(said(20, 20, 0, 0.95)?.most, 0);
/// assert!(said(20, 10, 11, 0.95).is_err());
/// # Ok::<(), baywalk_domain::sampling::SamplingFault>(())
/// ```
pub fn said(all: u32, seen: u32, loose: u32, confidence: f64) -> Result<Said, SamplingFault> {
    if loose > seen || seen > all {
        return Err(SamplingFault::Counts { all, seen, loose });
    }
    let size = usize::try_from(all).unwrap_or(usize::MAX);
    if size == 0 || size > MOST_LIKE {
        return Err(SamplingFault::Points { found: size });
    }
    if !(0.5..=0.999).contains(&confidence) {
        return Err(SamplingFault::Confidence { found: confidence });
    }
    let logs = Logs::up_to(all);
    let likely = |bad: u32| logs.so_few(all, bad, (seen, loose));
    // So few are ever less likely the more are loose: the largest number is found by halving.
    let (mut least, mut most) = (loose, all - (seen - loose));
    while least < most {
        let middle = least + (most - least).div_ceil(2);
        if likely(middle) > 1.0 - confidence {
            least = middle;
        } else {
            most = middle - 1;
        }
    }
    Ok(Said {
        most: least,
        most_of_rest: least - loose,
        likely: likely(least),
    })
}

/// The logarithms of the factorials.
struct Logs(Vec<f64>);

impl Logs {
    fn up_to(most: u32) -> Self {
        let sums = (1..=most).scan(0.0, |sum, number| {
            *sum += f64::from(number).ln();
            Some(*sum)
        });
        Self(std::iter::once(0.0).chain(sums).collect())
    }

    fn factorial(&self, number: u32) -> f64 {
        let at = usize::try_from(number).unwrap_or(usize::MAX);
        self.0.get(at).copied().unwrap_or(f64::INFINITY)
    }

    /// The logarithm of the number of ways to choose; `None` where there is none.
    fn ways(&self, of: u32, chosen: u32) -> Option<f64> {
        let rest = of.checked_sub(chosen)?;
        Some(self.factorial(of) - self.factorial(chosen) - self.factorial(rest))
    }

    /// The probability of seeing so few loose ones or fewer.
    fn so_few(&self, all: u32, bad: u32, (seen, loose): (u32, u32)) -> f64 {
        let chance = |found: u32| {
            let of_bad = self.ways(bad, found)?;
            let of_good = self.ways(all - bad, seen - found)?;
            Some((of_bad + of_good - self.ways(all, seen)?).exp())
        };
        (0..=loose).filter_map(chance).sum::<f64>().min(1.0)
    }
}
