//! Bringing power back, source by source.

use super::{Deciding, at_phase, said};
use crate::coded::Coded;
use crate::finding::{About, FindingKind};
use crate::ids::SourceId;
use crate::isolation::Wiring;
use crate::rig::{Book, Source, SourceKind, SupplyKind};
use crate::supply::{Judged, Reading, ReadingStep, Verdict, steps_of};
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
        let open = walk
            .steps(self.book()?)
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

    /// The newest reading of a step that counts, with its verdict: one that speaks of a source
    /// counts no longer once that was taken away again.
    #[must_use]
    pub fn reading(&self, step: ReadingStep) -> Option<&(Reading, Option<Judged>)> {
        let voided = step.source().and_then(|kind| self.voided.get(&kind));
        let before = voided.copied().unwrap_or(0);
        self.readings
            .iter()
            .skip(self.readings_before.max(before))
            .rev()
            .find(|(reading, _)| reading.step == step)
    }

    /// A step whose newest reading is not safe, or the newest of the service where its circuit is
    /// faulty.
    #[must_use]
    pub fn stopping(&self) -> Option<ReadingStep> {
        let stops = |step: &ReadingStep| {
            let judged = self.reading(*step).and_then(|(_, judged)| judged.as_ref());
            judged.is_some_and(|judged| judged.verdict == Verdict::Stop)
        };
        let by_itself = ReadingStep::ALL.iter().copied().find(stops);
        let circuit = self.service.as_ref().filter(|(_, seen)| seen.stops());
        by_itself.or(circuit.map(|(step, _)| *step))
    }

    /// The readings that powering up asks for: those of a kind of source that is left away are not.
    #[must_use]
    pub fn steps(&self, book: &Book) -> Vec<ReadingStep> {
        let mut steps = steps_of(book);
        steps.retain(|step| {
            let of_kind = |source: &&Source| Some(source.kind) == step.source();
            let mut sources = book.live_sources().filter(of_kind).peekable();
            sources.peek().is_none()
                || sources.any(|source| !self.left_away.contains_key(&source.id))
        });
        steps
    }
}
