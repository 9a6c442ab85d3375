//! The terminals of a service and the pairs that a meter is put across.

use crate::coded::coded;

/// Terminal of line 1.
pub(super) const L1: usize = 0;
/// Terminal of line 2.
pub(super) const L2: usize = 1;
/// Terminal of the neutral.
pub(super) const N: usize = 2;
/// Terminal of the equipment ground.
pub(super) const G: usize = 3;
/// How many pairs there are.
pub(super) const PAIRS: usize = 6;

coded! {
    /// A pair of conductors with a meter across it.
    Pair as "pair" {
        /// Line 1 to neutral.
        L1N = "l1_n",
        /// Line 2 to neutral.
        L2N = "l2_n",
        /// Line 1 to line 2.
        L1L2 = "l1_l2",
        /// Line 1 to equipment ground.
        L1G = "l1_g",
        /// Line 2 to equipment ground.
        L2G = "l2_g",
        /// Neutral to equipment ground.
        NG = "n_g",
    }
}

impl Pair {
    /// Whether it needs a second line, which a 120 V service has not.
    #[must_use]
    pub const fn needs_line_2(self) -> bool {
        matches!(self, Self::L2N | Self::L1L2 | Self::L2G)
    }

    /// Whether it is a line against the neutral: what an appliance is fed by.
    #[must_use]
    pub const fn is_leg(self) -> bool {
        matches!(self, Self::L1N | Self::L2N)
    }

    /// The two terminals.
    pub(super) const fn ends(self) -> (usize, usize) {
        match self {
            Self::L1N => (L1, N),
            Self::L2N => (L2, N),
            Self::L1L2 => (L1, L2),
            Self::L1G => (L1, G),
            Self::L2G => (L2, G),
            Self::NG => (N, G),
        }
    }
}
