//! Climbs to the highest log-likelihood over the innermost intervals.
#![expect(
    clippy::indexing_slicing,
    reason = "a numeric kernel over arrays of one size, indexed by classes made for them"
)]

use super::innermost::Classes;
use super::isotonic::rising;
use crate::loosening::NoFit;

/// Rounds after which the climb has come to no end.
const ROUNDS: usize = 20_000;
/// The gap at which it ends.
const SETTLED: f64 = 1e-9;

/// The highest point.
pub(super) struct Top {
    /// The chance in each innermost interval.
    pub(super) masses: Vec<f64>,
    /// The log-likelihood.
    pub(super) log_likelihood: f64,
    /// How far the condition of Kuhn and Tucker is missed.
    pub(super) gap: f64,
}

/// Climbs from equal chances.
pub(super) fn climb(classes: &Classes, size: usize) -> Result<Top, NoFit> {
    let mut masses = vec![1.0; size];
    scale(&mut masses);
    for _ in 0..ROUNDS {
        masses = minorant(classes, &masses);
        let pull = pull(classes, &masses);
        let gap = gap(&masses, &pull);
        if gap < SETTLED {
            return Ok(Top {
                log_likelihood: log_likelihood(classes, &masses),
                masses,
                gap,
            });
        }
        for (mass, pull) in masses.iter_mut().zip(&pull) {
            *mass *= pull;
        }
        scale(&mut masses);
    }
    Err(NoFit::NoEnd)
}

fn scale(masses: &mut [f64]) {
    let sum: f64 = masses.iter().sum();
    masses.iter_mut().for_each(|mass| *mass /= sum);
}

/// The chances summed up, beginning with 0.
fn summed(masses: &[f64]) -> Vec<f64> {
    let mut sum = 0.0;
    let sums = masses.iter().map(|mass| {
        sum += mass;
        sum
    });
    std::iter::once(0.0).chain(sums).collect()
}

fn log_likelihood(classes: &Classes, masses: &[f64]) -> f64 {
    let sums = summed(masses);
    let each = classes.all.iter();
    each.map(|class| class.count * (sums[class.end] - sums[class.first]).ln())
        .sum()
}

/// What each interval's chance is multiplied with by a step of expectation and maximisation: 1
/// where chance lies at the highest point, and at most 1 elsewhere.
fn pull(classes: &Classes, masses: &[f64]) -> Vec<f64> {
    let sums = summed(masses);
    let mut change = vec![0.0; masses.len() + 1];
    for class in &classes.all {
        let share = class.count / (sums[class.end] - sums[class.first]) / classes.count;
        change[class.first] += share;
        change[class.end] -= share;
    }
    let mut pull = summed(&change);
    pull.remove(0);
    pull.truncate(masses.len());
    pull
}

/// How far the condition of Kuhn and Tucker is missed.
fn gap(masses: &[f64], pull: &[f64]) -> f64 {
    let missed = masses.iter().zip(pull).map(|(mass, pull)| {
        let over = pull - 1.0;
        if *mass > 0.0 { over.abs() } else { over }
    });
    missed.fold(0.0, f64::max)
}

/// A step to the convex minorant: a Newton step of each summed chance by itself, made rising, and
/// shortened until the log-likelihood rises.
fn minorant(classes: &Classes, masses: &[f64]) -> Vec<f64> {
    let sums = summed(masses);
    let inner = masses.len() - 1;
    let (mut slope, mut bend) = (vec![0.0; inner], vec![0.0; inner]);
    for class in &classes.all {
        let share = 1.0 / (sums[class.end] - sums[class.first]);
        if class.end <= inner {
            slope[class.end - 1] += class.count * share;
            bend[class.end - 1] += class.count * share * share;
        }
        if class.first > 0 {
            slope[class.first - 1] -= class.count * share;
            bend[class.first - 1] += class.count * share * share;
        }
    }
    let wished: Vec<f64> = (0..inner)
        .map(|j| sums[j + 1] + slope[j] / bend[j])
        .collect();
    let risen = rising(&wished, &bend);
    let now = log_likelihood(classes, masses);
    let mut share = 1.0;
    for _ in 0..40 {
        let mut next = masses.to_vec();
        let mut before = 0.0;
        for j in 0..=inner {
            let goal = if j < inner {
                risen[j].clamp(0.0, 1.0)
            } else {
                1.0
            };
            next[j] += share * (goal - before - masses[j]);
            before = goal;
        }
        next.iter_mut().for_each(|mass| *mass = mass.max(0.0));
        if log_likelihood(classes, &next) > now {
            return next;
        }
        share *= 0.5;
    }
    masses.to_vec()
}
