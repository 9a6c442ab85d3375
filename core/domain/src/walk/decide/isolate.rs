//! Taking a source away.

use super::{Deciding, said};
use crate::coded::Coded;
use crate::finding::{About, FindingKind};
use crate::ids::SourceId;
use crate::isolation::Wiring;
use crate::rig::{Isolation, Presence, Source, SourceKind};
use crate::walk::{Away, ReadyItem, Refusal, Shown, WalkState};

impl WalkState {
    /// Whether a source has been taken away, searched for or said to stay, and is not back.
    #[must_use]
    pub fn is_dealt_with(&self, source: SourceId) -> bool {
        self.away.contains_key(&source) && !self.restored.contains(&source)
    }
}

impl Deciding<'_> {
    pub(super) fn isolate(
        &self,
        walk: &WalkState,
        source: SourceId,
        away: &Away,
    ) -> Result<Shown, Refusal> {
        if let Some(item) = ReadyItem::ALL
            .iter()
            .find(|item| !walk.ready.contains_key(item))
        {
            return Err(Refusal::NotReady(*item));
        }
        let book = self.book()?;
        let record = book
            .live_sources()
            .find(|record| record.id == source)
            .ok_or(Refusal::NotInBook("source"))?;
        if walk.away.contains_key(&source) && !walk.restored.contains(&source) {
            return Err(Refusal::SourceDone(source));
        }
        self.solar_first(walk, record)?;
        let mut shown = Shown::default();
        match away {
            Away::Isolated(_) if record.isolation == Isolation::Never => {
                return Err(Refusal::SourceNotAway(source));
            }
            Away::Isolated(_) => {}
            Away::NotFound(_) if record.presence == Presence::NotSure => {
                let raised = self.raise(FindingKind::SourceUnknown, About::Source(source));
                shown.findings.push(raised);
            }
            Away::NotFound(_) => return Err(Refusal::SourceNotAway(source)),
            Away::Stays(why) => said(why)?,
        }
        Ok(shown)
    }

    /// Solar is open, under no load, before a battery that it reaches leaves it.
    fn solar_first(&self, walk: &WalkState, record: &Source) -> Result<(), Refusal> {
        if !matches!(
            record.kind,
            SourceKind::HouseBattery | SourceKind::ChassisBattery
        ) {
            return Ok(());
        }
        let book = self.book()?;
        let waits = |source: &SourceId| {
            let solar = |source: &Source| source.kind == SourceKind::Solar;
            book.source(*source).is_some_and(solar) && !walk.is_dealt_with(*source)
        };
        let meeting = Wiring::of(book).feeding().meeting(record.id);
        match meeting.into_iter().find(waits) {
            Some(first) => Err(Refusal::SourceFirst(first)),
            None => Ok(()),
        }
    }
}
