//! Bringing power back, source by source.

use super::{Deciding, at_phase, said};
use crate::finding::{About, FindingKind};
use crate::ids::SourceId;
use crate::isolation::Wiring;
use crate::rig::{Source, SourceKind, SupplyKind};
use crate::supply::{Verdict, steps_of};
use crate::walk::{Phase, Refusal, Shown, WalkState};

impl Deciding<'_> {
    pub(super) fn power_up(&self, walk: &WalkState) -> Result<Shown, Refusal> {
        match walk.phase {
            Phase::AtBays | Phase::TakingAway => {}
            found => {
                return Err(Refusal::Phase {
                    found,
                    expected: Phase::AtBays,
                });
            }
        }
        match walk.open_bays().next() {
            Some(bay) => Err(Refusal::BayOpen(bay)),
            None => Ok(Shown::default()),
        }
    }

    pub(super) fn restore(&self, walk: &WalkState, source: SourceId) -> Result<Shown, Refusal> {
        let record = self.waiting(walk, source)?;
        self.batteries_first(walk, record)?;
        if record.kind == SourceKind::Shore {
            self.supply_measured(walk)?;
        }
        match walk.stopping() {
            Some(step) => Err(Refusal::ReadingStops(step)),
            None => Ok(Shown::default()),
        }
    }

    pub(super) fn leave_away(
        &self,
        walk: &WalkState,
        source: SourceId,
        why: &str,
    ) -> Result<Shown, Refusal> {
        self.waiting(walk, source)?;
        said(why)?;
        Ok(Shown {
            findings: vec![self.raise(FindingKind::SourceLeftAway, About::Source(source))],
            ..Shown::default()
        })
    }

    /// The source, where it waits to be brought back.
    fn waiting(&self, walk: &WalkState, source: SourceId) -> Result<&Source, Refusal> {
        at_phase(walk, Phase::PoweringUp)?;
        let record = self
            .book()?
            .source(source)
            .ok_or(Refusal::NotInBook("source"))?;
        if !walk.waits_for_power(source) {
            return Err(Refusal::SourceDone(source));
        }
        Ok(record)
    }

    /// DC comes first: batteries before solar and before every AC source.
    fn batteries_first(&self, walk: &WalkState, record: &Source) -> Result<(), Refusal> {
        let battery = |kind| matches!(kind, SourceKind::HouseBattery | SourceKind::ChassisBattery);
        if battery(record.kind) {
            return Ok(());
        }
        let book = self.book()?;
        let ac = record.supply == SupplyKind::Ac;
        let meeting = Wiring::of(book).feeding().meeting(record.id);
        let first = book.live_sources().find(|source| {
            let charged = record.kind == SourceKind::Solar && meeting.contains(&source.id);
            battery(source.kind) && (ac || charged) && walk.waits_for_power(source.id)
        });
        first.map_or(Ok(()), |source| Err(Refusal::SourceFirst(source.id)))
    }

    /// The supply is measured, or said not to be, before it is plugged in.
    fn supply_measured(&self, walk: &WalkState) -> Result<(), Refusal> {
        let open = steps_of(self.book()?)
            .into_iter()
            .find(|step| step.is_before_shore() && walk.reading(*step).is_none());
        open.map_or(Ok(()), |step| Err(Refusal::ReadingFirst(step)))
    }
}

impl WalkState {
    /// Whether a source was taken away and neither brought back nor left away.
    #[must_use]
    pub fn waits_for_power(&self, source: SourceId) -> bool {
        self.is_away(source) && !self.left_away.contains_key(&source)
    }

    /// The newest reading of a step, with its verdict.
    #[must_use]
    pub fn reading(
        &self,
        step: crate::supply::ReadingStep,
    ) -> Option<&(crate::supply::Reading, Option<crate::supply::Judged>)> {
        self.readings
            .iter()
            .skip(self.readings_before)
            .rev()
            .find(|(reading, _)| reading.step == step)
    }

    /// A step whose newest reading is not safe.
    #[must_use]
    pub fn stopping(&self) -> Option<crate::supply::ReadingStep> {
        use crate::coded::Coded;
        crate::supply::ReadingStep::ALL
            .iter()
            .copied()
            .find(|step| {
                let judged = self.reading(*step).and_then(|(_, judged)| judged.as_ref());
                judged.is_some_and(|judged| judged.verdict == Verdict::Stop)
            })
    }
}
