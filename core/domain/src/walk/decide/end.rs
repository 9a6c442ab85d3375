//! Ending a walk, whole or early.

use super::{Deciding, at_phase, said};
use crate::due::{Asked, due, learned, settle};
use crate::finding::{About, FindingKind, Raised};
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
        let mut known = self.context.known.clone();
        known.take_walk(book, today, (walk, ending));
        known.unsettled.clear();
        let learned = learned(book, &known).first.map(|(on, _)| on);
        let all = due(book, &known, learned);
        let whole = all.into_iter().find(|due| due.asked == Asked::Walk);
        let next = whole.ok_or(Refusal::NoWalk)?;
        let disturbed = walk
            .points
            .values()
            .any(crate::walk::PointRecord::is_disturbed);
        let odometer = known.odometer_on(today).map(|note| &note.reading);
        Ok(DueShown {
            on: next.on,
            reason: next.reason,
            at: next.at().cloned(),
            second_look: disturbed.then(|| settle(today, odometer).on),
        })
    }
}
