//! Forecasts against simulated years of driving.

use super::chance::Chance;
use super::day;
use baywalk_domain::due::{Course, OUTING_KM, OdometerNote, Pace};
use baywalk_domain::units::{DistanceUnit, Stated};
use chrono::{Datelike, Days, NaiveDate};

/// What an odometer shows on each day of some years: trips come by chance, five times as often from
/// April to September as in the other months, each of some hundred kilometres.
fn driven(chance: &mut Chance, days: u64) -> Vec<(NaiveDate, f64)> {
    let first = day("2024-01-01");
    let mut km = 20_000.0;
    (0..days)
        .map(|n| {
            let on = first + Days::new(n);
            let often = if (4..=9).contains(&on.month()) {
                0.10
            } else {
                0.02
            };
            if chance.unit() < often {
                km += -250.0 * chance.unit().ln();
            }
            (on, km)
        })
        .collect()
}

fn note((on, km): (NaiveDate, f64)) -> OdometerNote {
    let reading = Stated::parse(&format!("{km:.0}"), DistanceUnit::Kilometres).unwrap();
    OdometerNote {
        on,
        reading,
        restart: None,
    }
}

#[test]
fn nine_in_ten_forecasts_hold_the_day_that_came() {
    let mut chance = Chance(7);
    let (mut held, mut all) = (0.0, 0.0);
    for _ in 0..400 {
        let years = driven(&mut chance, 2200);
        // Two years of notes on days by chance, some weeks apart.
        let mut notes = Vec::new();
        let mut at = 0;
        while at < 730 {
            notes.push(note(years[at]));
            at += 10 + usize::try_from(chance.below(60)).unwrap();
        }
        let course = Course::of_odometer(&notes);
        let last = notes.last().unwrap();
        let Some(pace) = Pace::of(&course, OUTING_KM) else {
            continue;
        };
        let km = last.reading.quantity().kilometres();
        let wanted = km + 1000.0 + f64::from(chance.below(4000));
        let Some((came, _)) = years
            .iter()
            .find(|(on, had)| *on > last.on && *had >= wanted)
        else {
            continue;
        };
        let told = pace.forecast(last.on, wanted - km).unwrap();
        assert!(told.from <= told.on && told.to.is_none_or(|to| told.on <= to));
        all += 1.0;
        held += f64::from(u8::from(
            told.from <= *came && told.to.is_none_or(|to| *came <= to),
        ));
    }
    let share = held / all;
    assert!(
        all > 350.0 && (0.84..=0.97).contains(&share),
        "{share} of {all}"
    );
}

#[test]
fn the_season_is_learned_and_moves_the_day() {
    let mut chance = Chance(11);
    let years = driven(&mut chance, 1461);
    let notes: Vec<_> = years.iter().step_by(14).map(|seen| note(*seen)).collect();
    let pace = Pace::of(&Course::of_odometer(&notes), OUTING_KM).unwrap();
    let [january, .., december] = pace.seasons();
    let july = pace.seasons()[6];
    assert!(
        july > 2.0 * january && july > 2.0 * december,
        "{:?}",
        pace.seasons()
    );
    // The same way takes longer from October on than from April on.
    let spring = day("2028-04-01");
    let autumn = day("2028-10-01");
    let takes = |from| (pace.forecast(from, 1500.0).unwrap().on - from).num_days();
    assert!(takes(autumn) > 2 * takes(spring));
}

#[test]
fn a_wrong_note_among_right_ones_changes_little() {
    let mut chance = Chance(13);
    let years = driven(&mut chance, 800);
    let right: Vec<_> = years.iter().step_by(20).map(|seen| note(*seen)).collect();
    let pace = |notes: &[OdometerNote]| Pace::of(&Course::of_odometer(notes), OUTING_KM).unwrap();
    let good = pace(&right).per_day();
    for place in [3, 20, right.len() - 1] {
        let mut wrong = right.clone();
        let ten = wrong[place].reading.quantity().kilometres() * 10.0;
        wrong[place] = note((wrong[place].on, ten));
        let found = pace(&wrong).per_day();
        assert!(
            (found / good - 1.0).abs() < 0.1,
            "{place}: {found} for {good}"
        );
    }
}

#[test]
fn nothing_is_told_of_nothing() {
    assert_eq!(Pace::of(&Course::of_odometer(&[]), OUTING_KM), None);
    let still = [(day("2027-01-01"), 5.0), (day("2027-05-01"), 5.0)].map(note);
    assert_eq!(Pace::of(&Course::of_odometer(&still), OUTING_KM), None);
    let once = [(day("2027-01-01"), 5.0), (day("2027-01-01"), 50.0)].map(note);
    assert_eq!(Pace::of(&Course::of_odometer(&once), OUTING_KM), None);
}
