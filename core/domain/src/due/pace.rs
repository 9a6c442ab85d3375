//! How fast a count grows, by the season, and when it will have reached a figure.

use super::Course;
use super::course::days;
use chrono::{Datelike, Days, Months, NaiveDate};

/// Kilometres of one outing, as believed before any note. Ours.
pub const OUTING_KM: f64 = 300.0;
/// Hours of an engine in one outing, as believed before any note. Ours.
pub const OUTING_HOURS: f64 = 5.0;
/// Days after which what was noted counts half. Ours.
const HALF_LIFE: f64 = 730.0;
/// Spans shorter than this are taken together. Ours.
const SHORTEST: f64 = 7.0;
/// How many units of grain each month of the year is worth beforehand, so that few notes tell no
/// season. Ours.
const EVEN: f64 = 2.0;
/// Days of notes below which no season is told.
const SEASONED: f64 = 365.0;
/// Residuals beyond which a span counts less, in standard deviations (Huber).
const ODD: f64 = 2.5;
/// The normal quantile of nine in ten, both sides.
const Z: f64 = 1.644_853_626_951_472_2;
/// Days after which no day is told: twenty years.
const FURTHEST: u64 = 7_305;
/// How often growth is shared among the months anew, at most.
const SHARINGS: u32 = 30;
/// What a season may still move by when sharing has come to its end.
const SETTLED: f64 = 1e-9;

/// A day with its range of nine in ten.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Forecast {
    /// The day, in the middle.
    pub on: NaiveDate,
    /// The earliest day.
    pub from: NaiveDate,
    /// The latest day; `None` where it may not come in twenty years.
    pub to: Option<NaiveDate>,
}

/// How fast a count grows.
#[derive(Debug, Clone, PartialEq)]
pub struct Pace {
    /// A day, on the average of the year.
    per_day: f64,
    /// By how much each month is above the average.
    seasons: [f64; 12],
    /// The variance of a count over its mean: about the size of one trip.
    grain: f64,
    /// The count that all this rests on.
    seen: f64,
}

/// A span between two marks.
#[derive(Debug, Clone, Copy)]
struct Span {
    grown: f64,
    /// The days of it in each month of the year.
    months: [f64; 12],
    /// What it counts for by its age.
    aged: f64,
    /// What it counts for by age and oddness.
    weight: f64,
    /// Its days, each as its season counts.
    even: f64,
}

impl Pace {
    /// The pace of a course; `trip` is how much one outing is, beforehand. `None` where nothing grew,
    /// or no two marks stand a day apart.
    ///
    /// The count of a span is taken as a number of outings (variance in proportion to the mean); older
    /// spans count less, and so do odd ones. Months are told apart once a year of notes is there.
    ///
    /// # Example
    /// ```
    /// use baywalk_domain::due::{Course, OUTING_KM, OdometerNote, Pace};
    /// use baywalk_domain::units::Stated;
    /// let note = |on: &str, reading: &str| -> Result<OdometerNote, Box<dyn std::error::Error>> {
    ///     Ok(OdometerNote { on: on.parse()?, reading: Stated::parse_pair(reading)?, restart: None })
    /// };
    /// let course = Course::of_odometer(&[note("2027-01-01", "0 km")?, note("2027-04-11", "1000 km")?]);
    /// let pace = Pace::of(&course, OUTING_KM).ok_or("no pace")?;
    /// let reached = pace.forecast("2027-04-11".parse()?, 500.0).ok_or("too far")?;
    /// assert_eq!(reached.on.to_string(), "2027-05-31");
    /// assert!(reached.from < reached.on && reached.to.is_none_or(|to| to > reached.on));
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    #[must_use]
    pub fn of(course: &Course, trip: f64) -> Option<Self> {
        let mut spans = spans(course);
        let last = course.last()?.0;
        let first = course.paced().first()?.0;
        let mut pace = Self::with(&mut spans, trip, [1.0; 12])?;
        for _ in 0..3 {
            for span in &mut spans {
                let odd = pace.odd(span).abs();
                span.weight = span.aged * if odd > ODD { ODD / odd } else { 1.0 };
            }
            let seasoned = days(first, last) >= SEASONED && spans.len() >= 4;
            let seasons = if seasoned {
                pace.seasons_of(&spans)
            } else {
                [1.0; 12]
            };
            pace = Self::with(&mut spans, trip, seasons)?;
        }
        Some(pace)
    }

    /// The pace where the seasons are known.
    fn with(spans: &mut [Span], trip: f64, seasons: [f64; 12]) -> Option<Self> {
        for span in &mut *spans {
            span.even = dot(&span.months, &seasons);
        }
        let grown: f64 = spans.iter().map(|span| span.weight * span.grown).sum();
        let time: f64 = spans.iter().map(|span| span.weight * span.even).sum();
        let per_day = grown / time;
        if !(per_day > 0.0 && per_day.is_finite()) {
            return None;
        }
        let mut pace = Self {
            per_day,
            seasons,
            grain: trip,
            seen: grown,
        };
        // The grain: what is believed beforehand counts as two spans.
        let odd = |span: &Span| span.weight * pace.odd(span).powi(2) * trip;
        let known: f64 = spans.iter().map(|span| span.weight).sum();
        let sum: f64 = spans.iter().map(odd).sum();
        pace.grain = (2.0 * trip + sum) / (2.0 + (known - 1.0).max(0.0));
        Some(pace)
    }

