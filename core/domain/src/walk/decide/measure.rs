//! A reading while power comes back.

use super::{Deciding, at_phase, said};
use crate::finding::{About, FindingKind};
use crate::supply::{Measured, Reading, ReadingStep, Verdict, judge, steps_of};
use crate::walk::{Phase, Refusal, Shown, WalkState};

impl Deciding<'_> {
    pub(super) fn measure(&self, walk: &WalkState, reading: &Reading) -> Result<Shown, Refusal> {
        at_phase(walk, Phase::PoweringUp)?;
        let book = self.book()?;
        let step = reading.step;
        if !steps_of(book).contains(&step) {
            return Err(Refusal::NoSuchReading(step));
        }
        match &reading.measured {
            Measured::Not(why) => said(why)?,
            Measured::Volts(_) if step.is_voltage() => {
                said(&reading.place)?;
                self.source_back(walk, step)?;
            }
            Measured::Works | Measured::Fails if !step.is_voltage() => {
                self.source_back(walk, step)?
            }
            _ => return Err(Refusal::WrongMeasure(step)),
        }
        let before = |step: ReadingStep| match walk.reading(step) {
            Some((
                Reading {
                    measured: Measured::Volts(volts),
                    ..
                },
                _,
            )) => Some(volts.quantity().volts()),
            _ => None,
        };
        let judged = judge(reading, book.rig.service, before);
        let kind = match judged.verdict {
            Verdict::Stop => Some(FindingKind::BadReading),
            Verdict::Watch => Some(FindingKind::OddReading),
            Verdict::Expected | Verdict::Unknown => None,
        };
        Ok(Shown {
            judged: Some(judged),
            findings: kind
                .map(|kind| self.raise(kind, About::Reading(step)))
                .into_iter()
                .collect(),
            ..Shown::default()
        })
    }

    /// Sees that the source a reading needs is back.
    fn source_back(&self, walk: &WalkState, step: ReadingStep) -> Result<(), Refusal> {
        let Some(kind) = step.after() else {
            return Ok(());
        };
        let mut of_kind = self
            .book()?
            .live_sources()
            .filter(|source| source.kind == kind);
        match of_kind.find(|source| walk.waits_for_power(source.id)) {
            Some(source) => Err(Refusal::SourceFirst(source.id)),
            None => Ok(()),
        }
    }
}
