//! `calc due`: what is due of a rig, by the yearly rule, the owner's rules and what happened.

use super::shape::{Word, day, stated};
use super::{Calculate, Fault, at};
use baywalk_domain::due::{
    Anchor, Asked, Bound, Due, DueReason, Event, EventKind, Known, Limit, OdometerNote, PutOff,
    Reach, Restart, Rule, YearDay, due, settle,
};
use baywalk_domain::ids::{ActId, RigId, RuleId};
use baywalk_domain::rig::{Book, Rig, RigKind, ServiceKind, YearlyRule};
use baywalk_domain::units::{DistanceUnit, HourUnit};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use uuid::Uuid;

/// The calculation.
pub(super) struct Calculation;

/// The rules, the last walk, and what was noted.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct Given {
    /// Today, as year, month and day: a rig that was never walked is taken as noted today.
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
    /// Notes of the hour meter.
    #[serde(default)]
    hours: Vec<HoursIn>,
    /// Trips of a rig without an odometer.
    #[serde(default)]
    trips: Vec<TripIn>,
    /// What happened since.
    #[serde(default)]
    events: Vec<EventIn>,
    /// A rule of the owner for the whole rig.
    rule: Option<RuleIn>,
    /// The day by which the rig's own past asks for a walk.
    learned: Option<String>,
    /// The walk was put off.
    put_off: Option<PutOffIn>,
}

/// A day, with the odometer where it was noted.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct NoteIn {
    /// The day, as year, month and day.
    on: String,
    /// The reading, such as 41230 mi.
    odometer: Option<String>,
    /// Why it does not follow from the note before.
    restart: Option<Word<Restart>>,
}

#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct HoursIn {
    on: String,
    /// The reading, such as 812 h.
    reading: String,
}

#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct TripIn {
    on: String,
    /// How far, such as 320 mi.
    distance: String,
}

#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct EventIn {
    on: String,
    event: Word<EventKind>,
    /// How far, of bad road.
    distance: Option<String>,
}

#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct RuleIn {
    months: Option<u8>,
    distance: Option<String>,
    hours: Option<String>,
    /// A day of each year, as month and day.
    season: Option<[u8; 2]>,
    after: Option<AfterIn>,
    /// The owner's word, needed beyond 12 months.
    #[serde(default)]
    word: String,
}

#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct AfterIn {
    event: Word<EventKind>,
    days: u16,
    distance: Option<String>,
}

#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct PutOffIn {
    /// When it was said.
    on: String,
    until: String,
}

/// When the next walk is due, what each limit comes to, and all else that is due.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Found {
    on: String,
    reason: Word<DueReason>,
    /// The odometer at which it is due.
    at_odometer: Option<String>,
    limits: Vec<BoundOut>,
    /// The day before it was put off.
    put_off_from: Option<String>,
    /// The second look at what the last walk disturbed.
    second_look: Option<String>,
    /// What events ask for.
    events: Vec<EventOut>,
}

/// What a limit comes to, with its range of nine in ten.
#[derive(Debug, Serialize, JsonSchema)]
struct BoundOut {
    reason: Word<DueReason>,
    on: Option<String>,
    from: Option<String>,
    to: Option<String>,
}

#[derive(Debug, Serialize, JsonSchema)]
struct EventOut {
    on: String,
    reason: Word<DueReason>,
}

impl Calculate for Calculation {
    const NAME: &'static str = "due";
    const ABOUT: &'static str =
        "The day of the next walk by months, distance, hours, season and events, whichever comes first.";
    type In = Given;
    type Out = Found;

    fn calculate(given: Given) -> Result<Found, Fault> {
        let book = book(&given)?;
        let known = known(&given)?;
        for rule in &known.rules {
            rule.check(&book).map_err(|fault| at("rule")(format!("{fault:?}")))?;
        }
        let learned = given.learned.as_deref().map(|text| day("learned", text)).transpose()?;
        let all = due(&book, &known, learned);
        let next = all.iter().find(|due| due.asked == Asked::Walk);
        let next = next.ok_or_else(|| Fault::Refused("no walk is due".to_owned()))?;
        let events = all.iter().filter(|due| matches!(due.asked, Asked::Event(_)));
        let settling = known.last_walk.map(|on| {
            settle(on, known.odometer_on(on).map(|note| &note.reading)).on.to_string()
        });
        Ok(Found {
            second_look: settling,
            events: events
                .map(|due| EventOut { on: due.on.to_string(), reason: Word(due.reason) })
                .collect(),
            ..found(next)
        })
    }
}

