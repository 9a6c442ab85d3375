//! All that is due of a rig: for each thing the limit that comes first.

use super::bound::{Bound, bound, shown};
use super::settle::settle;
use super::{
    Asked, Courses, DueReason, Event, EventKind, Known, Limit, PutOff, ROUGH_MILES, Reach, Rule,
    YEAR,
};
use crate::rig::{Book, Point, YearlyRule};
use crate::units::{DistanceUnit, Stated};
use chrono::{Days, NaiveDate};

/// Something that is due.
#[derive(Debug, Clone, PartialEq)]
pub struct Due {
    /// What is asked.
    pub asked: Asked,
    /// What it is about.
    pub reach: Reach,
    /// The day, in the calendar of the owner's place.
    pub on: NaiveDate,
    /// Which limit comes first.
    pub reason: DueReason,
    /// The day from which its limits count; `None` where it was never gone through.
    pub since: Option<NaiveDate>,
    /// What each limit comes to, those that tell no day too.
    pub bounds: Vec<Bound>,
    /// The day that was put off, where it was.
    pub put_off: Option<PutOff>,
}

impl Due {
    /// The odometer at which it is due, the lowest of several.
    #[must_use]
    pub fn at(&self) -> Option<&Stated<DistanceUnit>> {
        let all = self.bounds.iter().filter_map(|bound| bound.at.as_ref());
        all.min_by(|a, b| {
            a.quantity()
                .kilometres()
                .total_cmp(&b.quantity().kilometres())
        })
    }

    /// Gives it a day by the limit that comes first, and puts it off where that was said.
    fn settled(mut self, known: &Known) -> Self {
        let first = self
            .bounds
            .iter()
            .filter_map(|bound| Some((bound.day?.on, bound.reason)));
        if let Some((on, reason)) = first.min_by_key(|(on, _)| *on) {
            (self.on, self.reason) = (on, reason);
        }
        let counts = |put: &&PutOff| {
            put.asked == self.asked && self.since.is_none_or(|since| put.on >= since)
        };
        let put = known.put_off.iter().rev().find(counts);
        if let Some(put) = put.filter(|put| put.until > self.on) {
            let before = std::mem::replace(&mut self.on, put.until);
            self.put_off = Some(PutOff {
                on: before,
                ..put.clone()
            });
        }
        self
    }
}

/// All that is due of a rig, the first first: the walk, the second look, what each rule is about and
/// what each event asks for.
///
/// The walk is due by the yearly rule of the rig, by the owner's rules for the whole rig and by what
/// `learned` tells, whichever comes first. Only a rule with the owner's word sets more months than the
/// yearly rule does; what is learned never does. Months are counted in the civil calendar: a year
/// after 29 February is 28 February. What was never gone through is due since the rig was noted.
///
/// # Example
/// ```
/// use baywalk_domain::due::{DueReason, Known, due};
/// # use baywalk_domain::rig::{Book, Rig, RigKind, ServiceKind, YearlyRule};
/// # let rig = Rig { id: "0190f0c4-0000-7000-8000-000000000001".parse()?, name: "Wren".to_owned(),
/// #     kind: RigKind::Motorhome, service: ServiceKind::Amp30,
/// #     rule: YearlyRule { months: 12, distance: None }, note: String::new() };
/// # let book = Book::new(rig);
/// let known = Known { last_walk: "2028-02-29".parse().ok(), ..Known::default() };
/// let walk = due(&book, &known, None).into_iter().next().ok_or("nothing")?;
/// assert_eq!(walk.on.to_string(), "2029-02-28");
/// assert_eq!(walk.reason, DueReason::Months);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn due(book: &Book, known: &Known, learned: Option<NaiveDate>) -> Vec<Due> {
    let courses = known.courses();
    let mut all = vec![walk(&book.rig.rule, known, &courses, learned)];
    all.extend(second_look(known, &courses, book.rig.rule.unit()));
    let parts = known.rules.iter().filter(|rule| rule.reach != Reach::Rig);
    all.extend(parts.filter_map(|rule| part(book, known, &courses, rule)));
    all.extend(
        known
            .events
            .iter()
            .filter_map(|event| after(book, known, event)),
    );
    let mut all: Vec<Due> = all.into_iter().map(|due| due.settled(known)).collect();
    all.sort_by_key(|due| (due.on, due.asked));
    all
}

