//! Undo: strikes the newest act that stands.

use crate::ids::ActId;
use crate::walk::{Refusal, Shown, WalkState};

/// Sees that an act is the newest that stands. The start of a walk is not struck: a walk that was
/// begun by mistake is ended early.
pub(super) fn strike(walk: &WalkState, act: ActId) -> Result<Shown, Refusal> {
    match walk.standing.as_slice() {
        [] | [_] => Err(Refusal::NothingToStrike),
        [.., newest] if *newest == act => Ok(Shown::default()),
        [.., newest] => Err(Refusal::NotNewest { newest: *newest }),
    }
}
