//! `walks.csv`: one row a walk.

use super::facts::each_walk;
use super::{Cell, RigFacts, Table, WalkFacts};
use baywalk_domain::walk::{Ending, Grade, Scope, summary};

const COLUMNS: [&str; 19] = [
    "rig",
    "walk",
    "person",
    "scope",
    "started",
    "last",
    "ending",
    "why",
    "points",
    "done",
    "held",
    "moved",
    "loose",
    "apart",
    "looked_at",
    "not_judged",
    "set_or_remade",
    "findings",
    "photos",
];

pub(super) fn table(rigs: &[RigFacts]) -> Table {
    Table::new("walks", &COLUMNS, each_walk(rigs).map(row).collect())
}

fn row(walk: &WalkFacts) -> [Cell; 19] {
    let WalkFacts { state, book } = walk;
    let sum = summary(state, book);
    let count = |grade| Cell::from(sum.grades.get(&grade).copied().unwrap_or(0));
    let scope = match &state.scope {
        Scope::Whole => "whole",
        Scope::Bays(_) => "bays",
        Scope::SecondLook(_) => "second_look",
    };
    let (ending, why) = match &state.ending {
        None => ("open", Cell::Empty),
        Some(Ending::Whole) => ("whole", Cell::Empty),
        Some(Ending::Early(why)) => ("early", Cell::text(why)),
    };
    [
        Cell::text(&book.rig.name),
        Cell::plain(state.id),
        Cell::text(&state.person),
        Cell::plain(scope),
        Cell::plain(state.started.wall.to_rfc3339()),
        Cell::plain(state.last.wall.to_rfc3339()),
        Cell::plain(ending),
        why,
        sum.total.into(),
        sum.done.into(),
        count(Grade::Held),
        count(Grade::Moved),
        count(Grade::Loose),
        count(Grade::Apart),
        count(Grade::LookedAt),
        count(Grade::NotJudged),
        sum.disturbed.len().into(),
        state.findings.len().into(),
        state.photos.len().into(),
    ]
}
