//! The voltage of the service as it was measured on power-up, walk by walk.

use super::Chart;
use super::page::{BROKEN, MARGIN, line, many, sheet, words as write};
use super::plot::{Axis, Map, Spot, axes};
use crate::table::{Cell, Table};
use baywalk_domain::supply::ReadingStep;
use baywalk_shapes::{Anchor, Drawing, Path, Role};
use baywalk_words::Words;
use chrono::{Datelike, NaiveDate};

/// The readings of the service in one walk, in volts.
#[derive(Debug, Clone, PartialEq)]
pub struct VoltWalk {
    /// The day of the walk.
    pub day: NaiveDate,
    /// The readings that count, each at most once.
    pub read: Vec<(ReadingStep, f64)>,
    /// The limits by which a leg was judged.
    pub limits: Option<(f64, f64)>,
}

/// What is shown: each leg at the supply before plugging in, and at an outlet after.
pub const SERVICE_READINGS: [ReadingStep; 4] = [
    ReadingStep::SupplyL1N,
    ReadingStep::SupplyL2N,
    ReadingStep::Leg1,
    ReadingStep::Leg2,
];

const COLUMNS: [&str; 5] = ["day", "reading", "volts", "least", "most"];

/// The voltage of the service through the walks, oldest first.
#[must_use]
pub fn volts(walks: &[VoltWalk], words: &Words, width: f64) -> Chart {
    let mut drawing = sheet(width);
    let steps: Vec<ReadingStep> = SERVICE_READINGS
        .into_iter()
        .filter(|step| walks.iter().any(|walk| of(walk, *step).is_some()))
        .collect();
    let mut told: Vec<String> = steps
        .iter()
        .map(|step| line_told(walks, *step, words))
        .collect();
    if steps.is_empty() {
        told.push(words.say("past-volts-none"));
        drawing.height = line(&mut drawing, 8.0, &words.say("past-volts-none"));
    } else {
        if walks.len() == 1 {
            told.push(words.say("past-one-walk"));
        }
        drawn(&mut drawing, walks, &steps, words);
    }
    let rows = walks.iter().flat_map(|walk| {
        let limit = |of: Option<f64>| Cell::from(of.map(|volts| Cell::number(volts, 3)));
        walk.read.iter().map(move |(step, volts)| {
            let [least, most] = [
                walk.limits.map(|(least, _)| least),
                walk.limits.map(|(_, most)| most),
            ];
            [
                walk.day.into(),
                Cell::code(*step),
                Cell::number(*volts, 3),
                limit(least),
                limit(most),
            ]
        })
    });
    Chart {
        title: words.say("past-volts"),
        told,
        drawing,
        numbers: Table::new("volts", &COLUMNS, rows.collect()),
    }
}

fn of(walk: &VoltWalk, step: ReadingStep) -> Option<f64> {
    let found = walk.read.iter().find(|(other, _)| *other == step);
    found.map(|(_, volts)| *volts)
}

fn line_told(walks: &[VoltWalk], step: ReadingStep, words: &Words) -> String {
    let read: Vec<f64> = walks.iter().filter_map(|walk| of(walk, step)).collect();
    let number = |volts: f64| words.number(volts, 1);
    let least = number(read.iter().copied().fold(f64::INFINITY, f64::min));
    let most = number(read.iter().copied().fold(f64::NEG_INFINITY, f64::max));
    let key = if least == most {
        "past-volts-same"
    } else {
        "past-volts-told"
    };
    let args = [
        ("reading", words.code(step).into()),
        ("walks", read.len().into()),
        ("least", least.into()),
        ("most", most.into()),
        (
            "last",
            number(read.last().copied().unwrap_or(f64::NAN)).into(),
        ),
    ];
    words.fill(key, &args)
}