    /// By how many standard deviations a span is off, by the seasons of this pace.
    fn odd(&self, span: &Span) -> f64 {
        let mean = self.per_day * span.even;
        (span.grown - mean) / (self.grain * mean).sqrt().max(f64::MIN_POSITIVE)
    }

    /// The seasons that the spans tell: each span's growth is shared among its months as the seasons so
    /// far would have it, over and over (expectation and maximisation). What lies in one month is that
    /// month's whatever the season, and is counted once.
    fn seasons_of(&self, spans: &[Span]) -> [f64; 12] {
        let (mut sure, mut would) = ([EVEN; 12], [EVEN; 12]);
        let mut shared: Vec<(f64, &[f64; 12])> = Vec::new();
        for span in spans {
            let heavy = span.weight * span.grown / self.grain;
            add(
                &mut would,
                span.weight * self.per_day / self.grain,
                &span.months,
            );
            let mut in_months = sure
                .iter_mut()
                .zip(&span.months)
                .filter(|(_, days)| **days > 0.0);
            match (in_months.next(), in_months.next()) {
                (Some((sure, _)), None) => *sure += heavy,
                _ => shared.push((heavy, &span.months)),
            }
        }
        let mut seasons = self.seasons;
        for _ in 0..SHARINGS {
            let mut parts = [0.0; 12];
            for (heavy, months) in &shared {
                add(&mut parts, heavy / dot(months, &seasons), months);
            }
            let mut moved = 0.0_f64;
            for ((season, part), (sure, would)) in
                seasons.iter_mut().zip(&parts).zip(sure.iter().zip(&would))
            {
                let next = (sure + *season * part) / would;
                moved = moved.max((next - *season).abs());
                *season = next;
            }
            if moved < SETTLED {
                break;
            }
        }
        seasons
    }

    /// How much it grows in a day of the year's average.
    #[must_use]
    pub const fn per_day(&self) -> f64 {
        self.per_day
    }

    /// By how much each month, January first, is above the average.
    #[must_use]
    pub const fn seasons(&self) -> &[f64; 12] {
        &self.seasons
    }

    /// How much it grows on a day.
    fn on(&self, day: NaiveDate) -> f64 {
        let month = usize::try_from(day.month0()).unwrap_or(0);
        self.per_day * self.seasons.get(month).copied().unwrap_or(1.0)
    }

    /// The day on which it will have grown by so much, from a day on; `None` beyond twenty years.
    ///
    /// The square root of what is grown is taken as normal: its variance is a quarter of the grain,
    /// and more by what the pace itself is not known.
    #[must_use]
    pub fn forecast(&self, from: NaiveDate, more: f64) -> Option<Forecast> {
        let wanted = more.max(0.0).sqrt();
        let furthest = from.checked_add_days(Days::new(FURTHEST))?;
        let (mut grown, mut day) = (0.0_f64, from);
        let (mut early, mut middle) = (None, None);
        loop {
            let spread = Z * (0.25 * self.grain * (1.0 + grown / self.seen)).sqrt();
            let root = grown.sqrt();
            early = early.or_else(|| (root + spread >= wanted).then_some(day));
            middle = middle.or_else(|| (root >= wanted - 1e-9).then_some(day));
            let late = root - spread >= wanted;
            if late || day > furthest {
                return Some(Forecast {
                    on: middle?,
                    from: early?,
                    to: late.then_some(day),
                });
            }
            grown += self.on(day);
            day = day.succ_opt()?;
        }
    }
}

/// The sum of the products of months with months.
fn dot(months: &[f64; 12], others: &[f64; 12]) -> f64 {
    months
        .iter()
        .zip(others)
        .map(|(month, other)| month * other)
        .sum()
}

/// Adds months, each so many times.
fn add(to: &mut [f64; 12], times: f64, months: &[f64; 12]) {
    for (to, month) in to.iter_mut().zip(months) {
        *to += times * month;
    }
}

/// The spans of a course, short ones taken together.
fn spans(course: &Course) -> Vec<Span> {
    let mut spans = Vec::new();
    let Some((last, _)) = course.last() else {
        return spans;
    };
    let mut marks = course.paced().iter();
    let Some((mut from, mut had)) = marks.next().copied() else {
        return spans;
    };
    for (to, count) in marks {
        if days(from, *to) < SHORTEST && *to != last {
            continue;
        }
        let aged = 0.5_f64.powf(days(*to, last) / HALF_LIFE);
        spans.push(Span {
            grown: count - had,
            months: months(from, *to),
            aged,
            weight: aged,
            even: 0.0,
        });
        (from, had) = (*to, *count);
    }
    spans
}

/// The days from one day on and before another, by their months.
fn months(from: NaiveDate, to: NaiveDate) -> [f64; 12] {
    let mut months = [0.0; 12];
    let mut day = from;
    while day < to {
        let first_of_next = || day.checked_add_months(Months::new(1))?.with_day(1);
        let next = first_of_next().map_or(to, |next| next.min(to));
        let month = usize::try_from(day.month0()).unwrap_or(0);
        if let Some(had) = months.get_mut(month) {
            *had += days(day, next);
        }
        day = next;
    }
    months
}
