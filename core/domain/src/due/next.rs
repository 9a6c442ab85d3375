//! The next walk: so many months, or so far, whichever comes first.

use crate::coded::coded;
use crate::rig::YearlyRule;
use crate::units::{Distance, DistanceUnit, Stated};
use chrono::{Days, Months, NaiveDate};

coded! {
    /// Which limit comes first.
    DueReason as "due-reason" {
        /// The months.
        Months = "months",
        /// The distance, by the pace of the odometer notes.
        Distance = "distance",
        /// Nothing was ever walked: it is due now.
        NeverWalked = "never_walked",
    }
}

/// An odometer reading and its day.
#[derive(Debug, Clone, PartialEq)]
pub struct OdometerNote {
    /// The day.
    pub on: NaiveDate,
    /// The reading.
    pub reading: Stated<DistanceUnit>,
}

/// When the next walk is due.
#[derive(Debug, Clone, PartialEq)]
pub struct Due {
    /// The day, in the calendar of the owner's place.
    pub on: NaiveDate,
    /// Which limit it comes from.
    pub reason: DueReason,
    /// The day by the months alone.
    pub by_months: NaiveDate,
    /// The odometer at which it is due, where a distance is set and one was noted at the walk.
    pub at: Option<Distance>,
    /// The day by the distance alone, where the notes tell a pace.
    pub by_distance: Option<NaiveDate>,
}

impl Due {
    /// The odometer at which it is due, in whole units of the rule's own unit.
    #[must_use]
    pub fn at_in(&self, rule: &YearlyRule) -> Option<Stated<DistanceUnit>> {
        let unit = rule
            .distance
            .as_ref()
            .map_or(DistanceUnit::Miles, Stated::unit);
        Stated::parse(&format!("{:.0}", self.at?.in_unit(unit)), unit).ok()
    }
}

/// When the next walk is due after the last one.
///
/// Months are counted in the civil calendar: a year after 29 February is 28 February. The distance
/// is turned into a day by the average pace between the first and the last note; two notes on
/// different days are needed, and a later note that is lower than an earlier one tells no pace.
///
/// # Example
/// ```
/// use baywalk_domain::due::{DueReason, due};
/// use baywalk_domain::rig::YearlyRule;
/// use chrono::NaiveDate;
/// let rule = YearlyRule { months: 12, distance: None };
/// let leap = NaiveDate::from_ymd_opt(2028, 2, 29).ok_or("no such day")?;
/// let next = due(&rule, Some((leap, None)), &[], leap);
/// assert_eq!(next.on.to_string(), "2029-02-28");
/// assert_eq!(next.reason, DueReason::Months);
/// # Ok::<(), &str>(())
/// ```
#[must_use]
pub fn due(
    rule: &YearlyRule,
    last: Option<(NaiveDate, Option<&Stated<DistanceUnit>>)>,
    notes: &[OdometerNote],
    today: NaiveDate,
) -> Due {
    let Some((walked, odometer)) = last else {
        return Due {
            on: today,
            reason: DueReason::NeverWalked,
            by_months: today,
            at: None,
            by_distance: None,
        };
    };
    let months = Months::new(u32::from(rule.months));
    let by_months = walked.checked_add_months(months).unwrap_or(walked);
    let at = odometer
        .zip(rule.distance.as_ref())
        .and_then(|(noted, further)| {
            let sum = noted.quantity().kilometres() + further.quantity().kilometres();
            Distance::from_kilometres(sum).ok()
        });
    let by_distance = at.and_then(|limit| day_reached(notes, limit));
    let first = by_distance.filter(|day| *day < by_months);
    Due {
        on: first.unwrap_or(by_months),
        reason: first.map_or(DueReason::Months, |_| DueReason::Distance),
        by_months,
        at,
        by_distance,
    }
}

/// The day an odometer reaches a reading, by the average pace of the notes.
fn day_reached(notes: &[OdometerNote], limit: Distance) -> Option<NaiveDate> {
    let first = notes.iter().min_by_key(|note| note.on)?;
    let last = notes.iter().max_by_key(|note| note.on)?;
    let days = u32::try_from((last.on - first.on).num_days())
        .ok()
        .filter(|days| *days > 0)?;
    let far = |note: &OdometerNote| note.reading.quantity().kilometres();
    let pace = (far(last) - far(first)) / f64::from(days);
    if pace <= 0.0 {
        return None;
    }
    let left = ((limit.kilometres() - far(last)) / pace).floor().max(0.0);
    whole_days(left).and_then(|days| last.on.checked_add_days(Days::new(days)))
}

/// Turns a whole number of days into an integer; beyond a century it tells nothing.
fn whole_days(days: f64) -> Option<u64> {
    const CENTURY: f64 = 36_525.0;
    if days > CENTURY {
        return None;
    }
    format!("{days:.0}").parse().ok()
}
