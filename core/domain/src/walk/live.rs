//! What may still be live, as the sources were dealt with.

use super::{Away, WalkState};
use crate::ids::SourceId;
use crate::isolation::{Passing, Reach, Wiring};
use crate::rig::Book;

impl WalkState {
    /// Which sources may still reach each set, after those that were isolated. One that was searched
    /// for and not found counts as there.
    #[must_use]
    pub fn still_live<'a>(&self, book: &'a Book, passing: Passing) -> Reach<'a> {
        Wiring::of(book).reach(passing, |source| self.is_isolated(source.id))
    }

    /// Whether a source is isolated as its record says, and not back.
    #[must_use]
    pub fn is_isolated(&self, source: SourceId) -> bool {
        self.is_dealt_with(source) && matches!(self.away.get(&source), Some(Away::Isolated(_)))
    }
}
