//! What is due as a calendar file (RFC 5545, RFC 7986): all-day events with alarms.
//!
//! A day has no clock time and no zone, so no change of clocks can move it. Events keep their names;
//! a later file with a higher sequence takes the place of an earlier one.

use chrono::{DateTime, Duration, NaiveDate, Utc};
use icalendar::{Alarm, Calendar, Component, Event, EventLike, EventStatus, Property};

/// One event.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Entry {
    /// Its name, the same in every file.
    pub uid: String,
    /// The day.
    pub on: NaiveDate,
    /// What it is, in a line.
    pub summary: String,
    /// What is due and why.
    pub description: String,
    /// Higher than in every earlier file in which it stood otherwise.
    pub sequence: u32,
    /// Whether it takes place, or was called off since (RFC 5545, 3.8.1.11).
    pub called_off: bool,
}

/// How long before the start of its day an event's alarms ring, in hours: two weeks before, and at
/// nine in the morning of the day.
const ALARMS: [i64; 2] = [-14 * 24 + 9, 9];

/// Writes a calendar file.
///
/// # Example
/// ```
/// use baywalk_paper::calendar::{Entry, ics};
/// use chrono::DateTime;
/// let entry = Entry {
///     uid: "0190f0c4-0000-7000-8000-000000000001".to_owned(),
///     on: "2028-02-29".parse()?,
///     summary: "Wren".to_owned(),
///     description: "Due".to_owned(),
///     sequence: 41,
///     called_off: false,
/// };
/// let made = DateTime::parse_from_rfc3339("2027-03-20T09:31:00-07:00")?.to_utc();
/// let text = ics("Terminations", std::slice::from_ref(&entry), made);
/// assert!(text.contains("DTSTART;VALUE=DATE:20280229\r\n"));
/// assert!(text.contains("SEQUENCE:41\r\n") && text.contains("STATUS:CONFIRMED\r\n"));
/// // The same is always written alike, alarms and all.
/// assert_eq!(ics("Terminations", &[entry], made), text);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn ics(name: &str, entries: &[Entry], made: DateTime<Utc>) -> String {
    let mut calendar = Calendar::empty();
    calendar
        .append_property(Property::new("VERSION", "2.0"))
        .append_property(Property::new("PRODID", "-//Baywalk//Baywalk//EN"))
        .append_property(Property::new("CALSCALE", "GREGORIAN"))
        .append_property(Property::new("METHOD", "PUBLISH"))
        .append_property(Property::new("NAME", name));
    for entry in entries {
        calendar.push(event(entry, made));
    }
    calendar.to_string()
}

fn event(entry: &Entry, made: DateTime<Utc>) -> Event {
    let mut event = Event::with_uid(&entry.uid);
    event
        .timestamp(made)
        .last_modified(made)
        .sequence(entry.sequence)
        .all_day(entry.on)
        .summary(&entry.summary)
        .description(&entry.description)
        .add_property("TRANSP", "TRANSPARENT");
    if entry.called_off {
        return event.status(EventStatus::Cancelled).done();
    }
    event.status(EventStatus::Confirmed);
    for hours in ALARMS {
        let mut alarm = Alarm::display(&entry.summary, Duration::hours(hours));
        alarm.uid(&format!("{}.{hours}", entry.uid));
        event.alarm(alarm);
    }
    event.done()
}
