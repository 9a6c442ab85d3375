//! Minutes in each bay: the last walk as bars, the usual of all walks as a tick.

use super::Chart;
use super::page::{MARGIN, line, many, sheet, words as write};
use super::plot::{Axis, Map, Spot, axes};
use crate::table::{Cell, Table};
use baywalk_shapes::{Anchor, Drawing, Path, Role};
use baywalk_words::Words;
use chrono::NaiveDate;

/// How long one bay stood open.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct BayMinutes {
    /// Its code.
    pub code: String,
    /// Its name.
    pub name: String,
    /// Seconds in each walk in which it was open, oldest first.
    pub walks: Vec<(NaiveDate, u32)>,
}

impl BayMinutes {
    /// The middle of all walks, in minutes.
    fn usual(&self) -> f64 {
        let mut seconds: Vec<u32> = self.walks.iter().map(|(_, seconds)| *seconds).collect();
        seconds.sort_unstable();
        let at = |place: usize| f64::from(seconds.get(place).copied().unwrap_or(0));
        let half = seconds.len() / 2;
        let middle = if seconds.len() % 2 == 1 {
            at(half)
        } else {
            0.5 * (at(half.saturating_sub(1)) + at(half))
        };
        middle / 60.0
    }

    fn in_walk(&self, day: Option<NaiveDate>) -> f64 {
        let found = self
            .walks
            .iter()
            .rev()
            .find(|(other, _)| Some(*other) == day);
        found.map_or(0.0, |(_, seconds)| f64::from(*seconds) / 60.0)
    }
}

const COLUMNS: [&str; 4] = ["bay", "name", "day", "minutes"];
const ROW: f64 = 30.0;

/// Minutes in each bay, in the order of the bays.
#[must_use]
pub fn minutes(bays: &[BayMinutes], words: &Words, width: f64) -> Chart {
    let mut drawing = sheet(width);
    let day = bays
        .iter()
        .filter_map(|bay| bay.walks.last())
        .map(|(day, _)| *day)
        .max();
    let told = match day {
        None => vec![words.say("past-minutes-none")],
        Some(day) => told(bays, day, words),
    };
    if day.is_none() {
        drawing.height = line(&mut drawing, 8.0, &words.say("past-minutes-none"));
    } else {
        bars(&mut drawing, bays, day, words);
    }
    let rows = bays.iter().flat_map(|bay| {
        bay.walks.iter().map(|(day, seconds)| {
            let minutes = Cell::number(f64::from(*seconds) / 60.0, 2);
            [
                Cell::plain(&bay.code),
                Cell::text(&bay.name),
                (*day).into(),
                minutes,
            ]
        })
    });
    Chart {
        title: words.say("past-minutes"),
        told,
        drawing,
        numbers: Table::new("minutes", &COLUMNS, rows.collect()),
    }
}

fn told(bays: &[BayMinutes], day: NaiveDate, words: &Words) -> Vec<String> {
    let whole: f64 = bays.iter().map(|bay| bay.in_walk(Some(day))).sum();
    let longest = bays.iter().max_by(|x, y| {
        let of = |bay: &BayMinutes| bay.in_walk(Some(day));
        of(x).total_cmp(&of(y))
    });
    let mut told = vec![
        words.fill(
            "past-minutes-told",
            &[
                ("date", words.date(day).into()),
                ("all", words.number(whole, 0).into()),
                (
                    "bay",
                    longest
                        .map(|bay| format!("{}, {}", bay.code, bay.name))
                        .unwrap_or_default()
                        .into(),
                ),
                (
                    "most",
                    words
                        .number(longest.map_or(0.0, |bay| bay.in_walk(Some(day))), 0)
                        .into(),
                ),
            ],
        ),
    ];
    if bays.iter().all(|bay| bay.walks.len() < 2) {
        told.push(words.say("past-one-walk"));
    }
    told
}

fn bars(drawing: &mut Drawing, bays: &[BayMinutes], day: Option<NaiveDate>, words: &Words) {
    let most = bays.iter().map(|bay| bay.usual().max(bay.in_walk(day)));
    let most = most.fold(1.0, f64::max);
    let top = line(drawing, 2.0, &words.say("past-minutes-legend"));
    let word = |value: &f64| words.number(*value, 0);
    let none = |_: &f64| String::new();
    let spot = Spot {
        top,
        height: many(bays.len()) * ROW + 34.0,
        left: 46.0,
        foot: 24.0,
    };
    let x = Axis {
        over: 0.0..most * 1.15,
        ticks: 5,
        word: &word,
    };
    let y = Axis {
        over: many(bays.len())..0.0,
        ticks: 0,
        word: &none,
    };
    if let Some(map) = axes(drawing, spot, &x, &y) {
        for (place, bay) in bays.iter().enumerate() {
            bar(drawing, &map, many(place), bay, day);
        }
    }
    let foot = top + spot.height + 12.0;
    let middle = (drawing.width + spot.left) / 2.0;
    let how = Anchor::Middle;
    let room = drawing.width - spot.left - MARGIN;
    write(
        drawing,
        (middle, foot),
        how,
        &words.say("past-minutes-axis"),
        room,
    );
    drawing.height = foot + 8.0;
}

/// One bay: its code, a bar for the last walk, a tick where walks usually end.
fn bar(drawing: &mut Drawing, map: &Map, place: f64, bay: &BayMinutes, day: Option<NaiveDate>) {
    let (from, head) = map.at(0.0, place);
    let middle = head + ROW / 2.0;
    let (to, _) = map.at(bay.in_walk(day), place);
    let beside = (from - 6.0, middle + 5.0);
    write(drawing, beside, Anchor::End, &bay.code, from - 8.0);
    if to > from {
        let bar = Path::rectangle(from, middle - 7.0, to - from, 14.0);
        drawing.fill(Role::Ink, bar);
    }
    if bay.walks.len() > 1 {
        let (usual, _) = map.at(bay.usual(), place);
        let tick = || Path::line((usual, middle - 13.0), (usual, middle + 13.0));
        drawing.stroke(Role::Plate, 6.0, tick());
        drawing.stroke(Role::Ink, 2.0, tick());
    }
}
