//! The list before.

use super::{Deciding, at_phase, said};
use crate::walk::{Phase, ReadyAnswer, ReadyItem, Refusal, Shown, WalkState};

impl Deciding<'_> {
    pub(super) fn ready(
        &self,
        walk: &WalkState,
        item: ReadyItem,
        answer: &ReadyAnswer,
    ) -> Result<Shown, Refusal> {
        at_phase(walk, Phase::Before)?;
        if let ReadyAnswer::Without(why) = answer {
            said(why)?;
            if item.is_must() {
                return Err(Refusal::MustHave(item));
            }
        }
        Ok(Shown::default())
    }
}
