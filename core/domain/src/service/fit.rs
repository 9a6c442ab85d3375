//! Looks for a choice of the unknowns at which every reading lies within the meter's error.
#![expect(
    clippy::indexing_slicing,
    reason = "a numeric kernel over fixed arrays, indexed by loops of their length"
)]

use super::linear::Normal;
use super::model::{Bound, EMF, UNKNOWNS, Values, circuit, matters, shown};
use super::pair::PAIRS;
use super::survey::MOST_STATES;
use super::wiring::Wiring;
use super::{Pair, State, Survey};
use crate::coded::Coded;

/// How far a residual may stand out, in meter errors, for the solver's own sake.
pub(super) const SLACK: f64 = 1.05;
/// The search for an admissible point aims this far inside the meter's error.
const AIM: f64 = 0.9;
/// Rounds of each search.
const ROUNDS: usize = 12;
/// The step of a slope, as a share of the bounds.
const NUDGE: f64 = 1e-4;

/// The residuals of one load state, in meter errors; `None` where nothing was read.
type Row = [Option<f64>; PAIRS];

/// A wiring held against the readings.
#[derive(Debug, Clone)]
pub(super) struct Problem<'a> {
    /// What was measured.
    pub(super) survey: &'a Survey,
    /// The wiring that is tried.
    pub(super) wiring: Wiring,
    /// The bounds of its unknowns.
    pub(super) bounds: [Bound; UNKNOWNS],
}

/// A choice of the unknowns, as shares of their bounds, and how well it meets the readings.
#[derive(Debug, Clone, Copy)]
pub(super) struct Point {
    /// The choice.
    pub(super) shares: Values,
    residuals: [Row; MOST_STATES],
    cost: f64,
}

impl Point {
    /// The residuals that were read.
    fn all(&self) -> impl Iterator<Item = f64> {
        self.residuals.into_iter().flatten().flatten()
    }

    /// The largest residual, in meter errors.
    pub(super) fn worst(&self) -> f64 {
        self.all()
            .fold(0.0, |worst, residual| worst.max(residual.abs()))
    }

    /// The sum of squares of the residuals.
    pub(super) fn squares(&self) -> f64 {
        self.all().map(|residual| residual * residual).sum()
    }

    /// Whether every reading is met within the meter's error.
    pub(super) fn is_admissible(&self) -> bool {
        self.worst() <= SLACK
    }
}

