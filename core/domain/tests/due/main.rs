//! When to look again: rules, notes, forecasts and notices, by values worked out by hand and by chance.

#![expect(
    clippy::unwrap_used,
    reason = "a test that can't go on stops with the reason"
)]

mod agreeing;
mod chance;
mod forecasts;
mod notices;
mod rules;
mod zones;

use baywalk_domain::due::{Known, OdometerNote};
use baywalk_domain::ids::RigId;
use baywalk_domain::rig::{Book, Rig, RigKind, ServiceKind, YearlyRule};
use baywalk_domain::units::Stated;
use chrono::NaiveDate;
use uuid::Uuid;

fn day(text: &str) -> NaiveDate {
    text.parse().unwrap()
}

fn book(months: u8, distance: Option<&str>) -> Book {
    Book::new(Rig {
        id: RigId::new(Uuid::from_u128(1)),
        name: "Wren".to_owned(),
        kind: RigKind::Motorhome,
        service: ServiceKind::Amp50,
        rule: YearlyRule {
            months,
            distance: distance.map(|text| Stated::parse_pair(text).unwrap()),
        },
        note: String::new(),
    })
}

fn note(on: &str, reading: &str) -> OdometerNote {
    OdometerNote {
        on: day(on),
        reading: Stated::parse_pair(reading).unwrap(),
        restart: None,
    }
}

/// A rig that was noted and walked on a day.
fn walked(on: &str) -> Known {
    Known {
        noted: Some(day("2020-01-01")),
        last_walk: Some(day(on)),
        last_end: Some(day(on)),
        ..Known::default()
    }
}
