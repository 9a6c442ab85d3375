//! What tells when to look again: odometer and other notes, rules, putting off.

use super::{Deciding, said};
use crate::due::{Asked, MOST_PUT_OFF, Reach, Restart, RuleChange, Usage};
use crate::units::{DistanceUnit, Stated};
use crate::walk::{Refusal, Shown};
use chrono::NaiveDate;

impl Deciding<'_> {
    pub(super) fn odometer(&self, reading: &Stated<DistanceUnit>) -> Result<Shown, Refusal> {
        self.book()?;
        let mut earlier = self.context.known.odometer_now();
        if earlier.any(|note| note.reading.quantity() > reading.quantity()) {
            return Err(Refusal::OdometerBack);
        }
        Ok(Shown::default())
    }

    pub(super) fn usage(&self, usage: &Usage) -> Result<Shown, Refusal> {
        let book = self.book()?;
        match usage {
            Usage::Restart { why, .. } if *why == Restart::EarlierWrong => {
                let notes = &self.context.known.odometer;
                if notes.is_empty() {
                    Err(Refusal::NothingToMend)
                } else {
                    Ok(Shown::default())
                }
            }
            Usage::Event {
                reach: Reach::Bay(id),
                ..
            } if book.bay(*id).is_none() => Err(Refusal::NotInBook("bay")),
            Usage::Event {
                reach: Reach::Point(id),
                ..
            } if book.point(*id).is_none() => Err(Refusal::NotInBook("point")),
            _ => Ok(Shown::default()),
        }
    }

    pub(super) fn rule(&self, change: &RuleChange) -> Result<Shown, Refusal> {
        let book = self.book()?;
        match change {
            RuleChange::Set(rule) => rule.check(book).map_err(Refusal::Rule)?,
            RuleChange::Drop(id) => self.rule_is_there(*id)?,
        }
        Ok(Shown::default())
    }

    pub(super) fn put_off(
        &self,
        asked: Asked,
        until: NaiveDate,
        why: &str,
    ) -> Result<Shown, Refusal> {
        self.book()?;
        said(why)?;
        let days = (until - self.now.date()).num_days();
        if !(1..=MOST_PUT_OFF).contains(&days) {
            return Err(Refusal::PutOffTooFar);
        }
        match asked {
            Asked::Rule(id) => self.rule_is_there(id)?,
            Asked::Event(id) if !self.context.known.events.iter().any(|event| event.id == id) => {
                return Err(Refusal::NotInBook("event"));
            }
            _ => {}
        }
        Ok(Shown::default())
    }

    fn rule_is_there(&self, id: crate::ids::RuleId) -> Result<(), Refusal> {
        let mut rules = self.context.known.rules.iter();
        if rules.any(|rule| rule.id == id) {
            Ok(())
        } else {
            Err(Refusal::NotInBook("rule"))
        }
    }
}
