//! Points of a posterior over many unknowns, each with its weight.

use super::search::{Peak, Posterior};

/// How many points.
const MANY: u32 = 1024;
/// The degrees of freedom of the law that the points are drawn from: its tails hold those of any
/// posterior met here.
const FREE: f64 = 4.0;

/// Points about the highest one, weighted by the posterior over the law that they are drawn from
/// (Laplace's normal law with the tails of Student's, corrected by importance).
///
/// They are no chance: an additive recurrence fills the space evenly (the generalised golden ratio),
/// so that the same lives always tell the same.
pub(super) fn draws(posterior: &Posterior, peak: &Peak) -> Vec<(Vec<f64>, f64)> {
    let size = peak.at.len();
    // Two numbers a pair of unknowns, and two for the tail.
    let steps = steps(size.div_ceil(2) * 2 + 2);
    let top = posterior.value(&peak.at);
    let power = 0.5 * (FREE + count(size));
    let mut draws = Vec::new();
    for n in 1..=MANY {
        let even: Vec<f64> = steps
            .iter()
            .map(|step| (0.5 + step * f64::from(n)).fract())
            .collect();
        let (even, off) = student(&even, size);
        let away = peak.curvature.spread(&even);
        let at: Vec<f64> = peak.at.iter().zip(&away).map(|(x, d)| x + d).collect();
        let weight = (posterior.value(&at) - top + power * (off / FREE).ln_1p()).exp();
        if weight.is_finite() && weight > 0.0 {
            draws.push((at, weight));
        }
    }
    let whole: f64 = draws.iter().map(|(_, weight)| weight).sum();
    for (_, weight) in &mut draws {
        *weight /= whole;
    }
    draws
}

/// The steps of the recurrence in each direction: powers of one over the root of x^(d+1) = x + 1.
fn steps(directions: usize) -> Vec<f64> {
    let mut root = 1.5_f64;
    for _ in 0..60 {
        root = (1.0 + root).powf(1.0 / (count(directions) + 1.0));
    }
    let mut power = 1.0;
    (0..directions)
        .map(|_| {
            power /= root;
            power
        })
        .collect()
}

/// A point of Student's law from numbers between 0 and 1 (Box and Muller), with its squared distance.
fn student(even: &[f64], size: usize) -> (Vec<f64>, f64) {
    let (pairs, tail) = even.split_at(even.len().saturating_sub(2));
    let log = |u: &f64| u.max(1e-12).ln();
    // Minus twice the logarithm of a product of two is chi-squared with four degrees.
    let stretch = (FREE / (-2.0 * tail.iter().map(log).sum::<f64>())).sqrt();
    let mut point = Vec::with_capacity(pairs.len());
    for pair in pairs.chunks_exact(2) {
        if let [u, v] = pair {
            let (sine, cosine) = (std::f64::consts::TAU * v).sin_cos();
            let far = stretch * (-2.0 * log(u)).sqrt();
            point.extend([far * cosine, far * sine]);
        }
    }
    point.truncate(size);
    let off = point.iter().map(|x| x * x).sum();
    (point, off)
}

fn count(size: usize) -> f64 {
    u32::try_from(size).map_or(f64::MAX, f64::from)
}
