//! All that is known of a rig when it is asked what is due.

use super::{Course, Event, OdometerNote, Pace, PutOff, Rule, RuleChange, Usage};
use super::{OUTING_HOURS, OUTING_KM};
use crate::ids::{ActId, PointId};
use crate::loosening::{Ended, Track};
use crate::rig::Book;
use crate::walk::{Act, Ending, PointRecord, WalkState};
use chrono::NaiveDate;
use std::collections::BTreeMap;

/// All that is known of a rig when it is asked what is due: the fold of its entries.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Known {
    /// The day on which the rig was noted first.
    pub noted: Option<NaiveDate>,
    /// The day of the last walk that went through the whole rig to the end.
    pub last_walk: Option<NaiveDate>,
    /// The day of the last end of a walk of any scope.
    pub last_end: Option<NaiveDate>,
    /// The odometer notes, oldest first.
    pub odometer: Vec<OdometerNote>,
    /// The notes of the hour meter, oldest first, in hours.
    pub hours: Vec<(NaiveDate, f64)>,
    /// The trips of a rig without an odometer, oldest first, in kilometres.
    pub trips: Vec<(NaiveDate, f64)>,
    /// The events, oldest first.
    pub events: Vec<Event>,
    /// The owner's rules, in the order in which they were set.
    pub rules: Vec<Rule>,
    /// What was put off, oldest first.
    pub put_off: Vec<PutOff>,
    /// What is known of each point.
    pub tracks: BTreeMap<PointId, Track>,
    /// The lives of terminals that are over.
    pub ended: Vec<(PointId, Ended)>,
    /// The points that wait for their second look.
    pub unsettled: Vec<PointId>,
}

/// How far a rig came and how fast it goes on, told once for all its rules.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Courses {
    /// Its kilometres.
    pub road: Course,
    /// How fast they grow.
    pub pace: Option<Pace>,
    /// Whether they are counted by an odometer, and not by trips.
    pub by_odometer: bool,
    /// The hours of its engine.
    pub engine: Course,
    /// How fast they grow.
    pub engine_pace: Option<Pace>,
}

impl Known {
    /// Takes an act of a day that says something of when to look again; others say nothing.
    pub fn take(&mut self, on: NaiveDate, id: ActId, act: &Act) {
        match act {
            Act::Odometer(reading) => self.odometer.push(OdometerNote {
                on,
                reading: reading.clone(),
                restart: None,
            }),
            Act::Usage(usage) => self.take_usage(on, id, usage),
            Act::Rule(RuleChange::Set(rule)) => {
                match self.rules.iter_mut().find(|known| known.id == rule.id) {
                    Some(known) => *known = rule.clone(),
                    None => self.rules.push(rule.clone()),
                }
            }
            Act::Rule(RuleChange::Drop(id)) => self.rules.retain(|rule| rule.id != *id),
            Act::PutOff { asked, until, why } => self.put_off.push(PutOff {
                on,
                asked: *asked,
                until: *until,
                why: why.clone(),
            }),
            _ => {}
        }
    }

    fn take_usage(&mut self, on: NaiveDate, id: ActId, usage: &Usage) {
        match usage {
            Usage::Hours(reading) => self.hours.push((on, reading.quantity().hours())),
            Usage::Trip(far) => self.trips.push((on, far.quantity().kilometres())),
            Usage::Restart { reading, why } => self.odometer.push(OdometerNote {
                on,
                reading: reading.clone(),
                restart: Some(*why),
            }),
            Usage::Event {
                event,
                reach,
                distance,
                ..
            } => self.events.push(Event {
                id,
                on,
                event: *event,
                reach: *reach,
                distance: distance.clone(),
            }),
        }
    }

    /// Takes a walk that ends on a day.
    pub fn take_walk(&mut self, book: &Book, on: NaiveDate, (walk, ending): (&WalkState, &Ending)) {
        self.last_end = self.last_end.max(Some(on));
        if *ending == Ending::Whole && walk.goes_through_all(book) {
            self.last_walk = Some(on);
        }
        for (point, record) in &walk.points {
            let ended = self.tracks.entry(*point).or_default().take(
                on,
                PointRecord::grade(record),
                record.is_disturbed(),
            );
            self.ended.extend(ended.map(|ended| (*point, ended)));
        }
    }

    /// The newest odometer note up to a day.
    #[must_use]
    pub fn odometer_on(&self, day: NaiveDate) -> Option<&OdometerNote> {
        let up_to = self.odometer.iter().filter(|note| note.on <= day);
        up_to.max_by_key(|note| note.on)
    }

    /// The odometer notes that the next one may not be below: those since the last restart.
    pub fn odometer_now(&self) -> impl Iterator<Item = &OdometerNote> {
        let restart = self
            .odometer
            .iter()
            .rposition(|note| note.restart.is_some());
        self.odometer.iter().skip(restart.unwrap_or(0))
    }

    /// How far the rig came and how fast it goes on: by its odometer where two notes of it tell a
    /// pace, by its trips otherwise.
    #[must_use]
    pub fn courses(&self) -> Courses {
        let odometer = Course::of_odometer(&self.odometer);
        let trips = Course::of_trips(&self.trips);
        let by_odometer = odometer.marks().len() > 1 || trips.marks().is_empty();
        let road = if by_odometer { odometer } else { trips };
        let engine = Course::of_hours(&self.hours);
        Courses {
            pace: Pace::of(&road, OUTING_KM),
            engine_pace: Pace::of(&engine, OUTING_HOURS),
            road,
            by_odometer,
            engine,
        }
    }
}
