//! The second look at what was disturbed (common practice by analogy with wheel nuts, no source).

use crate::units::{Distance, DistanceUnit, Stated};
use chrono::{Days, NaiveDate};

/// Days after which disturbed terminals are looked at again.
pub const SETTLE_DAYS: u64 = 1;
/// Miles after which they are looked at again, where that comes first: the lower end of 50 to 100.
pub const SETTLE_MILES: f64 = 50.0;

/// When the second look is due: after a day, or after some miles, whichever comes first.
#[derive(Debug, Clone, PartialEq)]
pub struct Settle {
    /// The day.
    pub on: NaiveDate,
    /// The odometer, where one was noted at the walk.
    pub at: Option<Distance>,
}

/// When the second look is due after a walk of a day, with the odometer noted then.
///
/// # Example
/// ```
/// use baywalk_domain::due::settle;
/// use chrono::NaiveDate;
/// let day = NaiveDate::from_ymd_opt(2027, 12, 31).ok_or("no such day")?;
/// assert_eq!(settle(day, None).on.to_string(), "2028-01-01");
/// # Ok::<(), &str>(())
/// ```
#[must_use]
pub fn settle(walked: NaiveDate, odometer: Option<&Stated<DistanceUnit>>) -> Settle {
    let at = odometer.and_then(|noted| {
        let further = SETTLE_MILES * DistanceUnit::Miles.factor();
        Distance::from_kilometres(noted.quantity().kilometres() + further).ok()
    });
    Settle {
        on: walked
            .checked_add_days(Days::new(SETTLE_DAYS))
            .unwrap_or(walked),
        at,
    }
}