impl Problem<'_> {
    /// The best point from a start: least squares first, then whatever meets every reading.
    pub(super) fn search(&self, start: Values) -> Point {
        let mut best = self.descend(start, 0.0);
        for aim in [AIM, 1.0] {
            if best.is_admissible() || best.worst() > 10.0 * SLACK {
                break;
            }
            best = self.descend(best.shares, aim);
        }
        best
    }

    /// Whether some point near a start meets every reading.
    pub(super) fn admits(&self, start: Values) -> Option<Point> {
        Some(self.descend(start, AIM)).filter(Point::is_admissible)
    }

    /// The unknowns at a choice of shares.
    pub(super) fn values(&self, shares: &Values) -> Values {
        let mut values = [0.0; UNKNOWNS];
        for ((value, bound), share) in values.iter_mut().zip(&self.bounds).zip(shares) {
            *value = bound.value(*share);
        }
        values
    }

    /// A choice with the service voltage at the level that the readings suggest.
    pub(super) fn level(&self, mut shares: Values) -> Values {
        let bound = self.bounds[EMF];
        let mut values = self.values(&shares);
        let (mut over, mut under) = (0.0, 0.0);
        for (at, state) in self.survey.states().iter().enumerate() {
            let shown = shown(self.survey.by(), &circuit(&self.wiring, at, state, &values));
            for (pair, read) in state.readings() {
                let shown = Pair::ALL
                    .iter()
                    .position(|one| *one == pair)
                    .map(|at| shown[at]);
                if let Some(shown) = shown.filter(|shown| shown.most - shown.least <= 1.0) {
                    over += read * shown.most;
                    under += shown.most * shown.most;
                }
            }
        }
        if under > 0.0 {
            values[EMF] *= over / under;
            shares[EMF] = bound.share(values[EMF]);
        }
        shares
    }

    /// How much of a coincidence it would be that floating conductors show just these readings, as
    /// a logarithm: the widest range of each load state against the meter's error.
    pub(super) fn ghosts(&self, point: &Point) -> f64 {
        let values = self.values(&point.shares);
        let mut sum = 0.0;
        for (at, state) in self.survey.states().iter().enumerate() {
            let shown = shown(self.survey.by(), &circuit(&self.wiring, at, state, &values));
            let widths = Pair::ALL.iter().zip(shown).filter_map(|(pair, shown)| {
                let error = self.survey.meter().error(state.read(*pair)?);
                Some((shown.most - shown.least) / (2.0 * error))
            });
            sum += widths.fold(1.0, f64::max).ln();
        }
        sum
    }

    /// Gauss-Newton within the bounds; residuals within `margin` weigh nothing.
    fn descend(&self, start: Values, margin: f64) -> Point {
        let free: Vec<usize> = (0..UNKNOWNS)
            .filter(|at| self.bounds[*at].most > self.bounds[*at].least)
            .collect();
        let mut now = self.point(start, margin);
        for round in 0..ROUNDS {
            if now.cost <= 0.0 {
                break;
            }
            let Some(next) = self.improve(&now, &free, margin) else {
                break;
            };
            let hopeless = round >= 1 && next.worst() > 20.0 && next.cost > 0.5 * now.cost;
            let settled = next.cost > 0.999 * now.cost;
            now = next;
            if settled || hopeless {
                break;
            }
        }
        now
    }

    /// One damped step that lowers the cost; `None` where none does.
    fn improve(&self, now: &Point, free: &[usize], margin: f64) -> Option<Point> {
        let normal = self.normal(now, free, margin);
        let kept: Vec<usize> = (0..free.len())
            .filter(|row| {
                let (share, pull) = (now.shares[free[*row]], normal.pull(*row));
                !(share <= 0.0 && pull <= 0.0 || share >= 1.0 && pull >= 0.0)
            })
            .collect();
        let step = normal.step(&kept, 1e-3);
        [1.0, 0.5, 0.2, 0.05].into_iter().find_map(|scale| {
            let mut shares = now.shares;
            for (row, at) in free.iter().enumerate() {
                shares[*at] = (shares[*at] + scale * step[row].clamp(-0.5, 0.5)).clamp(0.0, 1.0);
            }
            Some(self.point(shares, margin)).filter(|next| next.cost < now.cost)
        })
    }

    fn point(&self, shares: Values, margin: f64) -> Point {
        let values = self.values(&shares);
        let mut residuals = [[None; PAIRS]; MOST_STATES];
        for (at, state) in self.survey.states().iter().enumerate() {
            residuals[at] = self.row(at, state, &values);
        }
        let mut point = Point {
            shares,
            residuals,
            cost: 0.0,
        };
        point.cost = point
            .all()
            .map(|residual| (residual.abs() - margin).max(0.0).powi(2))
            .sum();
        point
    }

    /// The residuals of one load state.
    fn row(&self, at: usize, state: &State, values: &Values) -> Row {
        let shown = shown(self.survey.by(), &circuit(&self.wiring, at, state, values));
        let mut row = [None; PAIRS];
        for ((cell, pair), shown) in row.iter_mut().zip(Pair::ALL).zip(shown) {
            *cell = state.read(*pair).map(|read| {
                let error = self.survey.meter().error(read);
                (read.clamp(shown.least, shown.most) - read) / error
            });
        }
        row
    }

    fn normal(&self, now: &Point, free: &[usize], margin: f64) -> Normal {
        let mut normal = Normal::new();
        for (at, state) in self.survey.states().iter().enumerate() {
            let mut slopes = [[0.0; UNKNOWNS]; PAIRS];
            for unknown in free.iter().copied().filter(|unknown| matters(*unknown, at)) {
                let nudge = if now.shares[unknown] > 0.5 {
                    -NUDGE
                } else {
                    NUDGE
                };
                let mut shares = now.shares;
                shares[unknown] += nudge;
                let moved = self.row(at, state, &self.values(&shares));
                for (pair, slope) in slopes.iter_mut().enumerate() {
                    if let (Some(after), Some(before)) = (moved[pair], now.residuals[at][pair]) {
                        slope[unknown] = (after - before) / nudge;
                    }
                }
            }
            for (residual, slope) in now.residuals[at].iter().zip(&slopes) {
                if let Some(residual) = residual {
                    let out = (residual.abs() - margin).max(0.0).copysign(*residual);
                    if margin <= 0.0 || out.abs() > 0.0 {
                        normal.add(out, slope, free);
                    }
                }
            }
        }
        normal
    }
}
