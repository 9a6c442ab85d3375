//! How far a rig had come by each day, made whole from notes that restart, err and leave gaps.

use super::{OdometerNote, Restart};
use chrono::NaiveDate;

/// The most kilometres that a day can hold: 16 hours at 125 km/h. Ours.
const MOST_KM: f64 = 2_000.0;
/// The most hours that a day can hold.
const MOST_HOURS: f64 = 24.0;

/// A day with the count then.
type Mark = (NaiveDate, f64);

/// A count that only grows, by the days on which it was noted: kilometres, or hours of an engine.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Course {
    /// Days in order, each with the count since the first.
    marks: Vec<Mark>,
    /// What the meter showed at the last mark.
    shows: f64,
    /// Whether all was counted from the first on, so that before it there was nothing.
    from_nothing: bool,
}

impl Course {
    /// The course of an odometer. Where it was replaced the count goes on; notes that were said to be
    /// wrong are left out, and so are those that no other notes agree with: the longest row of notes
    /// is kept that no day's driving contradicts.
    ///
    /// # Example
    /// ```
    /// use baywalk_domain::due::{Course, OdometerNote};
    /// use baywalk_domain::units::Stated;
    /// let note = |on: &str, reading: &str| -> Result<OdometerNote, Box<dyn std::error::Error>> {
    ///     Ok(OdometerNote { on: on.parse()?, reading: Stated::parse_pair(reading)?, restart: None })
    /// };
    /// // The third note has a digit too many.
    /// let notes = [
    ///     note("2027-03-01", "41200 km")?,
    ///     note("2027-04-01", "41900 km")?,
    ///     note("2027-05-01", "426000 km")?,
    /// ];
    /// let course = Course::of_odometer(&notes);
    /// assert_eq!(course.last().map(|(_, km)| km), Some(700.0));
    /// assert_eq!(course.at("2027-03-16".parse()?).map(f64::round), Some(339.0));
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    #[must_use]
    pub fn of_odometer(notes: &[OdometerNote]) -> Self {
        let mut whole = Self::default();
        let mut row: Vec<Mark> = Vec::new();
        for note in notes {
            let km = note.reading.quantity().kilometres();
            match note.restart {
                Some(Restart::Replaced) => whole.join(&std::mem::take(&mut row), MOST_KM),
                Some(Restart::EarlierWrong) => row.retain(|(_, earlier)| *earlier <= km),
                None => {}
            }
            row.push((note.on, km));
        }
        whole.join(&row, MOST_KM);
        whole
    }

    /// The course of an hour meter; a reading below the one before is of another meter.
    #[must_use]
    pub fn of_hours(notes: &[(NaiveDate, f64)]) -> Self {
        let mut whole = Self::default();
        let mut row: Vec<Mark> = Vec::new();
        for (on, hours) in notes {
            if row.last().is_some_and(|(_, before)| before > hours) {
                whole.join(&std::mem::take(&mut row), MOST_HOURS);
            }
            row.push((*on, *hours));
        }
        whole.join(&row, MOST_HOURS);
        whole
    }

    /// The course of a rig that has no odometer, by its trips.
    #[must_use]
    pub fn of_trips(trips: &[(NaiveDate, f64)]) -> Self {
        let mut trips = trips.to_vec();
        trips.sort_by_key(|(on, _)| *on);
        let mut whole = Self {
            from_nothing: true,
            ..Self::default()
        };
        for (on, km) in trips {
            let before = whole.shows;
            if whole.marks.is_empty() {
                let eve = on.pred_opt().unwrap_or(on);
                whole.marks.push((eve, 0.0));
            }
            whole.shows = before + km;
            whole.push(on, whole.shows);
        }
        whole
    }

    /// Adds the notes of one meter. What was driven between two meters is not known and counts as
    /// nothing.
    fn join(&mut self, row: &[(NaiveDate, f64)], most: f64) {
        let row = agreeing(row, most);
        let Some((_, first)) = row.first().copied() else {
            return;
        };
        let before = self.last().map_or(0.0, |(_, count)| count);
        for (on, shows) in row {
            self.shows = shows;
            self.push(on, before + (shows - first));
        }
    }

    /// Adds a mark; a day has one, the last.
    fn push(&mut self, on: NaiveDate, count: f64) {
        let on = self.marks.last().map_or(on, |(last, _)| on.max(*last));
        if self.marks.last().is_some_and(|(last, _)| *last == on) {
            self.marks.pop();
        }
        self.marks.push((on, count));
    }

