//! When next, through the logbook: what is asked by which rule, notices that hang on no clock, and a
//! calendar that calls off what it showed.

#![expect(
    clippy::unwrap_used,
    reason = "a test that can't go on stops with the reason"
)]

use baywalk_domain::ids::RigId;
use baywalk_domain::moment::{Boot, Moment};
use baywalk_logbook::{Clock, Logbook};
use baywalk_screens::{Core, asked, calendar, files, notice, rule, usage};
use baywalk_words::Words;
use chrono::{DateTime, Duration, FixedOffset};
use std::path::Path;
use std::sync::atomic::{AtomicU64, Ordering};
use uuid::Uuid;

/// A clock that was put to a moment and goes on by a minute each look.
#[derive(Debug)]
struct Put {
    at: DateTime<FixedOffset>,
    looks: AtomicU64,
    ids: u128,
}

impl Clock for Put {
    fn now(&self) -> Moment {
        let looks = self.looks.fetch_add(1, Ordering::Relaxed);
        let minutes = i64::try_from(looks).unwrap();
        Moment {
            wall: self.at + Duration::minutes(minutes),
            boot: Boot::new("here", looks * 60),
        }
    }
    fn new_id(&self) -> Uuid {
        let looks = self.looks.fetch_add(1, Ordering::Relaxed);
        Uuid::from_u128(self.ids + u128::from(looks))
    }
}

fn open(folder: &Path, at: &str, ids: u128) -> Core {
    let clock = Put {
        at: DateTime::parse_from_rfc3339(at).unwrap(),
        looks: AtomicU64::new(0),
        ids,
    };
    Core {
        logbook: Logbook::open(folder, Box::new(clock)).unwrap(),
        words: Words::for_locales(&["en"]),
    }
}

fn fields(pairs: &[(&str, &str)]) -> Vec<(String, String)> {
    let owned = |(name, text): &(&str, &str)| ((*name).to_owned(), (*text).to_owned());
    pairs.iter().map(owned).collect()
}

/// A rig with a rule for its battery posts and one for the whole, and a hard impact.
fn rig(core: &mut Core) -> RigId {
    let rig = files::start_from(core, "sample-motorhome", "Wren").unwrap();
    usage::odometer(core, rig, "40000 mi").unwrap();
    let posts = fields(&[("about", "battery_post"), ("months", "3")]);
    rule::set(core, rig, None, &posts).unwrap();
    let hall = fields(&[
        ("months", "18"),
        ("word", "stands in a hall"),
        ("hard_impact", "2"),
    ]);
    rule::set(core, rig, None, &hall).unwrap();
    usage::event(core, rig, "hard_impact", ("", "", "curb")).unwrap();
    rig
}

#[test]
fn each_thing_that_is_asked_has_its_rule_its_day_and_what_came_first() {
    let folder = tempfile::tempdir().unwrap();
    let mut core = open(folder.path(), "2027-03-20T09:00:00-07:00", 1 << 64);
    let rig = rig(&mut core);
    let facts = asked::asked(&core, rig).unwrap();
    assert_eq!(facts.len(), 3, "{facts:?}");
    let says = |words: &str| facts.iter().find(|fact| fact.rule.contains(words)).unwrap();
    let whole = says("every 18 months");
    assert!(
        whole.rule.contains("The owner's word: stands in a hall"),
        "{whole:?}"
    );
    assert!(!whole.rule.contains("every 12 months"), "{whole:?}");
    assert_eq!(whole.first, "no whole walk is recorded yet");
    assert!(says("every 3 months").rule.contains("battery"), "{facts:?}");
    let hit = facts
        .iter()
        .find(|fact| fact.first == "there was a hard impact")
        .unwrap();
    assert_eq!(
        (hit.on.as_str(), hit.when.as_str()),
        ("2027-03-22", "22 March 2027")
    );
}

#[test]
fn notices_are_the_same_by_any_clock() {
    let folder = tempfile::tempdir().unwrap();
    rig(&mut open(
        folder.path(),
        "2027-03-20T09:00:00-07:00",
        1 << 64,
    ));
    let told = |at: &str| {
        let core = open(folder.path(), at, 2 << 64);
        format!("{:?}", notice::notices(&core).unwrap())
    };
    let now = told("2027-03-20T12:00:00-07:00");
    assert!(now.contains("2027-03-22"), "{now}");
    for at in [
        "1970-01-01T00:00:00Z",
        "2027-03-21T03:59:59+14:00",
        "2027-03-22T09:00:00-12:00",
        "2028-02-29T23:30:00Z",
        "2199-12-31T23:59:59+05:45",
    ] {
        assert_eq!(told(at), now, "{at}");
    }
}

/// Status and sequence of each event of a calendar file, by name.
fn events(core: &Core, rig: RigId) -> Vec<(String, String, u64)> {
    let text = calendar::file(core, rig).unwrap();
    let value = |event: &str, name: &str| {
        let line = event.lines().find_map(|line| line.strip_prefix(name));
        line.unwrap().to_owned()
    };
    let mut events: Vec<_> = text
        .split("BEGIN:VEVENT")
        .skip(1)
        .map(|event| {
            let sequence = value(event, "SEQUENCE:").parse().unwrap();
            (value(event, "UID:"), value(event, "STATUS:"), sequence)
        })
        .collect();
    events.sort();
    events
}

#[test]
fn what_is_asked_no_longer_is_called_off_for_fifteen_months() {
    let folder = tempfile::tempdir().unwrap();
    let mut core = open(folder.path(), "2027-03-20T09:00:00-07:00", 1 << 64);
    let rig = rig(&mut core);
    let before = events(&core, rig);
    assert!(before.iter().all(|(_, status, _)| status == "CONFIRMED"));
    rule::drop(&mut core, rig, 1).unwrap();
    let after = events(&core, rig);
    assert_eq!(after.len(), before.len());
    let off: Vec<_> = after
        .iter()
        .filter(|(_, status, _)| status == "CANCELLED")
        .collect();
    assert_eq!(off.len(), 1);
    let (name, _, sequence) = off[0];
    assert!(
        before
            .iter()
            .any(|(known, _, first)| known == name && sequence > first)
    );
    // The tables are computed anew from the ledger: the same stands there, nothing of it is kept apart.
    core.logbook.rebuild().unwrap();
    assert_eq!(events(&core, rig), after);
    drop(core);
    for (at, listed) in [
        ("2028-06-20T09:00:00-07:00", 1),
        ("2028-06-21T09:00:00-07:00", 0),
    ] {
        let core = open(folder.path(), at, 3 << 64);
        let off = events(&core, rig)
            .iter()
            .filter(|(_, status, _)| status == "CANCELLED")
            .count();
        assert_eq!(off, listed, "{at}");
    }
}
