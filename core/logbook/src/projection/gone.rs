//! What was due and is asked no longer, so that a calendar that shows it can be told.

use super::RigGlance;
use crate::ledger::Numbered;
use baywalk_domain::due::{Asked, Due};
use chrono::{Months, NaiveDate};

/// Months for which it is kept: a rig is walked about once a year and its calendar told then, and a
/// season late is not too late.
const KEPT: u32 = 15;

/// Something that was due and is asked no longer.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Gone {
    /// What was asked.
    pub asked: Asked,
    /// The day on which it was due.
    pub on: NaiveDate,
    /// The number of the entry by which it went.
    pub by: u64,
    /// The day of that entry.
    pub went: NaiveDate,
}

impl Gone {
    /// Whether it is still to be told of on a day.
    #[must_use]
    pub fn tells(&self, today: NaiveDate) -> bool {
        let until = self.went.checked_add_months(Months::new(KEPT));
        until.is_none_or(|until| today <= until)
    }
}

/// What is gone behind an entry by which all this is due: what was gone before and what was due
/// before, but for what is asked again, and what is too long ago.
pub(super) fn gone(before: Option<&RigGlance>, due: &[Due], numbered: &Numbered) -> Vec<Gone> {
    let Some(before) = before else {
        return Vec::new();
    };
    let today = numbered.entry.at.date();
    let went = before.due.iter().map(|due| Gone {
        asked: due.asked,
        on: due.on,
        by: numbered.seq,
        went: today,
    });
    let asked = |gone: &Gone| due.iter().any(|due| due.asked == gone.asked);
    let all = before.gone.iter().cloned().chain(went);
    all.filter(|gone| !asked(gone) && gone.tells(today))
        .collect()
}