    /// The marks between which a pace can be told: trips are counted from the end of the first on.
    pub(super) fn paced(&self) -> &[(NaiveDate, f64)] {
        let first = usize::from(self.from_nothing);
        self.marks.get(first..).unwrap_or_default()
    }

    /// The days with their counts.
    #[must_use]
    pub fn marks(&self) -> &[(NaiveDate, f64)] {
        &self.marks
    }

    /// The last day with its count.
    #[must_use]
    pub fn last(&self) -> Option<(NaiveDate, f64)> {
        self.marks.last().copied()
    }

    /// The count on a day: between two marks in proportion, after the last as it was there; `None`
    /// before the first.
    #[must_use]
    pub fn at(&self, day: NaiveDate) -> Option<f64> {
        let (before, after) = self.around(|(on, _)| *on <= day);
        let Some((from, count)) = before else {
            return self.from_nothing.then_some(0.0);
        };
        let Some((to, later)) = after else {
            return Some(count);
        };
        Some(count + (later - count) * days(from, day) / days(from, to))
    }

    /// The day on which a count was reached; `None` where it was not yet.
    #[must_use]
    pub fn reached(&self, count: f64) -> Option<NaiveDate> {
        let (before, after) = self.around(|(_, had)| *had < count);
        let (to, later) = after?;
        let Some((from, had)) = before else {
            return Some(to);
        };
        let share = (count - had) / (later - had);
        let whole = (days(from, to) * share).ceil();
        Some(add_days(from, whole)?.min(to))
    }

    /// What the meter shows when a count is reached.
    #[must_use]
    pub fn shown(&self, count: f64) -> f64 {
        self.shows + (count - self.last().map_or(0.0, |(_, last)| last))
    }

    /// The last mark that fits and the first that does not.
    fn around(&self, fits: impl Fn(&(NaiveDate, f64)) -> bool) -> (Option<Mark>, Option<Mark>) {
        let place = self.marks.partition_point(fits);
        let before = place.checked_sub(1).and_then(|n| self.marks.get(n));
        (before.copied(), self.marks.get(place).copied())
    }
}

/// The longest row of notes of which each follows from the one before: not below it, and not further
/// than the days between can hold. Of two as long, the one that ends with the newer note.
///
/// A note is tried at the longest rows first, so that one that agrees is done at once: time grows with
/// the notes, and once more with them for each that is wrong.
fn agreeing(row: &[Mark], most: f64) -> Vec<Mark> {
    let follows = |(on, count): &Mark, (next, later): &Mark| {
        let span = days(*on, *next);
        span >= 0.0 && later >= count && later - count <= most * span.max(1.0)
    };
    // The rows so far by length and last note, in order; and the note before each note.
    let mut rows: Vec<(usize, usize)> = Vec::with_capacity(row.len());
    let mut before: Vec<Option<usize>> = Vec::with_capacity(row.len());
    for (place, note) in row.iter().enumerate() {
        let goes_on =
            |(_, end): &&(usize, usize)| row.get(*end).is_some_and(|end| follows(end, note));
        let joined = rows.iter().rev().find(goes_on).copied();
        before.push(joined.map(|(_, end)| end));
        let longer = (joined.map_or(1, |(length, _)| length + 1), place);
        rows.insert(rows.partition_point(|other| *other < longer), longer);
    }
    let mut place = rows.last().map(|(_, end)| *end);
    let mut kept = Vec::new();
    while let Some(at) = place {
        kept.extend(row.get(at).copied());
        place = before.get(at).copied().flatten();
    }
    kept.reverse();
    kept
}

/// Whole days from one day to another.
pub(super) fn days(from: NaiveDate, to: NaiveDate) -> f64 {
    let count = (to - from).num_days();
    i32::try_from(count).map_or(f64::MAX, f64::from)
}

/// A day some whole number of days on; `None` beyond a century.
pub(super) fn add_days(day: NaiveDate, count: f64) -> Option<NaiveDate> {
    const CENTURY: f64 = 36_525.0;
    if !(0.0..=CENTURY).contains(&count) {
        return None;
    }
    let whole: u64 = format!("{count:.0}").parse().ok()?;
    day.checked_add_days(chrono::Days::new(whole))
}
