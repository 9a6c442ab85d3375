//! The exact nodal solution of a service: four terminals, their feeds, the loads between them.
#![expect(
    clippy::indexing_slicing,
    reason = "a numeric kernel over arrays of four, indexed by loops of four"
)]

use super::Pair;
use super::pair::{G, L1, L2, N};

/// A voltage as a phasor: real and imaginary part, in volts.
pub(super) type Phasor = [f64; 2];

/// What keeps the matrix regular: one gigaohm from each terminal to the source's neutral.
const REGULAR: f64 = 1e-9;

/// A source behind its conductor: what feeds one terminal.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(super) struct Feed {
    /// The voltage at the far end.
    pub(super) emf: Phasor,
    /// The conductance of the way; 0 is an open conductor.
    pub(super) siemens: f64,
}

/// A service under load.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(super) struct Circuit {
    /// What feeds L1, L2, N and G.
    pub(super) feeds: [Feed; 4],
    /// What lies between line 1 and neutral, in siemens.
    pub(super) leg_1: f64,
    /// What lies between line 2 and neutral.
    pub(super) leg_2: f64,
    /// What lies between the lines, where an open one is fed back through it.
    pub(super) lines: f64,
    /// What lies between neutral and ground.
    pub(super) bond: f64,
    /// Whether a known load ties line 1, and line 2, to the neutral. A terminal that hangs by less
    /// than that floats.
    pub(super) tied: [bool; 2],
}

/// What a meter may show at a pair: one value, or a range where a conductor floats.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(super) struct Shown {
    /// The least, in volts.
    pub(super) least: f64,
    /// The most, in volts.
    pub(super) most: f64,
}

/// A circuit that has been solved.
#[derive(Debug, Clone, Copy)]
pub(super) struct Solved {
    volts: [Phasor; 4],
    /// The voltage at the far end of each conductor.
    behind: [Phasor; 4],
    inverse: [[f64; 4]; 4],
    /// The group of terminals that hang together; 0 is tied to a source.
    group: [usize; 4],
}

impl Circuit {
    fn links(&self) -> [(usize, usize, f64, bool); 4] {
        let [one, two] = self.tied;
        [
            (L1, N, self.leg_1, one),
            (L2, N, self.leg_2, two),
            (L1, L2, self.lines, self.lines > 0.0),
            (N, G, self.bond, self.bond > 0.0),
        ]
    }

    /// Solves it.
    pub(super) fn solve(&self) -> Solved {
        let mut matrix = [[0.0; 4]; 4];
        let mut drive = [[0.0; 2]; 4];
        for (at, feed) in self.feeds.iter().enumerate() {
            matrix[at][at] = feed.siemens + REGULAR;
            drive[at] = feed.emf.map(|part| part * feed.siemens);
        }
        for (from, to, siemens, _) in self.links() {
            matrix[from][from] += siemens;
            matrix[to][to] += siemens;
            matrix[from][to] -= siemens;
            matrix[to][from] -= siemens;
        }
        let inverse = inverse(matrix);
        let mut volts = [[0.0; 2]; 4];
        for (row, out) in inverse.iter().zip(&mut volts) {
            for (weight, into) in row.iter().zip(&drive) {
                out[0] += weight * into[0];
                out[1] += weight * into[1];
            }
        }
        Solved {
            volts,
            behind: self.feeds.map(|feed| feed.emf),
            inverse,
            group: self.groups(),
        }
    }

    /// Which terminals are tied to a source (0), and which hang together without one.
    fn groups(&self) -> [usize; 4] {
        let mut group = [1, 2, 3, 4];
        for (at, feed) in self.feeds.iter().enumerate() {
            if feed.siemens > 0.0 {
                group[at] = 0;
            }
        }
        for _ in 0..3 {
            for (from, to, _, tied) in self.links() {
                if tied {
                    let least = group[from].min(group[to]);
                    group[from] = least;
                    group[to] = least;
                }
            }
        }
        group
    }
}

impl Solved {
    /// What a meter of some input shows at a pair; `ghost` is the largest part of a floating
    /// conductor's voltage that it lets stand.
    pub(super) fn shown(&self, pair: Pair, input: f64, ghost: [f64; 4]) -> Shown {
        let (a, b) = pair.ends();
        if self.group[a] == self.group[b] {
            let open = apart(self.volts[a], self.volts[b]);
            // Thévenin: what the meter sees behind the pair.
            let behind = self.inverse[a][a] - 2.0 * self.inverse[a][b] + self.inverse[b][b];
            let volts = if self.group[a] == 0 {
                open * input / (input + behind)
            } else {
                0.0
            };
            return Shown {
                least: volts,
                most: volts,
            };
        }
        let part = if self.group[a] == 0 {
            ghost[b]
        } else {
            ghost[a]
        };
        Shown {
            least: 0.0,
            most: part * self.reach(a, b),
        }
    }

    /// The largest voltage that a floating terminal can take against the other end: it lies between
    /// those of its neighbours, to which it leaks, and that of its own conductor beyond the break.
    fn reach(&self, a: usize, b: usize) -> f64 {
        let ends = |at: usize| {
            let tied = |end: &usize| self.group[*end] == 0;
            let floats = self.group[at] != 0;
            let near = (0..4).filter(move |end| *end == at || floats).filter(tied);
            let beyond = floats.then(|| self.behind[at]);
            near.map(|end| self.volts[end]).chain(beyond)
        };
        ends(a)
            .flat_map(|from| ends(b).map(move |to| apart(from, to)))
            .fold(0.0, f64::max)
    }
}

/// The magnitude of the difference of two phasors.
fn apart(a: Phasor, b: Phasor) -> f64 {
    (a[0] - b[0]).hypot(a[1] - b[1])
}

/// The inverse of a symmetric positive definite matrix, by Gauss-Jordan without pivoting.
fn inverse(mut matrix: [[f64; 4]; 4]) -> [[f64; 4]; 4] {
    for at in 0..4 {
        let pivot = matrix[at][at];
        matrix[at][at] = 1.0;
        for value in &mut matrix[at] {
            *value /= pivot;
        }
        let row = matrix[at];
        for other in (0..4).filter(|other| *other != at) {
            let factor = matrix[other][at];
            matrix[other][at] = 0.0;
            for (value, from) in matrix[other].iter_mut().zip(row) {
                *value -= factor * from;
            }
        }
    }
    matrix
}
