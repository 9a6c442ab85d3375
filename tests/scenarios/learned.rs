//! What a rig's own past tells, and that it only ever brings the due day nearer.

#![expect(
    clippy::unwrap_used,
    reason = "a test that can't go on stops with the reason"
)]

use baywalk_domain::due::{Asked, DueReason, Known, due, learned};
use baywalk_domain::ids::{ActId, PointId};
use baywalk_domain::loosening::{Ended, Tight, Track};
use baywalk_domain::rig::{Book, FasteningKind, Role};
use baywalk_logbook::rigfile;
use chrono::NaiveDate;
use uuid::Uuid;

fn day(text: &str) -> NaiveDate {
    text.parse().unwrap()
}

/// A rig with its power terminals of one kind, all set and found held a year later.
fn rig() -> (Book, Known, Vec<PointId>) {
    let layouts = rigfile::layouts();
    let layout = layouts
        .iter()
        .find(|layout| layout.code == "sample-motorhome")
        .unwrap();
    let book = layout.book(ActId::new(Uuid::from_u128(1))).unwrap();
    let of_kind = book.points.iter().filter(|point| {
        point.terminal().is_some_and(|terminal| {
            terminal.fastening.kind == FasteningKind::PressureScrew && terminal.role == Role::Power
        })
    });
    let points: Vec<PointId> = of_kind.map(|point| point.id).collect();
    let last = day("2028-03-20");
    let mut known = Known {
        noted: Some(day("2026-03-20")),
        last_walk: Some(last),
        last_end: Some(last),
        ..Known::default()
    };
    let tight = Tight {
        since: day("2027-03-20"),
        set: true,
        held: Some(last),
    };
    for point in &points {
        let track = Track {
            seen: Some(last),
            tight: Some(tight),
        };
        known.tracks.insert(*point, track);
    }
    (book, known, points)
}

fn moved(known: &mut Known, points: &[PointId], count: usize) {
    let tight = Tight {
        since: day("2026-03-20"),
        set: true,
        held: None,
    };
    let ended = Ended {
        tight: Some(tight),
        moved: Some(day("2027-03-20")),
    };
    let each = points.iter().cycle().take(count);
    known.ended.extend(each.map(|point| (*point, ended)));
}

#[test]
fn five_that_moved_tell_a_law_and_four_a_share_alone() {
    let (book, mut known, points) = rig();
    assert!(points.len() >= 10, "the sample has {}", points.len());
    moved(&mut known, &points, 4);
    let few = learned(&book, &known);
    assert_eq!(
        (few.kinds[0].moved, few.kinds[0].in_a_year, few.first),
        (4, None, None)
    );
    assert!(few.kinds[0].proportion.is_some());
    moved(&mut known, &points, 8);
    let enough = learned(&book, &known);
    let chance = enough.kinds[0].in_a_year.unwrap();
    assert!(chance.least < chance.share && chance.share < chance.most && chance.share > 0.05);
    let (on, point) = enough.first.unwrap();
    assert!(points.contains(&point) && on > day("2028-03-20"));
    let walk = |learned| {
        let all = due(&book, &known, learned);
        all.into_iter()
            .find(|due| due.asked == Asked::Walk)
            .unwrap()
    };
    let (fixed, shortened) = (walk(None), walk(Some(on)));
    assert_eq!(fixed.reason, DueReason::Months);
    assert_eq!((shortened.on, shortened.reason), (on, DueReason::Learned));
    assert!(shortened.on < fixed.on);
    // Where little moves, the day is beyond the year and changes nothing.
    assert_eq!(walk(Some(day("2030-01-01"))).on, fixed.on);
}

#[test]
fn what_was_never_known_to_be_tight_is_told_beside_and_kept_out() {
    let (book, mut known, points) = rig();
    moved(&mut known, &points, 9);
    let before = learned(&book, &known);
    let never = Ended {
        tight: None,
        moved: Some(day("2027-03-20")),
    };
    known
        .ended
        .extend(points.iter().map(|point| (*point, never)));
    let after = learned(&book, &known);
    assert_eq!(after.kinds, before.kinds);
    assert_eq!(after.first, before.first);
    assert_eq!(usize::try_from(after.never_tight).unwrap(), points.len());
}
