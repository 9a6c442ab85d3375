//! Which points matter most: how readily each moves, times what it would do.
//!
//! A ranking, no probability of fire: the weights are one documented table (`weights.csv`), most of
//! them common practice or our own, and every rank opens into its factors.

mod cases;
mod factor;
mod facts;
mod rank;
mod weights;

pub use cases::{
    AgeBand, BehindBand, ConductorCase, CurrentBand, DistanceBand, FactorKind, HistoryCase, Nearby,
    WeightBasis,
};
pub use factor::{Factor, Finding};
pub use facts::{History, Since};
pub use rank::{MOST_RANK, Rank, ranks};
