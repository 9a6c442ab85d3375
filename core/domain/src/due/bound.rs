//! What each limit comes to: a day, where one can be told, with its range.

use super::course::Course;
use super::{Courses, DueReason, Forecast, Limit, Pace};
use crate::units::{DistanceUnit, HourUnit, Stated};
use chrono::{Days, Months, NaiveDate};

/// Days before a day of the season in which a walk counts for that season. Ours.
const SEASON_AHEAD: u64 = 60;

/// What one limit comes to.
#[derive(Debug, Clone, PartialEq)]
pub struct Bound {
    /// The kind of limit.
    pub reason: DueReason,
    /// The day and its range; `None` where the notes tell none.
    pub day: Option<Forecast>,
    /// The odometer at which it is, where it is a distance and the odometer is noted: whole units.
    pub at: Option<Stated<DistanceUnit>>,
    /// The hour meter at which it is, where it is hours and they are noted: whole hours.
    pub hours: Option<Stated<HourUnit>>,
}

impl Bound {
    /// A limit that is a day.
    pub(super) const fn on(reason: DueReason, on: Option<NaiveDate>) -> Self {
        let day = match on {
            Some(on) => Some(Forecast {
                on,
                from: on,
                to: Some(on),
            }),
            None => None,
        };
        Self {
            reason,
            day,
            at: None,
            hours: None,
        }
    }
}

/// What a limit comes to, counted from a day; events and chances are told elsewhere.
pub(super) fn bound(limit: &Limit, since: NaiveDate, courses: &Courses) -> Option<Bound> {
    match limit {
        Limit::Months(months) => {
            let on = since.checked_add_months(Months::new(u32::from(*months)));
            Some(Bound::on(DueReason::Months, on))
        }
        Limit::Season { on, .. } => {
            let counted = since.checked_add_days(Days::new(SEASON_AHEAD));
            Some(Bound::on(
                DueReason::Season,
                counted.and_then(|day| on.after(day)),
            ))
        }
        Limit::Distance(further) => {
            let more = further.quantity().kilometres();
            let (day, count) = reached(&courses.road, courses.pace.as_ref(), since, more);
            let at = count.filter(|_| courses.by_odometer);
            Some(Bound {
                reason: DueReason::Distance,
                day,
                at: at.and_then(|count| shown(courses.road.shown(count), further.unit())),
                hours: None,
            })
        }
        Limit::Hours(longer) => {
            let more = longer.quantity().hours();
            let (day, count) = reached(&courses.engine, courses.engine_pace.as_ref(), since, more);
            let hours = count.map(|count| format!("{:.0}", courses.engine.shown(count)));
            let hours = hours.and_then(|hours| Stated::parse(&hours, HourUnit::Hours).ok());
            Some(Bound {
                reason: DueReason::Hours,
                day,
                at: None,
                hours,
            })
        }
        Limit::After { .. } | Limit::Chance(_) => None,
    }
}

/// What an odometer shows, in whole units.
pub(super) fn shown(km: f64, unit: DistanceUnit) -> Option<Stated<DistanceUnit>> {
    Stated::parse(&format!("{:.0}", km / unit.factor()), unit).ok()
}

/// When a course has grown by so much since a day, with the count then: read off it where it has
/// already, by its pace where not.
fn reached(
    course: &Course,
    pace: Option<&Pace>,
    since: NaiveDate,
    more: f64,
) -> (Option<Forecast>, Option<f64>) {
    let Some((last, had)) = course.last() else {
        return (None, None);
    };
    let Some(count) = course.at(since).map(|began| began + more) else {
        return (None, None);
    };
    let day = match course.reached(count) {
        Some(on) => Some(Forecast {
            on,
            from: on,
            to: Some(on),
        }),
        None => pace.and_then(|pace| pace.forecast(last, count - had)),
    };
    (day, Some(count))
}
