//! Ending a walk, whole or early.

use super::{Deciding, at_phase, said};
use crate::due::{OdometerNote, due, settle};
use crate::finding::{About, FindingKind, Raised};
use crate::units::{DistanceUnit, Stated};
use crate::walk::{DueShown, Ending, Phase, Refusal, Shown, WalkState};

impl Deciding<'_> {
    pub(super) fn end(&self, walk: &WalkState, ending: &Ending) -> Result<Shown, Refusal> {
        if walk.phase == Phase::Ended {
            return Err(Refusal::NoWalk);
        }
        match ending {
            Ending::Whole => self.all_done(walk)?,
            Ending::Early(why) => said(why)?,
        }
        Ok(Shown {
            findings: self.left_open(walk),
            due: Some(self.next_due(walk, ending)?),
            ..Shown::default()
        })
    }

    /// Sees that every source is back or left away, and every reading taken or said not to be.
    fn all_done(&self, walk: &WalkState) -> Result<(), Refusal> {
        at_phase(walk, Phase::PoweringUp)?;
        let book = self.book()?;
        let waiting = book
            .sources
            .iter()
            .find(|source| walk.waits_for_power(source.id));
        if let Some(source) = waiting {
            return Err(Refusal::SourceNotAway(source.id));
        }
        let open = walk
            .steps(book)
            .into_iter()
            .find(|step| walk.reading(*step).is_none());
        if let Some(step) = open {
            return Err(Refusal::ReadingFirst(step));
        }
        walk.stopping()
            .map_or(Ok(()), |step| Err(Refusal::ReadingStops(step)))
    }

    fn left_open(&self, walk: &WalkState) -> Vec<Raised> {
        walk.open_bays()
            .map(|bay| self.raise(FindingKind::BayLeftOpen, About::Bay(bay)))
            .collect()
    }

    /// When next, told at the end: a whole walk of the whole rig starts the months anew, any other
    /// leaves them running.
    fn next_due(&self, walk: &WalkState, ending: &Ending) -> Result<DueShown, Refusal> {
        let book = self.book()?;
        let today = self.now.date();
        let counts = *ending == Ending::Whole && walk.goes_through_all(book);
        let odometer = |day| noted_on(self.context.odometer, day);
        let last = if counts {
            Some(today)
        } else {
            self.context.last_walk
        };
        let last = last.map(|day| (day, odometer(day)));
        let next = due(&book.rig.rule, last, self.context.odometer, today);
        let disturbed = walk
            .points
            .values()
            .any(crate::walk::PointRecord::is_disturbed);
        Ok(DueShown {
            on: next.on,
            reason: next.reason,
            at: next.at_in(&book.rig.rule),
            second_look: disturbed.then(|| settle(today, odometer(today)).on),
        })
    }
}

/// The newest odometer note up to a day.
fn noted_on(notes: &[OdometerNote], day: chrono::NaiveDate) -> Option<&Stated<DistanceUnit>> {
    notes
        .iter()
        .filter(|note| note.on <= day)
        .max_by_key(|note| note.on)
        .map(|note| &note.reading)
}
