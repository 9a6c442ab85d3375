//! Labels: one a bay and point, or those that are named.

use crate::book::book;
use crate::hostile::{long, odd};
use crate::scene::words;
use baywalk_domain::torque::Practice;
use baywalk_paper::Paper;
use baywalk_paper::labels::{Labels, labels};

fn of(pen: fn(&str) -> String, only: &[&str]) -> Labels {
    let only: Vec<String> = only.iter().map(|code| (*code).to_owned()).collect();
    let edition = "baywalk 0.1.0";
    labels(
        &book(pen),
        &Practice::default(),
        &only,
        edition,
        &words("en"),
    )
}

#[test]
fn each_bay_and_each_point_has_one() {
    let book = book(str::to_owned);
    let points = book.points.iter().filter(|point| !point.retired).count();
    assert_eq!(of(str::to_owned, &[]).len(), book.bays.len() + points);
}

#[test]
fn those_that_are_named_are_printed_alone() {
    assert_eq!(of(str::to_owned, &["F", "F8"]).len(), 2);
    assert!(of(str::to_owned, &["Q9"]).is_empty());
}

#[test]
fn any_name_fits_or_is_cut() {
    for pen in [long as fn(&str) -> String, odd] {
        for paper in Paper::ALL {
            let bytes = of(pen, &[]).pdf(paper, &words("en")).unwrap();
            assert!(bytes.starts_with(b"%PDF-1.7"));
        }
    }
}