fn drawn(drawing: &mut Drawing, walks: &[VoltWalk], steps: &[ReadingStep], words: &Words) {
    let limits = walks.iter().rev().find_map(|walk| walk.limits);
    let mut top = 6.0;
    let mut legend = |drawing: &mut Drawing, text: &str| {
        let (beside, room) = ((MARGIN + 22.0, top + 14.0), drawing.width - 30.0);
        let middle = (MARGIN + 8.0, top + 9.0);
        top = write(drawing, beside, Anchor::Start, text, room) - 10.0;
        middle
    };
    for step in steps {
        let at = legend(drawing, &words.code(*step));
        mark(drawing, *step, at);
    }
    if limits.is_some() {
        let (x, y) = legend(drawing, &words.say("past-volts-limits"));
        let limit = Path::line((x - 8.0, y), (x + 10.0, y));
        drawing.dashed(Role::Ink, 1.0, BROKEN, limit);
    }
    let spot = Spot {
        top,
        height: 190.0,
        left: 48.0,
        foot: 8.0,
    };
    let word = |value: &f64| words.number(*value, 0);
    let none = |_: &f64| String::new();
    let x = Axis {
        over: -0.5..many(walks.len()) - 0.5,
        ticks: 0,
        word: &none,
    };
    let y = Axis {
        over: span(walks, limits),
        ticks: 5,
        word: &word,
    };
    if let Some(map) = axes(drawing, spot, &x, &y) {
        for volts in limits.iter().flat_map(|(least, most)| [*least, *most]) {
            let ends = [(-0.5, volts), (many(walks.len()) - 0.5, volts)];
            if let Some(path) = map.line(ends) {
                drawing.dashed(Role::Ink, 1.0, BROKEN, path);
            }
        }
        for step in steps {
            series(drawing, &map, walks, *step);
        }
        days(drawing, &map, walks, top + spot.height + 10.0);
    }
    drawing.height = top + spot.height + 18.0;
}

/// The volts that are covered: all readings and limits, with room.
fn span(walks: &[VoltWalk], limits: Option<(f64, f64)>) -> std::ops::Range<f64> {
    let read = walks
        .iter()
        .flat_map(|walk| &walk.read)
        .map(|(_, volts)| *volts);
    let all = || {
        read.clone()
            .chain(limits.iter().flat_map(|(least, most)| [*least, *most]))
    };
    let least = all().fold(f64::INFINITY, f64::min);
    let most = all().fold(f64::NEG_INFINITY, f64::max);
    (least - 4.0).floor()..(most + 4.0).ceil()
}

fn series(drawing: &mut Drawing, map: &Map, walks: &[VoltWalk], step: ReadingStep) {
    // Beside each other, so that like readings do not hide one another.
    let order = SERVICE_READINGS.iter().position(|other| *other == step);
    let aside = (many(order.unwrap_or(0)) - 1.5) * 0.16;
    let read = walks.iter().enumerate();
    let read: Vec<(f64, f64)> = read
        .filter_map(|(place, walk)| Some((many(place) + aside, of(walk, step)?)))
        .collect();
    if let Some(path) = map.line(read.iter().copied()) {
        drawing.stroke(Role::Detail, 1.0, path);
    }
    for (place, volts) in read {
        mark(drawing, step, map.at(place, volts));
    }
}

/// The mark of a reading: round for line 1, square for line 2; open at the supply, filled at an outlet.
fn mark(drawing: &mut Drawing, step: ReadingStep, (x, y): (f64, f64)) {
    let round = matches!(step, ReadingStep::SupplyL1N | ReadingStep::Leg1);
    let path = || match round {
        true => Path::circle(x, y, 5.0),
        false => Path::rectangle(x - 4.5, y - 4.5, 9.0, 9.0),
    };
    if matches!(step, ReadingStep::Leg1 | ReadingStep::Leg2) {
        drawing.fill(Role::Ink, path());
    } else {
        drawing.fill(Role::Plate, path());
        drawing.stroke(Role::Ink, 2.0, path());
    }
}

/// The year of each walk under the axis, as many as there is room for.
fn days(drawing: &mut Drawing, map: &Map, walks: &[VoltWalk], y: f64) {
    let mut free = 0.0;
    for (place, walk) in walks.iter().enumerate() {
        let (x, _) = map.at(many(place), 0.0);
        if x - 20.0 >= free {
            let how = Anchor::Middle;
            write(drawing, (x, y), how, &walk.day.year().to_string(), 44.0);
            free = x + 24.0;
        }
    }
}
