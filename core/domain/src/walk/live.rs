//! What may still be live, as the sources were dealt with, and what it is read with.

use super::WalkState;
use crate::isolation::{Meter, Passing, Reach, Wiring};
use crate::rig::Book;

impl WalkState {
    /// Which sources may still reach each set, after those that were isolated. One that was searched
    /// for and not found counts as there.
    #[must_use]
    pub fn still_live<'a>(&self, book: &'a Book, passing: Passing) -> Reach<'a> {
        Wiring::of(book).reach(passing, |source| self.is_away(source.id))
    }

    /// The meter that was used last in this walk.
    #[must_use]
    pub fn meter(&self) -> Option<&Meter> {
        let proofs = self.bays.values().flat_map(|work| &work.proofs);
        let known = proofs.flat_map(|proof| std::iter::once(&proof.before).chain(&proof.after));
        known
            .max_by_key(|known| known.at.wall)
            .map(|known| &known.meter)
    }
}
