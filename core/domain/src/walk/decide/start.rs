//! Starting a walk.

use super::{Deciding, said};
use crate::walk::{Refusal, Scope};

impl Deciding<'_> {
    pub(super) fn start(&self, person: &str, scope: &Scope) -> Result<(), Refusal> {
        let book = self.book()?;
        if self.context.walk.is_some() {
            return Err(Refusal::WalkOpen);
        }
        said(person)?;
        if let Scope::Bays(bays) = scope {
            let known = |id| book.bay(id).is_some_and(|bay| !bay.retired);
            if bays.is_empty() || !bays.iter().all(|bay| known(*bay)) {
                return Err(Refusal::NotInBook("bay"));
            }
        }
        if let Scope::SecondLook(points) = scope {
            let waits = |point| self.context.known.unsettled.contains(point);
            if points.is_empty() || !points.iter().all(waits) {
                return Err(Refusal::NotInBook("point"));
            }
        }
        Ok(())
    }
}