fn found(next: &Due) -> Found {
    Found {
        on: next.on.to_string(),
        reason: Word(next.reason),
        at_odometer: next.at().map(|reading| reading.pair()),
        limits: next.bounds.iter().map(limit).collect(),
        put_off_from: next.put_off.as_ref().map(|put| put.on.to_string()),
        second_look: None,
        events: Vec::new(),
    }
}

fn limit(bound: &Bound) -> BoundOut {
    BoundOut {
        reason: Word(bound.reason),
        on: bound.day.map(|day| day.on.to_string()),
        from: bound.day.map(|day| day.from.to_string()),
        to: bound.day.and_then(|day| day.to).map(|day| day.to_string()),
    }
}

/// A rig with nothing in it but its rule.
fn book(given: &Given) -> Result<Book, Fault> {
    if !(1..=12).contains(&given.months) {
        return Err(at("months")("expected 1 to 12"));
    }
    let distance = given.distance.as_deref().map(|text| stated("distance", text)).transpose()?;
    Ok(Book::new(Rig {
        id: RigId::new(Uuid::nil()),
        name: "rig".to_owned(),
        kind: RigKind::Motorhome,
        service: ServiceKind::None,
        rule: YearlyRule { months: given.months, distance },
        note: String::new(),
    }))
}

fn known(given: &Given) -> Result<Known, Fault> {
    let mut known = Known { noted: Some(day("today", &given.today)?), ..Known::default() };
    let notes = given.notes.iter().map(|note| ("notes", note));
    for (field, note) in given.last.iter().map(|note| ("last", note)).chain(notes) {
        let on = day(&format!("{field}.on"), &note.on)?;
        if field == "last" {
            known.last_walk = Some(on);
        }
        match &note.odometer {
            Some(text) => known.odometer.push(OdometerNote {
                on,
                reading: stated(&format!("{field}.odometer"), text)?,
                restart: note.restart.map(|word| word.0),
            }),
            None if field == "notes" => return Err(at("notes.odometer")("missing")),
            None => {}
        }
    }
    known.odometer.sort_by_key(|note| note.on);
    for note in &given.hours {
        let hours = stated::<HourUnit>("hours.reading", &note.reading)?;
        known.hours.push((day("hours.on", &note.on)?, hours.quantity().hours()));
    }
    for trip in &given.trips {
        let far = stated::<DistanceUnit>("trips.distance", &trip.distance)?;
        known.trips.push((day("trips.on", &trip.on)?, far.quantity().kilometres()));
    }
    happened(given, &mut known)?;
    Ok(known)
}

fn happened(given: &Given, known: &mut Known) -> Result<(), Fault> {
    for (place, event) in (1_u128..).zip(&given.events) {
        let distance = event.distance.as_deref();
        known.events.push(Event {
            id: ActId::new(Uuid::from_u128(place)),
            on: day("events.on", &event.on)?,
            event: event.event.0,
            reach: Reach::Rig,
            distance: distance.map(|text| stated("events.distance", text)).transpose()?,
        });
    }
    if let Some(put) = &given.put_off {
        known.put_off.push(PutOff {
            on: day("put_off.on", &put.on)?,
            asked: Asked::Walk,
            until: day("put_off.until", &put.until)?,
            why: String::new(),
        });
    }
    known.rules.extend(given.rule.as_ref().map(rule).transpose()?);
    Ok(())
}

fn rule(given: &RuleIn) -> Result<Rule, Fault> {
    let mut limits: Vec<Limit> = given.months.map(Limit::Months).into_iter().collect();
    let distance = given.distance.as_deref().map(|text| stated("rule.distance", text));
    limits.extend(distance.transpose()?.map(Limit::Distance));
    let hours = given.hours.as_deref().map(|text| stated("rule.hours", text));
    limits.extend(hours.transpose()?.map(Limit::Hours));
    if let Some([month, day]) = given.season {
        let on = YearDay::new(month, day).ok_or_else(|| at("rule.season")("no such day"))?;
        limits.push(Limit::Season { anchor: Anchor::FirstTrip, on });
    }
    if let Some(after) = &given.after {
        let far = after.distance.as_deref().map(|text| stated("rule.after.distance", text));
        limits.push(Limit::After {
            event: after.event.0,
            days: after.days,
            distance: far.transpose()?,
        });
    }
    Ok(Rule {
        id: RuleId::new(Uuid::nil()),
        reach: Reach::Rig,
        limits,
        word: given.word.clone(),
    })
}
