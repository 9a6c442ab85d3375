//! Rows of notes against the plain way of finding the longest that agrees.

#![expect(
    clippy::indexing_slicing,
    reason = "places come from loops over the length of what they index"
)]

use super::chance::Chance;
use super::day;
use baywalk_domain::due::{Course, OdometerNote};
use baywalk_domain::units::{DistanceUnit, Stated};
use chrono::{Days, NaiveDate};

type Note = (NaiveDate, f64);

/// Notes of a rig, each now and then wrong by a digit, out of order, or on the day of the one before.
fn noted(chance: &mut Chance, many: u32) -> Vec<Note> {
    let (mut on, mut km) = (day("2024-01-01"), 20_000_u32);
    (0..many)
        .map(|_| {
            on = on + Days::new(chance.below(30).into());
            km += chance.below(900);
            let shown = match chance.below(12) {
                0 => km * 10,
                1 => km / 10,
                2 => km - chance.below(1500),
                3 => km + chance.below(9000),
                _ => km,
            };
            let noted = if chance.below(15) == 0 {
                on - Days::new(chance.below(60).into())
            } else {
                on
            };
            (noted, f64::from(shown))
        })
        .collect()
}

/// The longest row by trying every earlier note before every note; of two as long the newer.
fn plainly(notes: &[Note]) -> Vec<Note> {
    let follows = |before: &Note, after: &Note| {
        let days = f64::from(i32::try_from((after.0 - before.0).num_days()).unwrap());
        days >= 0.0 && after.1 >= before.1 && after.1 - before.1 <= 2000.0 * days.max(1.0)
    };
    let mut rows: Vec<Vec<usize>> = Vec::new();
    for place in 0..notes.len() {
        let fits = (0..place).filter(|before| follows(&notes[*before], &notes[place]));
        let before = fits.max_by_key(|before| (rows[*before].len(), *before));
        let mut row = before.map_or_else(Vec::new, |before| rows[before].clone());
        row.push(place);
        rows.push(row);
    }
    let longest = (0..notes.len()).max_by_key(|place| (rows[*place].len(), *place));
    longest.map_or_else(Vec::new, |place| {
        rows[place].iter().map(|kept| notes[*kept]).collect()
    })
}

#[test]
fn the_row_that_is_kept_is_the_longest_that_agrees() {
    let mut chance = Chance(41);
    let mut left_out = 0;
    for case in 0..3_000 {
        let many = chance.below(40);
        let notes = noted(&mut chance, many);
        let given: Vec<OdometerNote> = notes
            .iter()
            .map(|(on, km)| OdometerNote {
                on: *on,
                reading: Stated::parse(&format!("{km}"), DistanceUnit::Kilometres).unwrap(),
                restart: None,
            })
            .collect();
        let kept = plainly(&notes);
        left_out += notes.len() - kept.len();
        // A day has one mark, its last note.
        let mut marks: Vec<Note> = Vec::new();
        for (on, km) in &kept {
            marks.retain(|(day, _)| day != on);
            marks.push((*on, km - kept[0].1));
        }
        let course = Course::of_odometer(&given);
        assert_eq!(course.marks(), marks, "case {case}: {notes:?}");
    }
    assert!(left_out > 3_000, "{left_out}: the run is void");
}
