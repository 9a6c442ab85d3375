//! Ranks, pace and musts of a small rig.

use crate::rehearsal::{AC_BAY, LINE, NEUTRAL, POST, SMELL, Walker, book, id};
use baywalk_domain::finding::{About, Finding, FindingKind, Raised};
use baywalk_domain::ids::{BayId, FindingId, PointId};
use baywalk_domain::pace::{Pace, Place, Step, samples, seconds_between};
use baywalk_domain::plan::{Basis, MustWhy, RigTask, musts, plan};
use baywalk_domain::ranking::{History, MOST_RANK, Rank, Since, ranks};
use baywalk_domain::rig::{Book, Priority, RigKind, Side};
use baywalk_domain::walk::{Act, AsFound, Grade, NotJudgedWhy};
use chrono::NaiveDate;
use proptest::prelude::*;
use std::collections::BTreeMap;

fn point(n: u128) -> PointId {
    PointId::new(id(n))
}

/// The rank of a point with a past.
fn rank(book: &Book, of: u128, history: &History) -> Rank {
    let ranks = ranks(book, |_| history.clone());
    ranks
        .into_iter()
        .find(|rank| rank.point == point(of))
        .unwrap()
}

fn since(days: u32, grades: &[Grade]) -> History {
    History {
        since: Some(Since { days, miles: None }),
        grades: grades.to_vec(),
    }
}

#[test]
fn a_rank_is_the_product_of_its_factors_in_either_half() {
    let rank = rank(&book(), NEUTRAL, &since(800, &[Grade::Moved]));
    let product: f64 = rank
        .factors
        .iter()
        .map(|f| f64::from(f.hundredths) / 100.0)
        .product();
    assert!(
        (f64::from(rank.worth) / 100.0 - product).abs() < 0.02,
        "{rank:?}"
    );
    let halves = f64::from(rank.likelihood()) * f64::from(rank.consequence()) / 100.0;
    assert!(
        (f64::from(rank.worth) - halves).abs() < 0.02 * halves,
        "{rank:?}"
    );
}

#[test]
fn what_moved_long_ago_or_matters_to_the_owner_ranks_higher() {
    let mut book = book();
    let worth = |book: &Book, history: &History| rank(book, LINE, history).worth;
    let fresh = worth(&book, &since(20, &[Grade::Held]));
    let old = worth(&book, &since(900, &[Grade::Held]));
    let moved = worth(&book, &since(900, &[Grade::Moved]));
    let again = worth(&book, &since(900, &[Grade::Moved, Grade::Moved]));
    assert!(fresh < old && old < moved && moved < again);
    // A look between tells nothing of a joint.
    assert_eq!(
        again,
        worth(
            &book,
            &since(900, &[Grade::LookedAt, Grade::Moved, Grade::Moved])
        )
    );
    let set = |book: &mut Book, word| {
        let point = book
            .points
            .iter_mut()
            .find(|p| p.id == point(LINE))
            .unwrap();
        point.priority = Some(word);
    };
    set(&mut book, Priority::Raise);
    assert!(worth(&book, &since(900, &[Grade::Moved])) > moved);
    set(&mut book, Priority::Lower);
    assert!(worth(&book, &since(900, &[Grade::Moved])) < moved);
}

