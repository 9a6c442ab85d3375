//! `calc forecast`: when a rig will have gone so far, by its notes.

use super::shape::{Word, day, stated};
use super::{Calculate, Fault, at};
use baywalk_domain::due::{Course, OUTING_HOURS, OUTING_KM, OdometerNote, Pace, Restart};
use baywalk_domain::units::{DistanceUnit, HourUnit};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The calculation.
pub(super) struct Calculation;

/// Notes of one kind, oldest first, and how much further is asked for.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct Given {
    /// Odometer notes.
    #[serde(default)]
    odometer: Vec<NoteIn>,
    /// Trips of a rig without an odometer.
    #[serde(default)]
    trips: Vec<NoteIn>,
    /// Notes of the hour meter.
    #[serde(default)]
    hours: Vec<NoteIn>,
    /// How much further than the last note: such as 3000 mi, or 100 h.
    further: String,
}

/// A note and its day.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct NoteIn {
    /// The day, as year, month and day.
    on: String,
    /// The reading or distance with its unit.
    reading: String,
    /// Why it does not follow from the note before.
    restart: Option<Word<Restart>>,
}

/// The day with its range of nine in ten, and the pace that it comes of.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Found {
    /// Null where it is beyond twenty years.
    on: Option<String>,
    from: Option<String>,
    /// Null where it may not come in twenty years.
    to: Option<String>,
    /// Kilometres or hours a day, on the average of the year.
    per_day: f64,
    /// By how much each month, January first, is above the average.
    seasons: [f64; 12],
    /// Kilometres or hours between the first note that counts and the last.
    gone: f64,
}

impl Calculate for Calculation {
    const NAME: &'static str = "forecast";
    const ABOUT: &'static str =
        "The day on which a rig will have gone so far, with its range, by its notes.";
    type In = Given;
    type Out = Found;

    fn calculate(given: Given) -> Result<Found, Fault> {
        let (course, outing, further) = course(&given)?;
        let pace = Pace::of(&course, outing);
        let none = || Fault::Refused("two notes on different days are needed, with growth".to_owned());
        let (pace, (last, gone)) = pace.zip(course.last()).ok_or_else(none)?;
        let day = pace.forecast(last, further);
        Ok(Found {
            on: day.map(|day| day.on.to_string()),
            from: day.map(|day| day.from.to_string()),
            to: day.and_then(|day| day.to).map(|day| day.to_string()),
            per_day: pace.per_day(),
            seasons: *pace.seasons(),
            gone,
        })
    }
}

/// The course, how much an outing is, and how much further is asked for.
fn course(given: &Given) -> Result<(Course, f64, f64), Fault> {
    let kinds = [&given.odometer, &given.trips, &given.hours];
    if kinds.iter().filter(|notes| !notes.is_empty()).count() != 1 {
        return Err(at("notes")("expected odometer notes, trips or hours, one of the three"));
    }
    if !given.hours.is_empty() {
        let further = stated::<HourUnit>("further", &given.further)?.quantity().hours();
        let notes = pairs(&given.hours, |text| Ok(stated::<HourUnit>("hours", text)?.quantity().hours()))?;
        return Ok((Course::of_hours(&notes), OUTING_HOURS, further));
    }
    let km = |text: &str| -> Result<f64, Fault> {
        Ok(stated::<DistanceUnit>("reading", text)?.quantity().kilometres())
    };
    let further = km(&given.further)?;
    if !given.trips.is_empty() {
        return Ok((Course::of_trips(&pairs(&given.trips, km)?), OUTING_KM, further));
    }
    let mut notes = Vec::new();
    for note in &given.odometer {
        notes.push(OdometerNote {
            on: day("odometer.on", &note.on)?,
            reading: stated("odometer.reading", &note.reading)?,
            restart: note.restart.map(|word| word.0),
        });
    }
    Ok((Course::of_odometer(&notes), OUTING_KM, further))
}

fn pairs(
    notes: &[NoteIn],
    value: impl Fn(&str) -> Result<f64, Fault>,
) -> Result<Vec<(chrono::NaiveDate, f64)>, Fault> {
    notes.iter().map(|note| Ok((day("on", &note.on)?, value(&note.reading)?))).collect()
}
