//! Symmetric equations of a few unknowns.
#![expect(
    clippy::indexing_slicing,
    reason = "a numeric kernel over square arrays, indexed by loops of their length"
)]

/// A symmetric matrix, row by row.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Symmetric {
    size: usize,
    cells: Vec<f64>,
}

impl Symmetric {
    /// All zeros.
    pub(super) fn zeros(size: usize) -> Self {
        Self {
            size,
            cells: vec![0.0; size * size],
        }
    }

    /// One cell.
    pub(super) fn at(&self, row: usize, column: usize) -> f64 {
        self.cells[row * self.size + column]
    }

    /// Adds to a cell and to its mirror image.
    pub(super) fn add(&mut self, row: usize, column: usize, value: f64) {
        self.cells[row * self.size + column] += value;
        if row != column {
            self.cells[column * self.size + row] += value;
        }
    }

    /// The lower factor of Cholesky with `shift` times the diagonal's largest member added to the
    /// diagonal; `None` where the matrix is not positive then.
    pub(super) fn factor(&self, shift: f64) -> Option<Factor> {
        let size = self.size;
        let largest = (0..size).fold(0.0, |most: f64, i| most.max(self.at(i, i).abs()));
        let mut low = vec![0.0; size * size];
        for i in 0..size {
            for j in 0..=i {
                let known: f64 = (0..j).map(|k| low[i * size + k] * low[j * size + k]).sum();
                let sum = self.at(i, j) - known;
                if i == j {
                    let pivot = sum + shift * largest;
                    if !(pivot > 1e-14 * self.at(i, i).abs() && pivot.is_finite()) {
                        return None;
                    }
                    low[i * size + i] = pivot.sqrt();
                } else {
                    low[i * size + j] = sum / low[j * size + j];
                }
            }
        }
        Some(Factor { size, low })
    }
}

/// The lower factor of a positive matrix.
pub(super) struct Factor {
    size: usize,
    low: Vec<f64>,
}

impl Factor {
    /// Solves for a right-hand side.
    pub(super) fn solve(&self, right: &[f64]) -> Vec<f64> {
        let size = self.size;
        let mut solved = right.to_vec();
        for i in 0..size {
            let known: f64 = (0..i).map(|k| self.low[i * size + k] * solved[k]).sum();
            solved[i] = (solved[i] - known) / self.low[i * size + i];
        }
        self.spread(&solved)
    }

    /// A point that lies about zero as the inverse of the matrix spreads, made from one that lies there
    /// by one deviation each way.
    pub(super) fn spread(&self, even: &[f64]) -> Vec<f64> {
        let size = self.size;
        let mut spread = even.to_vec();
        for i in (0..size).rev() {
            let known: f64 = (i + 1..size)
                .map(|k| self.low[k * size + i] * spread[k])
                .sum();
            spread[i] = (spread[i] - known) / self.low[i * size + i];
        }
        spread
    }

    /// The inverse of the matrix.
    pub(super) fn inverse(&self) -> Symmetric {
        let mut inverse = Symmetric::zeros(self.size);
        for column in 0..self.size {
            let mut right = vec![0.0; self.size];
            right[column] = 1.0;
            for (row, value) in self.solve(&right).iter().enumerate().skip(column) {
                inverse.add(row, column, *value);
            }
        }
        inverse
    }
}
