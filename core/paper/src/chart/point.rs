//! A terminal through the years: its own screw as it was found in each walk, and how it was left.

use super::Chart;
use super::page::{LINE, divide, line, many, sheet, words as write};
use crate::table::{Cell, Table, as_found, as_left};
use baywalk_domain::rig::{Book, FasteningKind, Point};
use baywalk_domain::units::{Stated, TorqueUnit};
use baywalk_domain::walk::{AsFound, AsLeft, Grade, PointRecord};
use baywalk_shapes::found::{angle_of, found, graded};
use baywalk_shapes::{Anchor, Drawing, Path, Role};
use baywalk_words::Words;
use chrono::{Datelike, NaiveDate};

/// What was noted at a point in one walk.
#[derive(Debug, Clone, PartialEq)]
pub struct PointWalk {
    /// The day the walk was started.
    pub day: NaiveDate,
    /// How far the rig had come by then, in words; empty where nothing tells.
    pub far: String,
    /// What was noted.
    pub record: PointRecord,
}

/// Room of one walk.
const COLUMN: f64 = 109.0;

/// The baseline under the screws.
const BASE: f64 = 76.0;

const COLUMNS: [&str; 9] = [
    "point",
    "day",
    "found",
    "angle",
    "degrees",
    "left",
    "left_torque",
    "left_unit",
    "odometer",
];

/// A point through the years, oldest walk first; where there is no room for all, the newest are drawn
/// and it is told how many are not.
#[must_use]
pub fn point(point: &Point, walks: &[PointWalk], book: &Book, words: &Words, width: f64) -> Chart {
    let name = words.point_name(point.id, book);
    let kind = point.terminal().map(|terminal| terminal.fastening.kind);
    let mut drawing = sheet(width);
    let room = (drawing.width / COLUMN).floor();
    let shown = walks
        .len()
        .min((1..=24).rev().find(|n| many(*n) <= room).unwrap_or(1));
    let skipped = walks.len() - shown;
    let mut told = Vec::new();
    if walks.is_empty() {
        told.push(words.say("past-point-none"));
        drawing.height = line(&mut drawing, 8.0, &words.say("past-point-none"));
    } else {
        told.push(summary(walks, words));
        let newest = || (0..).map(many).zip(walks.iter().skip(skipped));
        let feet = newest().map(|(place, walk)| column(&mut drawing, place, walk, kind, words));
        let foot = feet.fold(BASE, f64::max);
        let feet = newest().map(|(place, walk)| under(&mut drawing, place, foot, &walk.far));
        drawing.height = feet.fold(foot, f64::max) - LINE + 8.0;
        divide(&mut drawing, BASE);
    }
    if skipped > 0 {
        told.push(words.fill("past-point-more", &[("count", skipped.into())]));
    }
    if walks.len() == 1 {
        told.push(words.say("past-one-walk"));
    }
    let rows = walks.iter().map(|walk| row(point, walk, book)).collect();
    Chart {
        title: words.fill("past-point", &[("point", name.into())]),
        told,
        drawing,
        numbers: Table::new("point", &COLUMNS, rows),
    }
}

/// How often it was found in which way, in a sentence.
fn summary(walks: &[PointWalk], words: &Words) -> String {
    let count = |grades: &[Grade]| {
        let grades_of = walks.iter().filter_map(|walk| walk.record.grade());
        grades_of.filter(|grade| grades.contains(grade)).count()
    };
    let args = [
        ("walks", walks.len().into()),
        ("held", count(&[Grade::Held]).into()),
        (
            "moved",
            count(&[Grade::Moved, Grade::Loose, Grade::Apart]).into(),
        ),
        ("rest", count(&[Grade::LookedAt, Grade::NotJudged]).into()),
    ];
    words.fill("past-point-told", &args)
}

/// Words in the column of a walk; gives the place under them.
fn under(drawing: &mut Drawing, place: f64, y: f64, text: &str) -> f64 {
    let middle = (place + 0.5) * COLUMN;
    write(drawing, (middle, y), Anchor::Middle, text, COLUMN - 4.0)
}

/// One walk: its year, the screw as it was found, and under it how, and how it was left. Gives the
/// place under it.
fn column(
    drawing: &mut Drawing,
    place: f64,
    walk: &PointWalk,
    kind: Option<FasteningKind>,
    words: &Words,
) -> f64 {
    let middle = (place + 0.5) * COLUMN;
    if let Some(glyph) = glyph(&walk.record, kind) {
        drawing.add(&glyph, middle - glyph.width / 2.0, 22.0);
    }
    let tick = Path::line((middle, BASE - 4.0), (middle, BASE));
    drawing.stroke(Role::Hair, 1.0, tick);
    under(drawing, place, 14.0, &walk.day.year().to_string());
    let foot = under(drawing, place, BASE + LINE, &grade(&walk.record, words));
    under(
        drawing,
        place,
        foot + 3.0,
        &left_in_short(&walk.record, words),
    ) + 3.0
}

/// What was found, drawn as it stood.
fn glyph(record: &PointRecord, kind: Option<FasteningKind>) -> Option<Drawing> {
    match (&record.found, kind) {
        (Some(record), Some(kind)) => Some(found(&record.found, kind)),
        _ => record.grade().map(graded),
    }
}

/// The angle where one was seen, else the grade.
fn grade(record: &PointRecord, words: &Words) -> String {
    let found = record.found.as_ref().map(|record| &record.found);
    let angle = match found {
        Some(AsFound::Moved(movement)) => angle_of(movement),
        _ => None,
    };
    let grade = || record.grade().map(|grade| words.code(grade));
    angle.map_or_else(|| grade().unwrap_or_default(), |angle| words.code(angle))
}

/// What it was set to at last.
const fn set_to(record: &PointRecord) -> Option<&Stated<TorqueUnit>> {
    match &record.left {
        Some(AsLeft::Set { torque, .. }) => Some(torque),
        Some(AsLeft::Remade {
            set: Some((torque, _)),
        }) => Some(torque),
        _ => None,
    }
}

/// How it was left, in a few words.
fn left_in_short(record: &PointRecord, words: &Words) -> String {
    if let Some(torque) = set_to(record) {
        return words.fill("past-set", &[("torque", words.typed(torque).into())]);
    }
    match &record.left {
        None => String::new(),
        Some(AsLeft::Alone(_)) => words.say("past-left-alone"),
        Some(AsLeft::OutOfService { .. }) => words.say("past-left-out"),
        Some(AsLeft::Set { .. } | AsLeft::Remade { .. }) => words.say("walk-left-remade"),
    }
}

fn row(point: &Point, walk: &PointWalk, book: &Book) -> [Cell; 9] {
    let [word, _, angle, ..] = as_found(walk.record.found.as_ref(), book);
    let [left, torque, unit, ..] = as_left(walk.record.left.as_ref(), book);
    let degrees = match walk.record.found.as_ref().map(|record| &record.found) {
        Some(AsFound::Moved(movement)) => angle_of(movement),
        _ => None,
    };
    [
        Cell::plain(&point.code),
        walk.day.into(),
        word,
        angle,
        degrees.map(|angle| Cell::from(angle.degrees())).into(),
        left,
        torque,
        unit,
        Cell::text(&walk.far),
    ]
}
