//! A day that comes each year.

use chrono::{Datelike, NaiveDate};

/// A month and a day of it.
///
/// 29 February is 28 February in a common year.
///
/// # Example
/// ```
/// use baywalk_domain::due::YearDay;
/// use chrono::NaiveDate;
/// let leap = YearDay::new(2, 29).ok_or("no such day")?;
/// let day = |text: &str| text.parse::<NaiveDate>();
/// assert_eq!(leap.after(day("2027-03-01")?), day("2028-02-29").ok());
/// assert_eq!(leap.after(day("2028-02-29")?), day("2029-02-28").ok());
/// assert_eq!(YearDay::new(4, 31), None);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct YearDay {
    month: u8,
    day: u8,
}

/// A leap year, in which every day of a year can be.
const LEAP: i32 = 2028;

impl YearDay {
    /// The day of a month; `None` where there is no such day in any year.
    #[must_use]
    pub fn new(month: u8, day: u8) -> Option<Self> {
        NaiveDate::from_ymd_opt(LEAP, month.into(), day.into())?;
        Some(Self { month, day })
    }

    /// The month, 1 to 12.
    #[must_use]
    pub const fn month(self) -> u8 {
        self.month
    }

    /// The day of the month.
    #[must_use]
    pub const fn day(self) -> u8 {
        self.day
    }

    /// The day in a year; `None` beyond the calendar.
    #[must_use]
    pub fn in_year(self, year: i32) -> Option<NaiveDate> {
        let (month, day) = (u32::from(self.month), u32::from(self.day));
        NaiveDate::from_ymd_opt(year, month, day)
            .or_else(|| NaiveDate::from_ymd_opt(year, month, 28))
    }

    /// The first such day after a day; `None` beyond the calendar.
    #[must_use]
    pub fn after(self, day: NaiveDate) -> Option<NaiveDate> {
        let this = self.in_year(day.year()).filter(|found| *found > day);
        this.or_else(|| self.in_year(day.year().checked_add(1)?))
    }
}
