//! Common practice, no source: about half an hour for all; if only two things are looked at, the
//! transfer switch and the distribution panel.
#![expect(
    clippy::unwrap_used,
    reason = "a test that can't go on stops with the reason"
)]

use baywalk_domain::pace::Pace;
use baywalk_domain::plan::{Basis, Plan, Proof, RigTask, plan};
use baywalk_domain::ranking::{History, ranks};
use baywalk_domain::rig::Book;
use baywalk_logbook::rigfile::layouts;
use std::collections::BTreeMap;

fn book(code: &str) -> Book {
    let layout = layouts().iter().find(|layout| layout.code == code).unwrap();
    let ids = "0190f0c4-0000-7000-8000-000000000001".parse().unwrap();
    layout.book(ids).unwrap()
}

/// The plan of a rig that nobody ever walked.
fn planned(book: &Book, minutes: u32) -> (RigTask, Plan) {
    let ranks = ranks(book, |_| History::default());
    let (pace, must) = (Pace::default(), BTreeMap::new());
    let basis = Basis {
        book,
        ranks: &ranks,
        pace: &pace,
        must: &must,
        bays: &[],
        seconds: 60 * minutes,
    };
    let task = RigTask::of(&basis).unwrap();
    let best = plan(&task.task);
    (task, best)
}

fn bays(book: &Book, (task, plan): &(RigTask, Plan)) -> Vec<String> {
    let stops = plan
        .stops
        .iter()
        .map(|stop| task.bays.get(stop.bay).unwrap());
    stops
        .map(|bay| book.bay(*bay).unwrap().name.clone())
        .collect()
}

#[test]
fn ten_bay_minutes_are_for_the_transfer_switch_and_the_distribution_panel() {
    for layout in ["sample-motorhome", "starter-motorhome-50a"] {
        let book = book(layout);
        let planned = planned(&book, 10);
        let mut bays = bays(&book, &planned);
        bays.sort();
        assert_eq!(planned.1.proof, Proof::Best);
        assert_eq!(
            bays,
            ["distribution panel", "transfer switch bay"],
            "{layout}"
        );
    }
}

#[test]
fn half_an_hour_and_a_little_is_enough_for_the_bays_of_a_quick_whole_walk() {
    for layout in ["sample-motorhome", "starter-motorhome-50a"] {
        let book = book(layout);
        let (task, plan) = planned(&book, 360);
        let in_use = book.points.iter().filter(|point| !point.retired);
        assert_eq!(plan.points(), in_use.count());
        let seconds = task.glance(&plan);
        assert!(seconds <= 35 * 60, "{layout}: {seconds} s");
    }
}
