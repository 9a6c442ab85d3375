//! `points.csv`: one row for each point that was noted in a walk: as found, the advice as it was
//! shown with its basis, as left.

use super::facts::each_walk;
use super::{Cell, RigFacts, Table, WalkFacts};
use baywalk_domain::coded::Coded;
use baywalk_domain::ids::ToolId;
use baywalk_domain::rig::{Book, Point};
use baywalk_domain::units::{Stated, TorqueUnit};
use baywalk_domain::walk::{
    AdviceShown, AsFound, AsLeft, FoundRecord, Movement, PointRecord, Seen, Test,
};

const COLUMNS: [&str; 32] = [
    "rig",
    "walk",
    "day",
    "bay",
    "point",
    "name",
    "kind",
    "fastening",
    "found",
    "found_by",
    "angle",
    "found_torque",
    "found_unit",
    "found_tool",
    "found_note",
    "corrected",
    "target",
    "target_unit",
    "check",
    "check_unit",
    "basis",
    "source",
    "left",
    "left_torque",
    "left_unit",
    "left_tool",
    "left_note",
    "seen",
    "seen_note",
    "damage",
    "damage_note",
    "action",
];

type Stating = Stated<TorqueUnit>;

pub(super) fn table(rigs: &[RigFacts]) -> Table {
    let rows = each_walk(rigs).flat_map(|walk| {
        let points = walk.book.points.iter();
        let noted = points.filter_map(|point| Some((point, walk.state.point(point.id)?)));
        noted.map(|(point, record)| row(walk, point, record))
    });
    Table::new("points", &COLUMNS, rows.collect())
}

fn row(walk: &WalkFacts, point: &Point, record: &PointRecord) -> [Cell; 32] {
    let WalkFacts { state, book } = walk;
    let bay = book.bay_of(point).and_then(|bay| book.bay(bay));
    let kind = point.terminal().map(|terminal| terminal.fastening.kind);
    let found = record.found.as_ref();
    let [seen, seen_note] = seen(record.seen.as_ref());
    let damage: Vec<&str> = record.damage.iter().map(|(what, _)| what.code()).collect();
    let notes: Vec<&str> = record
        .damage
        .iter()
        .map(|(_, note)| note.trim())
        .filter(|note| !note.is_empty())
        .collect();
    let [word, by, angle, at, at_unit, tool, note] = as_found(found, book);
    let [
        action,
        target,
        target_unit,
        check,
        check_unit,
        basis,
        source,
    ] = advice(found.and_then(|found| found.advice.as_ref()));
    let [left, torque, unit, left_tool, left_note] = as_left(record.left.as_ref(), book);
    [
        Cell::text(&book.rig.name),
        Cell::plain(state.id),
        state.started.date().into(),
        bay.map(|bay| Cell::plain(&bay.code)).into(),
        Cell::plain(&point.code),
        Cell::text(&point.name),
        Cell::plain(if kind.is_some() { "terminal" } else { "look" }),
        kind.map(Cell::code).into(),
        word,
        by,
        angle,
        at,
        at_unit,
        tool,
        note,
        found.map(|found| found.corrected).into(),
        target,
        target_unit,
        check,
        check_unit,
        basis,
        source,
        left,
        torque,
        unit,
        left_tool,
        left_note,
        seen,
        seen_note,
        Cell::text(&damage.join(" ")),
        Cell::text(&notes.join("; ")),
        action,
    ]
}

