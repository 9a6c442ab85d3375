//! Changes of the book, follow-ups: what may be outside a walk too.

use super::{Deciding, said};
use crate::finding::{Decision, FollowUp};
use crate::ids::{FindingId, RigId};
use crate::rig::BookChange;
use crate::walk::{BayStage, Phase, Refusal, Shown};

impl Deciding<'_> {
    pub(super) fn book_change(&self, change: &BookChange, rig: RigId) -> Result<Shown, Refusal> {
        match (self.context.book, change) {
            (None, BookChange::Whole(book)) if book.rig.id == rig => book.check_whole()?,
            (None, _) => return Err(Refusal::NoRig),
            (Some(_), BookChange::Whole(_)) if self.context.walk.is_some() => {
                return Err(Refusal::WalkOpen);
            }
            (Some(book), _) => {
                book.check(change)?;
                self.retiring(change)?;
            }
        }
        Ok(Shown::default())
    }

    /// An open bay can't be retired, nor a source while power is being dealt with.
    fn retiring(&self, change: &BookChange) -> Result<(), Refusal> {
        let Some(walk) = self.context.walk else {
            return Ok(());
        };
        match change {
            BookChange::Bay(bay) if bay.retired && walk.stage(bay.id) == BayStage::Open => {
                Err(Refusal::BayOpen(bay.id))
            }
            BookChange::Source(source) if source.retired && walk.phase != Phase::Before => {
                Err(Refusal::Phase {
                    found: walk.phase,
                    expected: Phase::Before,
                })
            }
            _ => Ok(()),
        }
    }

    pub(super) fn follow_up(
        &self,
        finding: FindingId,
        follow_up: &FollowUp,
    ) -> Result<Shown, Refusal> {
        let known = self
            .context
            .findings
            .iter()
            .find(|known| known.raised.id == finding);
        let in_walk = self
            .context
            .walk
            .is_some_and(|walk| walk.findings.iter().any(|raised| raised.id == finding));
        if !in_walk && !known.is_some_and(crate::finding::Finding::is_open) {
            return Err(Refusal::NoFinding);
        }
        if follow_up.decision == Decision::Accepted {
            said(&follow_up.note)?;
        }
        Ok(Shown::default())
    }
}
