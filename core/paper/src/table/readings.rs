//! `readings.csv`: one row for each reading of powering up, with how it was judged.

use super::facts::each_walk;
use super::{Cell, RigFacts, Table, WalkFacts};
use baywalk_domain::supply::{Judged, Measured, Reading};

const COLUMNS: [&str; 15] = [
    "rig",
    "walk",
    "day",
    "number",
    "powering_up",
    "reading",
    "place",
    "result",
    "volts",
    "why",
    "verdict",
    "act",
    "least",
    "most",
    "basis",
];

pub(super) fn table(rigs: &[RigFacts]) -> Table {
    let rows = each_walk(rigs).flat_map(|walk| {
        let readings = walk.state.readings.iter().enumerate();
        readings.map(|(place, reading)| row(walk, place, reading))
    });
    Table::new("readings", &COLUMNS, rows.collect())
}

fn row(walk: &WalkFacts, place: usize, judged: &(Reading, Option<Judged>)) -> [Cell; 15] {
    let WalkFacts { state, book } = walk;
    let (reading, judged) = judged;
    let [volts, _] = Cell::stated(match &reading.measured {
        Measured::Volts(volts) => Some(volts),
        _ => None,
    });
    let (result, why) = match &reading.measured {
        Measured::Volts(_) => ("volts", Cell::Empty),
        Measured::Works => ("works", Cell::Empty),
        Measured::Fails => ("fails", Cell::Empty),
        Measured::Not(why) => ("not", Cell::text(why)),
    };
    // A reading that belongs to a powering up that was broken off says so.
    let earlier = place < state.readings_before;
    let limits = judged.as_ref().and_then(|judged| judged.limits);
    let limit = |of: Option<f64>| of.map(|volts| Cell::number(volts, 3)).into();
    [
        Cell::text(&book.rig.name),
        Cell::plain(state.id),
        state.started.date().into(),
        (place + 1).into(),
        Cell::plain(if earlier { "earlier" } else { "last" }),
        Cell::code(reading.step),
        Cell::text(&reading.place),
        Cell::plain(result),
        volts,
        why,
        judged
            .as_ref()
            .map(|judged| Cell::code(judged.verdict))
            .into(),
        judged.as_ref().map(|judged| Cell::code(judged.act)).into(),
        limit(limits.map(|(least, _)| least)),
        limit(limits.map(|(_, most)| most)),
        judged
            .as_ref()
            .map(|judged| Cell::code(judged.basis))
            .into(),
    ]
}
