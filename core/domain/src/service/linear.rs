//! A damped step of least squares for a few unknowns.
#![expect(
    clippy::indexing_slicing,
    reason = "a numeric kernel over fixed arrays, indexed by loops of their length"
)]

use super::model::UNKNOWNS;

/// The normal equations of a least-squares step.
#[derive(Debug, Clone)]
pub(super) struct Normal {
    matrix: [[f64; UNKNOWNS]; UNKNOWNS],
    right: [f64; UNKNOWNS],
}

impl Normal {
    /// No residual yet.
    pub(super) const fn new() -> Self {
        Self {
            matrix: [[0.0; UNKNOWNS]; UNKNOWNS],
            right: [0.0; UNKNOWNS],
        }
    }

    /// Adds one residual with its slopes.
    pub(super) fn add(&mut self, residual: f64, slopes: &[f64; UNKNOWNS], free: &[usize]) {
        for (row, at) in free.iter().enumerate() {
            self.right[row] -= slopes[*at] * residual;
            for (column, other) in free.iter().enumerate().take(row + 1) {
                self.matrix[row][column] += slopes[*at] * slopes[*other];
            }
        }
    }

    /// What pulls an unknown: minus half the slope of the sum of squares.
    pub(super) const fn pull(&self, row: usize) -> f64 {
        self.right[row]
    }

    /// The damped step of the rows in `kept`, by Cholesky; 0 for the others.
    pub(super) fn step(&self, kept: &[usize], damping: f64) -> [f64; UNKNOWNS] {
        let mut low = [[0.0; UNKNOWNS]; UNKNOWNS];
        let mut half = [0.0; UNKNOWNS];
        for (i, row) in kept.iter().enumerate() {
            for (j, column) in kept.iter().enumerate().take(i + 1) {
                let known: f64 = low[i].iter().zip(&low[j]).take(j).map(|(a, b)| a * b).sum();
                let sum = self.matrix[*row.max(column)][*row.min(column)] - known;
                low[i][j] = if i == j {
                    (sum + damping).max(f64::MIN_POSITIVE).sqrt()
                } else {
                    sum / low[j][j]
                };
            }
            let known: f64 = (0..i).map(|k| low[i][k] * half[k]).sum();
            half[i] = (self.right[*row] - known) / low[i][i];
        }
        let mut step = [0.0; UNKNOWNS];
        let mut solved = [0.0; UNKNOWNS];
        for i in (0..kept.len()).rev() {
            let known: f64 = (i + 1..kept.len()).map(|k| low[k][i] * solved[k]).sum();
            solved[i] = (half[i] - known) / low[i][i];
            step[kept[i]] = solved[i];
        }
        step
    }
}
