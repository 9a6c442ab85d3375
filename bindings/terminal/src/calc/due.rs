//! `calc due`: when the next walk is due, by the fixed rules.

use super::shape::Word;
use super::{Calculate, Fault, at};
use baywalk_domain::due::{DueReason, OdometerNote, due, settle};
use baywalk_domain::rig::YearlyRule;
use baywalk_domain::units::{DistanceUnit, Stated};
use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The calculation.
pub(super) struct Calculation;

/// The rule, the last walk and the odometer notes.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct Given {
    /// Today, as year, month and day.
    today: String,
    /// Months from one walk to the next, 1 to 12.
    months: u8,
    /// The distance from one walk to the next, such as 5000 mi.
    distance: Option<String>,
    /// The last whole walk; null where there was none.
    last: Option<NoteIn>,
    /// The odometer notes.
    #[serde(default)]
    notes: Vec<NoteIn>,
}

/// A day, with the odometer where it was noted.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct NoteIn {
    /// The day, as year, month and day.
    on: String,
    /// The reading, such as 41230 mi.
    odometer: Option<String>,
}

/// When the next walk is due, and the second look at what the last one disturbed.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Found {
    on: String,
    reason: Word<DueReason>,
    by_months: String,
    by_distance: Option<String>,
    at_odometer: Option<String>,
    second_look: Option<String>,
}

impl Calculate for Calculation {
    const NAME: &'static str = "due";
    const ABOUT: &'static str =
        "The day of the next walk by months and distance, whichever comes first.";
    type In = Given;
    type Out = Found;

    fn calculate(given: Given) -> Result<Found, Fault> {
        if !(1..=12).contains(&given.months) {
            return Err(at("months")("expected 1 to 12"));
        }
        let rule = YearlyRule {
            months: given.months,
            distance: given.distance.as_deref().map(|text| distance("distance", text)).transpose()?,
        };
        let last = given.last.as_ref().map(|note| read("last", note)).transpose()?;
        let mut notes = Vec::new();
        for note in &given.notes {
            let (on, reading) = read("notes", note)?;
            let reading = reading.ok_or_else(|| at("notes.odometer")("missing"))?;
            notes.push(OdometerNote { on, reading });
        }
        let walked = last.as_ref().map(|(on, reading)| (*on, reading.as_ref()));
        let next = due(&rule, walked, &notes, day("today", &given.today)?);
        Ok(Found {
            on: next.on.to_string(),
            reason: Word(next.reason),
            by_months: next.by_months.to_string(),
            by_distance: next.by_distance.map(|on| on.to_string()),
            at_odometer: next.at_in(&rule).map(|reading| reading.pair()),
            second_look: walked.map(|(on, reading)| settle(on, reading).on.to_string()),
        })
    }
}

type Note = (NaiveDate, Option<Stated<DistanceUnit>>);

fn read(field: &str, note: &NoteIn) -> Result<Note, Fault> {
    let reading = note.odometer.as_deref().map(|text| distance(&format!("{field}.odometer"), text));
    Ok((day(&format!("{field}.on"), &note.on)?, reading.transpose()?))
}

fn day(field: &str, text: &str) -> Result<NaiveDate, Fault> {
    text.parse().map_err(at(field))
}

fn distance(field: &str, text: &str) -> Result<Stated<DistanceUnit>, Fault> {
    Stated::parse_pair(text).map_err(at(field))
}
