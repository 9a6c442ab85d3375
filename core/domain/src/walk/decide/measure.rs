//! A reading while power comes back.

use super::{Deciding, at_phase, said};
use crate::finding::{About, FindingKind};
use crate::service::{ServiceSeen, judge as judge_service, survey_at};
use crate::supply::{Judged, Measured, Reading, ReadingStep, Verdict, judge, steps_of};
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
            Measured::Not(why) => {
                said(why)?;
                self.not_instead_of_bad(walk, step)?;
            }
            Measured::Volts(_) if step.is_voltage() => {
                said(&reading.place)?;
                self.source_back(walk, step)?;
            }
            Measured::Works | Measured::Fails if !step.is_voltage() => {
                self.source_back(walk, step)?
            }
            _ => return Err(Refusal::WrongMeasure(step)),
        }
        let before = |of: ReadingStep| match walk.reading(of).map(|(reading, _)| &reading.measured)
        {
            Some(Measured::Volts(volts)) => Some(volts.quantity().volts()),
            _ => None,
        };
        let judged = judge(reading, book.rig.service, before);
        let service = self.of_service(reading, before);
        let was = walk.service.as_ref().map(|(_, seen)| seen);
        let newly =
            |is: fn(&ServiceSeen) -> bool| service.as_ref().is_some_and(is) && !was.is_some_and(is);
        let (stops, odd) = (newly(ServiceSeen::stops), newly(ServiceSeen::is_odd));
        let kind = match judged.verdict {
            Verdict::Stop => Some(FindingKind::BadReading),
            _ if stops => Some(FindingKind::BadReading),
            Verdict::Watch => Some(FindingKind::OddReading),
            Verdict::Expected | Verdict::Unknown => odd.then_some(FindingKind::OddReading),
        };
        Ok(Shown {
            judged: Some(judged),
            service,
            findings: kind
                .map(|kind| self.raise(kind, About::Reading(step)))
                .into_iter()
                .collect(),
            ..Shown::default()
        })
    }

    /// A reading that stopped the walk is not put aside by leaving it out: its source is taken away
    /// first. A part that is left out of service is another matter.
    fn not_instead_of_bad(&self, walk: &WalkState, step: ReadingStep) -> Result<(), Refusal> {
        let judged = walk.reading(step).and_then(|(_, judged)| judged.as_ref());
        let grave = |judged: &&Judged| judged.verdict == Verdict::Stop && judged.act.is_grave();
        match judged.filter(grave) {
            Some(_) => Err(Refusal::ReadingStops(step)),
            None => Ok(()),
        }
    }

    /// What the circuit of the service says with a reading, and all that was read before it there.
    fn of_service(
        &self,
        reading: &Reading,
        before: impl Fn(ReadingStep) -> Option<f64>,
    ) -> Option<ServiceSeen> {
        let Measured::Volts(read) = &reading.measured else {
            return None;
        };
        let volts = |step: ReadingStep| {
            let now = (step == reading.step).then(|| read.quantity().volts());
            now.or_else(|| before(step))
        };
        let service = self.context.book?.rig.service;
        let survey = survey_at(reading.step, service, &volts)?;
        Some(ServiceSeen::from(&judge_service(&survey)))
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
