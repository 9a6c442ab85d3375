//! Times the fit of lives in a file (after, by or nothing, a line each), and the list of what is due of
//! twenty rigs of three hundred points: `loosening_bench FILE`.
#![expect(
    clippy::unwrap_used,
    clippy::print_stdout,
    clippy::indexing_slicing,
    reason = "a bench prints, stops where it can't go on, and indexes what it made"
)]

use baywalk_domain::due::{Known, Limit, OdometerNote, Reach, Rule, due, learned, notices};
use baywalk_domain::ids::{ActId, PointId, RigId, RuleId};
use baywalk_domain::loosening::{Ended, Life, Prior, Tight, Track, fit, npmle};
use baywalk_domain::rig::{Book, PointKind, Role};
use baywalk_domain::units::Stated;
use baywalk_logbook::rigfile;
use chrono::{Days, NaiveDate};
use std::time::Instant;
use uuid::Uuid;

/// The middle of some timings, in milliseconds.
fn middle(rounds: usize, mut work: impl FnMut()) -> f64 {
    let mut times: Vec<f64> = (0..rounds)
        .map(|_| {
            let begun = Instant::now();
            work();
            begun.elapsed().as_secs_f64() * 1e3
        })
        .collect();
    times.sort_by(f64::total_cmp);
    times[rounds / 2]
}

fn lives(path: &str) -> Vec<Life> {
    let text = std::fs::read_to_string(path).unwrap();
    text.lines()
        .map(|line| {
            let (after, by) = line.split_once(',').unwrap();
            let after: f64 = after.parse().unwrap();
            match by {
                "" => Life::held(after).unwrap(),
                by => Life::moved(after, by.parse().unwrap()).unwrap(),
            }
        })
        .collect()
}

/// A yearly rule by the road too, and rules of the owner for a bay and for a kind.
fn ruled(book: &mut Book, known: &mut Known) {
    book.rig.rule.distance = Some(Stated::parse_pair("5000 mi").unwrap());
    let kinds = book.points.iter().filter_map(|point| point.terminal());
    let kind = kinds
        .map(|terminal| terminal.fastening.kind)
        .next()
        .unwrap();
    let rules = [
        (
            Reach::Bay(book.bays[0].id),
            Limit::Distance(Stated::parse_pair("3000 km").unwrap()),
        ),
        (Reach::Kind(kind), Limit::Months(6)),
    ];
    known
        .rules
        .extend(rules.into_iter().zip(1..).map(|((reach, limit), n)| Rule {
            id: RuleId::new(Uuid::from_u128(n)),
            reach,
            limits: vec![limit],
            word: String::new(),
        }));
}

/// A rig of some points with years of walks behind it; in every ninth terminal one life ended.
fn rig(n: u128, points: usize, years: u64) -> (RigId, Book, Known) {
    let layout = rigfile::layouts().first().unwrap();
    let rig = RigId::new(Uuid::from_u128(n));
    let mut book = layout.book(ActId::new(Uuid::from_u128(n))).unwrap();
    let mut at = 0_u128;
    while book.points.len() < points {
        let mut copy = book.points[usize::try_from(at).unwrap()].clone();
        at += 1;
        copy.id = PointId::made_by(ActId::new(Uuid::from_u128(n)), &at.to_string());
        book.points.push(copy);
    }
    book.points.truncate(points);
    let day = |days: u64| NaiveDate::from_ymd_opt(2017, 3, 20).unwrap() + Days::new(days);
    let mut known = Known {
        noted: Some(day(0)),
        last_walk: Some(day(365 * years)),
        last_end: Some(day(365 * years)),
        ..Known::default()
    };
    for (place, point) in book.points.iter().enumerate() {
        let last = day(365 * years);
        let tight = Some(Tight {
            since: day(0),
            set: place % 3 == 0,
            held: Some(last),
        });
        known.tracks.insert(
            point.id,
            Track {
                seen: Some(last),
                tight,
            },
        );
        let carries =
            matches!(&point.kind, PointKind::Terminal(terminal) if terminal.role == Role::Power);
        for year in
            (1..years).filter(|year| carries && (place + usize::try_from(*year).unwrap()) % 9 == 0)
        {
            let since = day(365 * (year - 1));
            let tight = Some(Tight {
                since,
                set: true,
                held: None,
            });
            known.ended.push((
                point.id,
                Ended {
                    tight,
                    moved: Some(day(365 * year)),
                },
            ));
        }
    }
    for week in 0..years * 26 {
        let km = format!("{}", 20_000 + week * 211);
        known.odometer.push(OdometerNote {
            on: day(week * 14),
            reading: Stated::parse_pair(&format!("{km} km")).unwrap(),
            restart: None,
        });
    }
    ruled(&mut book, &mut known);
    (rig, book, known)
}

fn main() {
    if let Some(path) = std::env::args().nth(1) {
        let lives = lives(&path);
        println!(
            "fit {} {:.3} ms",
            lives.len(),
            middle(21, || assert!(fit(&lives, &Prior::FLAT).is_ok()))
        );
        let found = fit(&lives, &Prior::FLAT).unwrap();
        println!(
            "fit {:.12} {:.12} {:.9}",
            found.law.shape(),
            found.law.scale(),
            found.log_likelihood
        );
        println!(
            "npmle {} {:.3} ms",
            lives.len(),
            middle(3, || drop(npmle(&lives)))
        );
    }
    let sizes = [
        (300, 2),
        (300, 5),
        (300, 10),
        (300, 20),
        (300, 40),
        (600, 10),
        (1200, 10),
        (2400, 10),
    ];
    for (points, years) in sizes {
        let rigs: Vec<_> = (0..20).map(|n| rig(n, points, years)).collect();
        let list = middle(11, || {
            let all: Vec<_> = rigs
                .iter()
                .map(|(id, book, known)| (*id, due(book, known, None)))
                .collect();
            let items = all
                .iter()
                .flat_map(|(id, due)| due.iter().map(move |due| (*id, due)));
            assert!(!notices(items, 0).is_empty());
        });
        let notes = rigs[0].2.odometer.len();
        println!("due and notices of 20 rigs, {points} points, {notes} notes: {list:.3} ms");
        let (_, book, known) = &rigs[0];
        let first = learned(book, known);
        let one = middle(5, || drop(learned(book, known)));
        let ended = known.ended.len();
        println!(
            "learned of one rig, {ended} ended lives, due {:?}: {one:.2} ms",
            first.first.map(|f| f.0)
        );
    }
}