/// The whole walk, without its day.
fn walk(yearly: &YearlyRule, known: &Known, courses: &Courses, learned: Option<NaiveDate>) -> Due {
    let Some(since) = known.last_walk else {
        return never(Asked::Walk, Reach::Rig, known);
    };
    let rules = || known.rules.iter().filter(|rule| rule.reach == Reach::Rig);
    let limits = || rules().flat_map(|rule| &rule.limits);
    let longer = limits().find_map(|limit| match limit {
        Limit::Months(months) if *months > YEAR => Some(*months),
        _ => None,
    });
    let months = Limit::Months(longer.unwrap_or(yearly.months));
    let distance = yearly.distance.clone().map(Limit::Distance);
    let own = limits().filter(|limit| !matches!(limit, Limit::Months(months) if *months > YEAR));
    let all = std::iter::once(&months).chain(&distance).chain(own);
    let mut bounds: Vec<Bound> = all
        .filter_map(|limit| bound(limit, since, courses))
        .collect();
    bounds.extend(learned.map(|on| Bound::on(DueReason::Learned, Some(on))));
    Due {
        since: Some(since),
        bounds,
        ..never(Asked::Walk, Reach::Rig, known)
    }
}

/// The second look at what was disturbed.
fn second_look(known: &Known, courses: &Courses, unit: DistanceUnit) -> Option<Due> {
    let ended = known.last_end.filter(|_| !known.unsettled.is_empty())?;
    let settle = settle(ended, known.odometer_on(ended).map(|note| &note.reading));
    let by_road = courses.by_odometer.then_some(settle.at).flatten();
    let bounds = vec![Bound {
        at: by_road.and_then(|at| shown(at.kilometres(), unit)),
        ..Bound::on(DueReason::Settling, Some(settle.on))
    }];
    Some(Due {
        since: Some(ended),
        bounds,
        ..never(Asked::SecondLook, Reach::Rig, known)
    })
}

/// What a rule for a part of the rig is about.
fn part(book: &Book, known: &Known, courses: &Courses, rule: &Rule) -> Option<Due> {
    let waiting = never(Asked::Rule(rule.id), rule.reach, known);
    let Some(since) = since(book, known, rule.reach)? else {
        return Some(waiting);
    };
    let bounds: Vec<Bound> = rule
        .limits
        .iter()
        .filter_map(|limit| bound(limit, since, courses))
        .collect();
    let tells = bounds
        .iter()
        .any(|bound| bound.day.is_some() || bound.at.is_some());
    tells.then_some(Due {
        since: Some(since),
        bounds,
        ..waiting
    })
}

/// What an event asks for, until it was gone through.
fn after(book: &Book, known: &Known, event: &Event) -> Option<Due> {
    let since = since(book, known, event.reach)?;
    if since.is_some_and(|since| since > event.on) {
        return None;
    }
    let (days, far) = asked_after(known, event)?;
    if event.event == EventKind::RoughRoad && far > event_km(event) {
        return None;
    }
    let on = event.on.checked_add_days(Days::new(days.into()));
    Some(Due {
        since: Some(event.on),
        bounds: vec![Bound::on(event.event.into(), on)],
        ..never(Asked::Event(event.id), event.reach, known)
    })
}

/// The days after an event, and the kilometres of bad road that count: by the owner's rule for what
/// it is about or for the rig, by ours where there is none.
fn asked_after(known: &Known, event: &Event) -> Option<(u16, f64)> {
    let ours = ROUGH_MILES * DistanceUnit::Miles.factor();
    let rules = || {
        known
            .rules
            .iter()
            .filter(|rule| rule.reach == event.reach || rule.reach == Reach::Rig)
    };
    let limits = rules().flat_map(|rule| &rule.limits);
    let said = limits.filter_map(|limit| match limit {
        Limit::After {
            event: kind,
            days,
            distance,
        } if *kind == event.event => {
            let far = distance.as_ref().map(|far| far.quantity().kilometres());
            Some((*days, far.unwrap_or(ours)))
        }
        _ => None,
    });
    Some(
        said.min_by_key(|(days, _)| *days)
            .unwrap_or((event.event.days(), ours)),
    )
}

/// How far the bad road was; one of which that is not noted counts.
fn event_km(event: &Event) -> f64 {
    let far = event.distance.as_ref();
    far.map_or(f64::INFINITY, |far| far.quantity().kilometres())
}

/// Since when a part of the rig counts: the earliest day on which one of its points was last seen;
/// `Some(None)` where one never was, `None` where there is no such point in use.
#[expect(
    clippy::option_option,
    reason = "no part, a part never seen, a part seen on a day"
)]
fn since(book: &Book, known: &Known, reach: Reach) -> Option<Option<NaiveDate>> {
    if reach == Reach::Rig {
        return Some(known.last_walk);
    }
    let points = book
        .points
        .iter()
        .filter(|point| !point.retired && reach.holds(book, point));
    let seen = |point: &Point| known.tracks.get(&point.id).and_then(|track| track.seen);
    let mut days = points.map(seen);
    let first = days.next()?;
    Some(days.fold(first, |earliest, day| earliest.min(day)))
}

/// Something that was never gone through: due since the rig was noted.
fn never(asked: Asked, reach: Reach, known: &Known) -> Due {
    Due {
        asked,
        reach,
        on: known.noted.unwrap_or_default(),
        reason: DueReason::NeverWalked,
        since: None,
        bounds: Vec::new(),
        put_off: None,
    }
}
