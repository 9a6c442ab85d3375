//! The notices that are next: what is told on which day, and when on it.

use super::Due;
use crate::ids::RigId;
use chrono::{DateTime, Days, LocalResult, NaiveDate, NaiveDateTime, NaiveTime, TimeZone};
use std::collections::BTreeMap;

/// The most notices that wait at once: phones keep 64, and some misbehave beyond.
pub const MOST_NOTICES: usize = 32;

/// The hour of the local day at which a notice is given: in the morning, while a walk can still be
/// planned for the day. Ours.
pub const HOUR: u32 = 9;

/// What is told of one rig on one day.
///
/// Days are local: an item is due on its date wherever the phone is, and a date becomes an instant
/// only where it is. The day of the notice stands in its name, so that another day is another notice.
#[derive(Debug, Clone, PartialEq)]
pub struct Notice<'a> {
    /// The rig.
    pub rig: RigId,
    /// The local day on which it is given.
    pub on: NaiveDate,
    /// How many days before they are due its items are told.
    pub early: u16,
    /// What is due.
    pub items: Vec<&'a Due>,
}

impl Notice<'_> {
    /// Its name, the same for as long as the rig has something due that day.
    #[must_use]
    pub fn name(&self) -> String {
        format!("{}@{}", self.rig, self.on)
    }

    /// The local time at which it is given.
    #[must_use]
    pub fn at(&self) -> NaiveDateTime {
        self.on
            .and_time(NaiveTime::from_hms_opt(HOUR, 0, 0).unwrap_or_default())
    }

    /// The instant at which it is given in a zone.
    #[must_use]
    pub fn instant<Z: TimeZone>(&self, zone: &Z) -> Option<DateTime<Z>> {
        instant(self.at(), zone)
    }
}

/// The instant of a local time in a zone. A time that the clocks leave out is taken as much later as
/// they are put forward; of one that comes twice, the first is taken. `None` where no hour of that day
/// and the next is in the zone.
///
/// # Example
/// ```
/// use baywalk_domain::due::instant;
/// use chrono::{FixedOffset, NaiveDate};
/// let zone = FixedOffset::west_opt(7 * 3600).ok_or("no such zone")?;
/// let nine = NaiveDate::from_ymd_opt(2027, 3, 20).and_then(|day| day.and_hms_opt(9, 0, 0));
/// let at = nine.and_then(|nine| instant(nine, &zone)).ok_or("no such time")?;
/// assert_eq!(at.to_rfc3339(), "2027-03-20T09:00:00-07:00");
/// # Ok::<(), &str>(())
/// ```
#[must_use]
pub fn instant<Z: TimeZone>(local: NaiveDateTime, zone: &Z) -> Option<DateTime<Z>> {
    match zone.from_local_datetime(&local) {
        LocalResult::Single(at) => Some(at),
        LocalResult::Ambiguous(first, _) => Some(first),
        LocalResult::None => {
            // The clock of just before the gap, let run on.
            (1..=48).find_map(|half_hours| {
                let back = chrono::Duration::minutes(30 * half_hours);
                let at = zone
                    .from_local_datetime(&local.checked_sub_signed(back)?)
                    .latest()?;
                at.checked_add_signed(back)
            })
        }
    }
}

/// The next notices of all rigs, one a rig and day, the nearest first and at most 32. What is overdue
/// stands first, on the day on which it was due, so that it is told once and not anew each day.
#[must_use]
pub fn notices<'a>(due: impl IntoIterator<Item = (RigId, &'a Due)>, early: u16) -> Vec<Notice<'a>> {
    let mut days: BTreeMap<(NaiveDate, RigId), Vec<&'a Due>> = BTreeMap::new();
    for (rig, item) in due {
        let on = item
            .on
            .checked_sub_days(Days::new(early.into()))
            .unwrap_or(item.on);
        days.entry((on, rig)).or_default().push(item);
    }
    let all = days.into_iter().map(|((on, rig), items)| Notice {
        rig,
        on,
        early,
        items,
    });
    all.take(MOST_NOTICES).collect()
}
