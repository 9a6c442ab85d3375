//! Recovery: what can be read of a damaged logbook goes into a new one, and what can't is told.
//!
//! Nothing is mended in place: the damaged store is renamed and kept. The entries up to the first
//! one that does not fit keep their bytes and their chain, filled up from a backup where one is at
//! hand and of the same chain. Behind them stands an entry that tells what is missing, and then the
//! later entries that are still proved by the digest before them, sealed anew under new numbers.
//! An open walk needs a new proof.

mod fault;
mod joined;
mod placing;
mod run;
mod salvage;

pub use fault::RecoverFault;
pub use run::{Recovered, Wish, recover};
