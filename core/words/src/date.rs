//! Dates and times as a language writes them.

use crate::Words;
use chrono::{Datelike, NaiveDate, NaiveTime};

const MONTHS: [&str; 12] = [
    "unit-month-1",
    "unit-month-2",
    "unit-month-3",
    "unit-month-4",
    "unit-month-5",
    "unit-month-6",
    "unit-month-7",
    "unit-month-8",
    "unit-month-9",
    "unit-month-10",
    "unit-month-11",
    "unit-month-12",
];

const SHORT_MONTHS: [&str; 12] = [
    "unit-month-short-1",
    "unit-month-short-2",
    "unit-month-short-3",
    "unit-month-short-4",
    "unit-month-short-5",
    "unit-month-short-6",
    "unit-month-short-7",
    "unit-month-short-8",
    "unit-month-short-9",
    "unit-month-short-10",
    "unit-month-short-11",
    "unit-month-short-12",
];

impl Words {
    /// A day in full.
    ///
    /// # Example
    /// ```
    /// use baywalk_words::Words;
    /// use chrono::NaiveDate;
    /// let day = NaiveDate::from_ymd_opt(2027, 3, 20).ok_or("no such day")?;
    /// assert_eq!(Words::for_locales(&["en"]).date(day), "20 March 2027");
    /// assert_eq!(Words::for_locales(&["es"]).date(day), "20 de marzo de 2027");
    /// # Ok::<(), &str>(())
    /// ```
    #[must_use]
    pub fn date(&self, day: NaiveDate) -> String {
        self.day("unit-date", &MONTHS, day)
    }

    /// A day with its month cut short, such as `20 Mar 2027`: never figures alone, which are read in
    /// two ways.
    #[must_use]
    pub fn short_date(&self, day: NaiveDate) -> String {
        self.day("unit-date-short", &SHORT_MONTHS, day)
    }

    /// The name of a month, 0 for January.
    pub(crate) fn month(&self, at: usize) -> String {
        MONTHS.get(at).map_or_else(String::new, |key| self.say(key))
    }

    fn day(&self, key: &str, months: &[&str; 12], day: NaiveDate) -> String {
        let at = usize::try_from(day.month0()).unwrap_or(0);
        let month = months.get(at).map_or_else(String::new, |key| self.say(key));
        let year = day.year().to_string();
        self.fill(
            key,
            &[
                ("day", day.day().into()),
                ("month", month.into()),
                ("year", year.into()),
            ],
        )
    }

    /// A time of day in hours and minutes, by the 24-hour clock.
    ///
    /// # Example
    /// ```
    /// use baywalk_words::Words;
    /// use chrono::NaiveTime;
    /// let time = NaiveTime::from_hms_opt(9, 5, 59).ok_or("no such time")?;
    /// assert_eq!(Words::for_locales(&["en"]).time(time), "09:05");
    /// # Ok::<(), &str>(())
    /// ```
    #[must_use]
    pub fn time(&self, time: NaiveTime) -> String {
        time.format("%H:%M").to_string()
    }

    /// A number of whole minutes.
    ///
    /// # Example
    /// ```
    /// use baywalk_words::Words;
    /// assert_eq!(Words::for_locales(&["en"]).minutes(1), "1 minute");
    /// assert_eq!(Words::for_locales(&["es"]).minutes(5), "5 minutos");
    /// ```
    #[must_use]
    pub fn minutes(&self, count: u32) -> String {
        self.fill("unit-minutes", &[("count", count.into())])
    }

    /// A number of points.
    #[must_use]
    pub fn points(&self, count: usize) -> String {
        self.fill("unit-points", &[("count", count.into())])
    }

    /// A time that runs down, in minutes and seconds, such as `3:12`.
    #[must_use]
    pub fn countdown(&self, seconds: u64) -> String {
        format!("{}:{:02}", seconds / 60, seconds % 60)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_month_has_its_name() {
        let (english, spanish) = (Words::for_locales(&["en"]), Words::for_locales(&["es"]));
        let day = |month| NaiveDate::from_ymd_opt(2028, month, 29).unwrap();
        assert_eq!(english.short_date(day(2)), "29 Feb 2028");
        assert_eq!(spanish.short_date(day(8)), "29 ago 2028");
        assert_eq!(spanish.date(day(12)), "29 de diciembre de 2028");
        assert_eq!(english.date(day(12)), "29 December 2028");
        assert_eq!(english.countdown(192), "3:12");
    }
}