#[test]
fn findings_settle_checks_the_owner_and_the_overdue_are_musts_and_closed_findings_are_not() {
    let mut book = book();
    book.points
        .iter_mut()
        .find(|p| p.id == point(POST))
        .unwrap()
        .priority = Some(Priority::Must);
    let on = NaiveDate::from_ymd_opt(2027, 3, 20).unwrap();
    let finding = |about| Finding {
        raised: Raised {
            id: FindingId::new(id(900)),
            kind: FindingKind::OutOfService,
            about,
        },
        walk: None,
        on,
        follow_up: None,
    };
    let ac = BayId::new(id(AC_BAY));
    let findings = [finding(About::Point(point(LINE))), finding(About::Bay(ac))];
    let (must, bays) = musts(
        &book,
        &findings,
        &[point(NEUTRAL)],
        &[point(SMELL), point(LINE)],
    );
    let expected = [
        (LINE, MustWhy::OpenFinding),
        (NEUTRAL, MustWhy::Settle),
        (POST, MustWhy::Owner),
        (SMELL, MustWhy::Overdue),
    ];
    assert_eq!(must, expected.map(|(n, why)| (point(n), why)).into());
    assert_eq!(bays, [ac]);
    let mut closed = findings.clone();
    for finding in &mut closed {
        finding.follow_up = Some(baywalk_domain::finding::FollowUp {
            decision: baywalk_domain::finding::Decision::Mended,
            by: None,
            note: String::new(),
        });
    }
    let (must, bays) = musts(&book, &closed, &[], &[]);
    assert_eq!((must.len(), bays.len()), (1, 0));
}

#[test]
fn musts_are_in_the_plan_of_the_rig_whatever_they_are_worth() {
    let book = book();
    let ranks = ranks(&book, |_| History::default());
    let must = BTreeMap::from([(point(SMELL), MustWhy::Owner)]);
    let pace = Pace::default();
    let basis = |seconds| Basis {
        book: &book,
        ranks: &ranks,
        pace: &pace,
        must: &must,
        bays: &[],
        seconds,
    };
    for seconds in [200, 400, 3_600] {
        let task = RigTask::of(&basis(seconds)).unwrap();
        let best = plan(&task.task);
        let points: Vec<PointId> = best
            .stops
            .iter()
            .flat_map(|stop| task.points_of(stop))
            .collect();
        assert!(points.contains(&point(SMELL)), "{seconds}: {points:?}");
        let span = task.span(&best);
        assert_eq!(span.usual, best.seconds());
        assert!(span.quick <= span.usual && span.usual <= span.slow);
    }
}

#[test]
fn the_pace_is_told_by_the_acts_and_not_over_what_says_nothing_of_the_hand() {
    let mut walker = Walker::at_ac_bay();
    let of = |walker: &Walker| samples(&walker.entries, &walker.book);
    assert_eq!(of(&walker), []);
    let found = |walker: &mut Walker, n, found| {
        walker
            .act(Act::Found {
                point: point(n),
                found,
            })
            .unwrap()
    };
    found(&mut walker, LINE, AsFound::LookedAt { tugged: true });
    let told = of(&walker);
    assert_eq!(told.len(), 1);
    // The tool was set before, five seconds each: that counts to the point it was set for.
    assert_eq!((told[0].step, told[0].seconds), (Step::Screw, 10));
    let why = NotJudgedWhy::Other;
    let note = "dark".to_owned();
    found(&mut walker, NEUTRAL, AsFound::NotJudged { why, note });
    assert_eq!(of(&walker).len(), 1);
}

fn places() -> impl Strategy<Value = Place> {
    let sides = prop::sample::select(vec![
        Side::Left,
        Side::Right,
        Side::Front,
        Side::Back,
        Side::Inside,
        Side::Roof,
        Side::Under,
    ]);
    (0_u16..=1_000, sides).prop_map(|(station, side)| Place { station, side })
}

proptest! {
    #[test]
    fn ways_are_the_same_both_ways_and_short(a in places(), b in places()) {
        let way = seconds_between(RigKind::Motorhome, a, b);
        prop_assert_eq!(way, seconds_between(RigKind::Motorhome, b, a));
        prop_assert!(way <= 240, "{way}");
    }

    #[test]
    fn a_rank_stays_within_its_bounds(days in 0_u32..9_000, miles in 0.0..1e6_f64) {
        let history = History {
            since: Some(Since { days, miles: Some(miles) }),
            grades: vec![Grade::Apart],
        };
        for rank in ranks(&book(), |_| history.clone()) {
            prop_assert!((1..=MOST_RANK).contains(&rank.worth));
        }
    }
}
