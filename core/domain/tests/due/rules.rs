//! Which limit comes first.

use super::{book, day, note, walked};
use baywalk_domain::due::{
    Anchor, Asked, Course, Due, DueReason, Event, EventKind, Known, Limit, OdometerNote, PutOff,
    Reach, Restart, Rule, RuleFault, YearDay, due,
};
use baywalk_domain::ids::{ActId, RuleId};
use baywalk_domain::rig::Book;
use baywalk_domain::units::Stated;
use uuid::Uuid;

fn rule(limits: Vec<Limit>, word: &str) -> Rule {
    Rule {
        id: RuleId::new(Uuid::from_u128(9)),
        reach: Reach::Rig,
        limits,
        word: word.to_owned(),
    }
}

fn walk(book: &Book, known: &Known, learned: Option<&str>) -> Due {
    let all = due(book, known, learned.map(day));
    all.into_iter()
        .find(|due| due.asked == Asked::Walk)
        .unwrap()
}

fn told(due: &Due) -> (String, DueReason) {
    (due.on.to_string(), due.reason)
}

#[test]
fn the_limit_that_comes_first_counts_and_is_named() {
    let book = book(12, Some("5000 mi"));
    let mut known = walked("2027-03-20");
    assert_eq!(
        told(&walk(&book, &known, None)),
        ("2028-03-20".to_owned(), DueReason::Months)
    );
    known.odometer = vec![
        note("2027-03-20", "41230 mi"),
        note("2027-09-20", "44910 mi"),
    ];
    // By hand: 3,680 miles in 184 days are 20 a day; 1,320 left are 66 days after 20 September.
    let by_road = walk(&book, &known, None);
    assert_eq!(
        told(&by_road),
        ("2027-11-25".to_owned(), DueReason::Distance)
    );
    assert_eq!(by_road.at().unwrap().pair(), "46230 mi");
    let on = YearDay::new(9, 1).unwrap();
    known.rules = vec![rule(
        vec![Limit::Season {
            anchor: Anchor::OutOfStorage,
            on,
        }],
        "",
    )];
    let by_season = walk(&book, &known, None);
    assert_eq!(
        told(&by_season),
        ("2027-09-01".to_owned(), DueReason::Season)
    );
    known.hours = vec![(day("2027-03-20"), 400.0), (day("2027-06-28"), 500.0)];
    let hours = Limit::Hours(Stated::parse_pair("120 h").unwrap());
    known.rules.push(Rule {
        id: RuleId::new(Uuid::from_u128(10)),
        ..rule(vec![hours], "")
    });
    // 100 hours in 100 days; 20 more are due on 18 July at 520 on the meter.
    let by_engine = walk(&book, &known, None);
    assert_eq!(
        told(&by_engine),
        ("2027-07-18".to_owned(), DueReason::Hours)
    );
    let bound = by_engine
        .bounds
        .iter()
        .find(|bound| bound.reason == DueReason::Hours)
        .unwrap();
    assert_eq!(bound.hours.as_ref().unwrap().pair(), "520 h");
    assert_eq!(
        told(&walk(&book, &known, Some("2027-05-05"))).1,
        DueReason::Learned
    );
}

#[test]
fn a_walk_shortly_before_the_season_counts_for_it() {
    let book = book(12, None);
    let on = YearDay::new(4, 15).unwrap();
    let limits = vec![Limit::Season {
        anchor: Anchor::FirstTrip,
        on,
    }];
    for (walked_on, due_on) in [
        ("2027-03-20", "2028-03-20"),
        ("2027-02-10", "2027-04-15"),
        ("2026-12-31", "2027-04-15"),
    ] {
        let known = Known {
            rules: vec![rule(limits.clone(), "")],
            ..walked(walked_on)
        };
        assert_eq!(walk(&book, &known, None).on, day(due_on), "{walked_on}");
    }
}

#[test]
fn only_the_owners_word_goes_beyond_a_year_and_nothing_learned_does() {
    let book = book(12, None);
    let longer = |word| rule(vec![Limit::Months(18)], word);
    assert_eq!(longer(" ").check(&book), Err(RuleFault::NoWord));
    assert_eq!(
        rule(vec![Limit::Months(37)], "word").check(&book),
        Err(RuleFault::Months)
    );
    assert_eq!(longer("never driven").check(&book), Ok(()));
    let mut known = walked("2027-03-20");
    assert_eq!(
        walk(&book, &known, Some("2029-01-01")).on,
        day("2028-03-20")
    );
    known.rules = vec![longer("never driven")];
    assert_eq!(walk(&book, &known, None).on, day("2028-09-20"));
    assert_eq!(
        walk(&book, &known, Some("2028-01-01")).on,
        day("2028-01-01")
    );
}