/// The word, what it was tried with, the angle, the torque and its unit, the tool, the note.
pub(crate) fn as_found(record: Option<&FoundRecord>, book: &Book) -> [Cell; 7] {
    let Some(found) = record.map(|record| &record.found) else {
        return [const { Cell::Empty }; 7];
    };
    let word = match found {
        AsFound::OpenedByUs => Cell::plain("opened_by_us"),
        found => Cell::code(found.grade()),
    };
    let with = |by: &str, angle: Cell, at: Option<&Stating>, of: Option<ToolId>| {
        let [at, unit] = Cell::stated(at);
        [
            word.clone(),
            Cell::text(by),
            angle,
            at,
            unit,
            tool(of, book),
            Cell::Empty,
        ]
    };
    let plain = |by: &str| with(by, Cell::Empty, None, None);
    match found {
        AsFound::Held(Test::Torque { at, tool }) => {
            with("torque", Cell::Empty, Some(at), Some(*tool))
        }
        AsFound::Held(Test::Tug) | AsFound::Moved(Movement::Gave) => plain("tug"),
        AsFound::Moved(Movement::Turned { angle, below, tool }) => {
            with("torque", Cell::code(*angle), Some(below), Some(*tool))
        }
        AsFound::Moved(Movement::Began { at, tool }) => {
            with("torque", Cell::Empty, Some(at), Some(*tool))
        }
        AsFound::Moved(Movement::MarkOff { angle }) => with("mark", Cell::code(*angle), None, None),
        AsFound::Loose => plain("hand"),
        AsFound::LookedAt { tugged: true } => plain("tug"),
        AsFound::Apart | AsFound::LookedAt { tugged: false } => plain("look"),
        AsFound::OpenedByUs => plain(""),
        AsFound::NotJudged { why, note } => {
            let mut cells = plain("");
            let [_, by, .., said] = &mut cells;
            *by = Cell::code(*why);
            *said = Cell::text(note);
            cells
        }
    }
}

/// The action, the target and the check with their units, the basis and its source, as shown.
fn advice(shown: Option<&AdviceShown>) -> [Cell; 7] {
    let [target, target_unit] = Cell::stated(shown.and_then(|shown| shown.target.as_ref()));
    let [check, check_unit] = Cell::stated(shown.and_then(|shown| shown.check.as_ref()));
    let basis = shown.and_then(|shown| shown.basis).map(Cell::code).into();
    let source = shown.map(|shown| Cell::text(&shown.source)).into();
    let action = shown.map(|shown| Cell::code(shown.action)).into();
    [
        action,
        target,
        target_unit,
        check,
        check_unit,
        basis,
        source,
    ]
}

/// The word, the torque and its unit, the tool, the note.
pub(crate) fn as_left(left: Option<&AsLeft>, book: &Book) -> [Cell; 5] {
    let set = |word: &str, torque: Option<&Stating>, of: Option<ToolId>| {
        let [torque, unit] = Cell::stated(torque);
        [Cell::plain(word), torque, unit, tool(of, book), Cell::Empty]
    };
    let with = |word: &str, note: Cell| {
        [
            Cell::plain(word),
            Cell::Empty,
            Cell::Empty,
            Cell::Empty,
            note,
        ]
    };
    match left {
        None => [const { Cell::Empty }; 5],
        Some(AsLeft::Alone(why)) => with("alone", Cell::code(*why)),
        Some(AsLeft::Set { torque, tool }) => set("set", Some(torque), Some(*tool)),
        Some(AsLeft::Remade { set: None }) => set("remade", None, None),
        Some(AsLeft::Remade {
            set: Some((torque, tool)),
        }) => set("remade", Some(torque), Some(*tool)),
        Some(AsLeft::OutOfService { how }) => with("out_of_service", Cell::text(how)),
    }
}

fn seen(seen: Option<&Seen>) -> [Cell; 2] {
    match seen {
        None => [Cell::Empty, Cell::Empty],
        Some(Seen::Clear) => [Cell::plain("clear"), Cell::Empty],
        Some(Seen::Trouble(what)) => [Cell::plain("trouble"), Cell::text(what)],
        Some(Seen::NotLooked(why)) => [Cell::plain("not_looked"), Cell::text(why)],
    }
}

fn tool(tool: Option<ToolId>, book: &Book) -> Cell {
    let found = tool.and_then(|tool| book.tool(tool));
    found.map(|tool| Cell::plain(&tool.code)).into()
}
