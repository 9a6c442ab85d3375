//! What is believed of a law after lives were counted: many laws, each with its weight.

use super::fit::{Highest, highest};
use super::{Law, Life, NoFit, Prior};

/// Laws with weights that sum to one.
///
/// For lives of one kind they stand on a grid over (ln k, ln λ), turned and scaled by the curvature at
/// the highest point.
#[derive(Debug, Clone, PartialEq)]
pub struct Cloud {
    laws: Vec<(Law, f64)>,
}

/// Points on each side of the middle, and the way between them in standard deviations.
#[derive(Debug, Clone, Copy)]
struct Grid {
    half: i32,
    step: f64,
}

/// Six deviations each way.
const EXACT: Grid = Grid {
    half: 24,
    step: 0.25,
};

impl Cloud {
    /// The posterior of lives of one kind, by quadrature: the likelihood times the belief at each
    /// point of the grid.
    ///
    /// # Errors
    /// [`NoFit`] where there is no highest point.
    ///
    /// # Example
    /// ```
    /// use baywalk_domain::loosening::{Cloud, Life, Prior};
    /// let lives = [Life::moved(0.0, 12.0)?.times(6)?, Life::held(24.0)?.times(14)?];
    /// let cloud = Cloud::exact(&lives, &Prior::WEAK)?;
    /// let (least, most) = cloud.interval(0.9, |law| law.moved_by(12.0));
    /// let mean = cloud.mean(|law| law.moved_by(12.0));
    /// assert!(0.0 < least && least < mean && mean < most && most < 1.0);
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    pub fn exact(lives: &[Life], prior: &Prior) -> Result<Self, NoFit> {
        let Highest {
            posterior,
            at: (a, b),
            spread,
            ..
        } = highest(lives, prior)?;
        let top = posterior.value(&[a, b]);
        Self::over(EXACT, (a, b), spread, |a, b| {
            (posterior.value(&[a, b]) - top).exp()
        })
    }

    /// Laws with weights of any sum.
    pub(super) fn of(mut laws: Vec<(Law, f64)>) -> Result<Self, NoFit> {
        let whole: f64 = laws.iter().map(|(_, weight)| weight).sum();
        if !(whole > 0.0 && whole.is_finite()) {
            return Err(NoFit::NoEnd);
        }
        for (_, weight) in &mut laws {
            *weight /= whole;
        }
        Ok(Self { laws })
    }

    /// Laws on a grid; the weight is told from ln k and ln λ.
    fn over(
        grid: Grid,
        (a, b): (f64, f64),
        (aa, ab, bb): (f64, f64, f64),
        weight: impl Fn(f64, f64) -> f64,
    ) -> Result<Self, NoFit> {
        let first = aa.sqrt();
        let mixed = ab / first;
        let second = (bb - mixed * mixed).max(0.0).sqrt();
        let mut laws = Vec::new();
        for i in -grid.half..=grid.half {
            for j in -grid.half..=grid.half {
                let (u, v) = (f64::from(i) * grid.step, f64::from(j) * grid.step);
                let (a, b) = (a + first * u, b + mixed * u + second * v);
                let heavy = weight(a, b);
                let law = Law::new(a.exp(), b.exp()).filter(|_| heavy > 0.0);
                laws.extend(law.map(|law| (law, heavy)));
            }
        }
        Self::of(laws)
    }

    /// The mean of what each law tells.
    #[must_use]
    pub fn mean(&self, tells: impl Fn(&Law) -> f64) -> f64 {
        self.laws
            .iter()
            .map(|(law, weight)| weight * tells(law))
            .sum()
    }

    /// Between what limits the laws tell it, with a confidence and as much left out on either side.
    #[must_use]
    pub fn interval(&self, confidence: f64, tells: impl Fn(&Law) -> f64) -> (f64, f64) {
        let mut told: Vec<(f64, f64)> = self
            .laws
            .iter()
            .map(|(law, weight)| (tells(law), *weight))
            .collect();
        told.sort_by(|x, y| x.0.total_cmp(&y.0));
        let tail = 0.5 * (1.0 - confidence);
        (quantile(&told, tail), quantile(&told, 1.0 - tail))
    }
}

/// The value below which a share of the weight lies; between two values in proportion.
fn quantile(told: &[(f64, f64)], share: f64) -> f64 {
    let (mut below, mut before) = (0.0, None);
    for (value, weight) in told {
        let middle = below + 0.5 * weight;
        if middle >= share {
            return match before {
                Some((least, from)) => {
                    let along: f64 = (share - from) / (middle - from);
                    least + (value - least) * along
                }
                None => *value,
            };
        }
        before = Some((*value, middle));
        below += weight;
    }
    told.last().map_or(f64::NAN, |(value, _)| *value)
}