#[test]
fn an_event_asks_for_a_look_until_it_was_walked() {
    let book = book(12, None);
    let mut known = walked("2027-03-20");
    let event = |event, on, far: Option<&str>| Event {
        id: ActId::new(Uuid::from_u128(77)),
        on: day(on),
        event,
        reach: Reach::Rig,
        distance: far.map(|far| Stated::parse_pair(far).unwrap()),
    };
    let asked = |known: &Known| {
        let all = due(&book, known, None);
        let first = all.first().unwrap();
        (first.on, first.reason)
    };
    known.events = vec![event(EventKind::HardImpact, "2027-06-01", None)];
    assert_eq!(asked(&known), (day("2027-06-01"), DueReason::HardImpact));
    known.events = vec![event(EventKind::RoughRoad, "2027-06-01", Some("99 mi"))];
    assert_eq!(asked(&known).1, DueReason::Months);
    known.events = vec![event(EventKind::RoughRoad, "2027-06-01", Some("101 mi"))];
    assert_eq!(asked(&known), (day("2027-06-08"), DueReason::RoughRoad));
    let after = Limit::After {
        event: EventKind::RoughRoad,
        days: 2,
        distance: Some(Stated::parse_pair("300 mi").unwrap()),
    };
    known.rules = vec![rule(vec![after], "")];
    assert_eq!(asked(&known).1, DueReason::Months);
    known.events = vec![event(EventKind::CircuitWork, "2027-02-01", None)];
    assert_eq!(asked(&known).1, DueReason::Months, "walked since");
}

#[test]
fn what_is_put_off_comes_back_and_a_walk_forgets_it() {
    let book = book(12, None);
    let mut known = walked("2027-03-20");
    known.put_off = vec![PutOff {
        on: day("2028-03-25"),
        asked: Asked::Walk,
        until: day("2028-04-20"),
        why: "snow".to_owned(),
    }];
    let put = walk(&book, &known, None);
    assert_eq!(put.on, day("2028-04-20"));
    assert_eq!(put.put_off.unwrap().on, day("2028-03-20"));
    known.last_walk = Some(day("2028-04-18"));
    assert_eq!(walk(&book, &known, None).on, day("2029-04-18"));
}

#[test]
fn a_replaced_odometer_and_a_wrong_note_lose_no_way() {
    let restart = |on, reading, why| OdometerNote {
        restart: Some(why),
        ..note(on, reading)
    };
    let replaced = Course::of_odometer(&[
        note("2027-01-01", "90000 km"),
        note("2027-02-01", "91000 km"),
        restart("2027-03-01", "10 km", Restart::Replaced),
        note("2027-04-01", "510 km"),
    ]);
    assert_eq!(replaced.last(), Some((day("2027-04-01"), 1500.0)));
    assert!((replaced.shown(1700.0) - 710.0).abs() < 1e-9);
    let wrong = Course::of_odometer(&[
        note("2027-01-01", "90000 km"),
        note("2027-02-01", "910000 km"),
        restart("2027-02-02", "91000 km", Restart::EarlierWrong),
    ]);
    assert_eq!(wrong.last(), Some((day("2027-02-02"), 1000.0)));
    assert_eq!(wrong.reached(500.0), Some(day("2027-01-17")));
}

#[test]
fn a_towed_rig_goes_by_its_trips() {
    let book = book(12, Some("1000 mi"));
    let mut known = walked("2027-03-20");
    let trip = |on: &str, miles: f64| (day(on), miles * 1.609_344);
    known.trips = vec![
        trip("2027-03-20", 1.0),
        trip("2027-05-01", 400.0),
        trip("2027-06-01", 700.0),
    ];
    let first = walk(&book, &known, None);
    assert_eq!(first.reason, DueReason::Distance);
    assert_eq!(
        first.on,
        day("2027-05-28"),
        "600 of 700 miles in the 31 days of May"
    );
    assert_eq!(first.at(), None, "there is no odometer to read it off");
}
