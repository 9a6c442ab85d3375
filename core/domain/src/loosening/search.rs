//! The highest point of a posterior over one shape and linear scales, by safeguarded Newton steps.
#![expect(
    clippy::indexing_slicing,
    reason = "a numeric kernel over arrays of one size, indexed by loops of their length"
)]

use super::likelihood::{Logged, Terms};
use super::matrix::{Factor, Symmetric};
use super::{Belief, NoFit};

/// Steps after which a search has come to no end.
const STEPS: usize = 200;
/// The longest step of a logarithm.
const STRIDE: f64 = 2.0;
/// The furthest that the logarithm of a shape is followed.
const FURTHEST: f64 = 12.0;
/// What a step may still gain when the search has come to its end; the last step is still taken.
const SETTLED: f64 = 1e-10;

/// Joints whose ln λ is the same sum of coefficients.
#[derive(Debug, Clone)]
pub(super) struct Cohort {
    /// What each coefficient is multiplied with.
    pub(super) row: Vec<f64>,
    /// Their lives.
    pub(super) lives: Vec<Logged>,
}

/// Cohorts with the beliefs about ln k, the first unknown, and about each coefficient.
#[derive(Debug, Clone)]
pub(super) struct Posterior {
    /// The cohorts.
    pub(super) cohorts: Vec<Cohort>,
    /// The beliefs, one an unknown.
    pub(super) beliefs: Vec<Option<Belief>>,
}

/// The highest point.
pub(super) struct Peak {
    /// ln k, then the coefficients.
    pub(super) at: Vec<f64>,
    /// The log-likelihood there.
    pub(super) log_likelihood: f64,
    /// The curvature there, factored.
    pub(super) curvature: Factor,
}

/// The posterior at a point.
struct Point {
    log_likelihood: f64,
    value: f64,
    slope: Vec<f64>,
    bend: Symmetric,
}

impl Posterior {
    /// Climbs from a start.
    ///
    /// # Errors
    /// [`NoFit::NoEnd`] where no highest point is reached.
    pub(super) fn peak(&self, mut at: Vec<f64>) -> Result<Peak, NoFit> {
        let mut point = self.point(&at);
        for _ in 0..STEPS {
            let step = climb(&point)?;
            let gain: f64 = step.iter().zip(&point.slope).map(|(s, g)| s * g).sum();
            (at, point) = self.advance(at, &point, &step).ok_or(NoFit::NoEnd)?;
            if at[0].abs() > FURTHEST {
                return Err(NoFit::NoEnd);
            }
            if gain < SETTLED {
                return Ok(Peak {
                    at,
                    log_likelihood: point.log_likelihood,
                    curvature: point.bend.factor(0.0).ok_or(NoFit::NoEnd)?,
                });
            }
        }
        Err(NoFit::NoEnd)
    }

    /// The first shortening of a step that does not go down, beyond what rounding does.
    fn advance(&self, at: Vec<f64>, from: &Point, step: &[f64]) -> Option<(Vec<f64>, Point)> {
        let longest = step.iter().fold(0.0, |most: f64, s| most.max(s.abs()));
        let mut share = (STRIDE / longest).min(1.0);
        let rounding = 1e-13 * (1.0 + from.value.abs());
        for _ in 0..60 {
            let next: Vec<f64> = at.iter().zip(step).map(|(x, s)| x + share * s).collect();
            let point = self.point(&next);
            if point.value >= from.value - rounding && point.slope.iter().all(|g| g.is_finite()) {
                return Some((next, point));
            }
            share *= 0.5;
        }
        None
    }

    /// The log-posterior at a point, but for a constant.
    pub(super) fn value(&self, at: &[f64]) -> f64 {
        self.point(at).value
    }

    fn point(&self, at: &[f64]) -> Point {
        let size = at.len();
        let (mut value, mut slope) = (0.0, vec![0.0; size]);
        let mut bend = Symmetric::zeros(size);
        for cohort in &self.cohorts {
            let b: f64 = cohort.row.iter().zip(&at[1..]).map(|(x, c)| x * c).sum();
            let terms = Terms::of(&cohort.lives, at[0], b);
            value += terms.value;
            slope[0] += terms.a;
            bend.add(0, 0, -terms.aa);
            for (i, x) in cohort.row.iter().enumerate().filter(|(_, x)| **x != 0.0) {
                slope[i + 1] += x * terms.b;
                bend.add(i + 1, 0, -x * terms.ab);
                for (j, y) in cohort.row.iter().enumerate().take(i + 1) {
                    bend.add(i + 1, j + 1, -x * y * terms.bb);
                }
            }
        }
        let log_likelihood = value;
        for (i, belief) in self.beliefs.iter().enumerate() {
            if let Some(belief) = belief {
                let off = at[i] - belief.mean();
                value -= 0.5 * off * off * belief.weight();
                slope[i] -= off * belief.weight();
                bend.add(i, i, belief.weight());
            }
        }
        Point {
            log_likelihood,
            value,
            slope,
            bend,
        }
    }
}

/// The step of Newton; where the posterior is not rounded there, one that is bent towards the slope.
fn climb(point: &Point) -> Result<Vec<f64>, NoFit> {
    let shifts = [0.0, 1e-3, 1e-2, 0.1, 1.0, 10.0];
    let factor = shifts.iter().find_map(|shift| point.bend.factor(*shift));
    Ok(factor.ok_or(NoFit::NoEnd)?.solve(&point.slope))
}
