//! A rig at a glance, and its outline: what the first screens tell of it.

use super::gone::gone;
use super::standing::{standings, unsettled};
use super::timing::{Days, known};
use super::{Gone, RigFold, finding, json};
use crate::ledger::Numbered;
use crate::store::StoreFault;
use crate::stored;
use baywalk_domain::due::{Due, due, learned};
use baywalk_domain::ids::{RigId, WalkId};
use baywalk_domain::rig::{Bay, Book, Code, Rig};
use baywalk_domain::walk::{Act, Ending};
use chrono::NaiveDate;
use rusqlite::{Connection, OptionalExtension};

/// What the list of rigs tells of one.
#[derive(Debug, Clone, PartialEq)]
pub struct RigGlance {
    /// Its newest facts.
    pub rig: Rig,
    /// Its open walk.
    pub walk: Option<WalkBegun>,
    /// The day of the last walk that went through the whole rig to the end.
    pub last_walk: Option<NaiveDate>,
    /// The day of the last end of a walk of any scope.
    pub last_end: Option<NaiveDate>,
    /// The day on which it was noted first.
    pub noted: NaiveDate,
    /// What is due of it, the first first.
    pub due: Vec<Due>,
    /// The number of the entry by which that came to be as it is.
    pub due_since: u64,
    /// What was due and is asked no longer, the first to go first.
    pub gone: Vec<Gone>,
    /// How many findings wait.
    pub open_findings: u64,
}

/// A walk, and where it begins.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct WalkBegun {
    /// The walk.
    pub id: WalkId,
    /// The number of the entry that started it.
    pub begun: u64,
}

/// What the screen of a rig shows of its book.
#[derive(Debug, Clone, PartialEq)]
pub struct RigOutline {
    /// Its bays in use, nose to tail.
    pub bays: Vec<OutlineBay>,
    /// How many points are in use.
    pub points: u64,
    /// The codes of the points that wait for a second look.
    pub second_look: Vec<Code>,
}

/// A bay in an outline.
#[derive(Debug, Clone, PartialEq)]
pub struct OutlineBay {
    /// The bay.
    pub bay: Bay,
    /// How many points in use it has.
    pub points: u64,
}

/// Writes what is told of a rig behind an entry; what is due is worked out anew where that can have
/// moved it.
pub(super) fn put(
    tx: &Connection,
    numbered: &Numbered,
    fold: &RigFold,
    timing: bool,
) -> Result<(), StoreFault> {
    let Numbered { seq, entry } = numbered;
    let (rig, Some(book)) = (entry.rig, &fold.book) else {
        return Ok(());
    };
    let before = glance(tx, rig)?;
    let before = before.as_ref();
    let mut last_walk = before.and_then(|glance| glance.last_walk);
    let mut last_end = before.and_then(|glance| glance.last_end);
    if let (Act::End(ending), Some(walk)) = (&entry.act, &fold.walk) {
        let today = entry.at.date();
        last_end = last_end.max(Some(today));
        if *ending == Ending::Whole && walk.state.goes_through_all(book) {
            last_walk = Some(today);
        }
    }
    let noted = before.map_or_else(|| entry.at.date(), |glance| glance.noted);
    let days = Days {
        noted: Some(noted),
        last_walk,
        last_end,
    };
    let due = match before {
        Some(before) if !timing => before.due.clone(),
        _ => due_now(tx, rig, book, days)?,
    };
    let same = before.filter(|before| before.due == due);
    let due_since = same.map_or(*seq, |before| before.due_since);
    let gone = gone(before, &due, numbered);
    let open = fold.open_walk();
    let told = RigGlance {
        rig: book.rig.clone(),
        walk: open.map(|walk| WalkBegun {
            id: walk.state.id,
            begun: walk.begun,
        }),
        last_walk,
        last_end,
        noted,
        due,
        due_since,
        gone,
        open_findings: finding::open(tx, rig)?,
    };
    let body = json::write::<stored::RigGlance>(&told)?;
    tx.prepare_cached(include_str!("sql/rig_put.sql"))?
        .execute((rig.to_string(), body))?;
    Ok(())
}

/// What is due of a rig as its tables stand.
fn due_now(tx: &Connection, rig: RigId, book: &Book, days: Days) -> Result<Vec<Due>, StoreFault> {
    let known = known(tx, rig, book, days)?;
    let learned = learned(book, &known).first.map(|(on, _)| on);
    Ok(due(book, &known, learned))
}

/// Writes the outline of a rig.
pub(super) fn put_outline(tx: &Connection, rig: RigId, fold: &RigFold) -> Result<(), StoreFault> {
    let Some(book) = &fold.book else {
        return Ok(());
    };
    let waiting = unsettled(book, &standings(tx, rig)?).into_iter();
    let waiting = waiting.filter_map(|id| Some(book.point(id)?.code.clone()));
    let outline = outlined(book, waiting.collect());
    let body = json::write::<stored::RigOutline>(&outline)?;
    tx.prepare_cached(include_str!("sql/outline_put.sql"))?
        .execute((rig.to_string(), body))?;
    Ok(())
}

fn outlined(book: &Book, second_look: Vec<Code>) -> RigOutline {
    let count = |number: usize| u64::try_from(number).unwrap_or(u64::MAX);
    let bays = book.bays_in_order().into_iter().map(|bay| OutlineBay {
        bay: bay.clone(),
        points: count(book.points_of(bay.id).len()),
    });
    let in_use = book.points.iter().filter(|point| !point.retired);
    RigOutline {
        bays: bays.collect(),
        points: count(in_use.count()),
        second_look,
    }
}

/// A rig at a glance.
pub(crate) fn glance(conn: &Connection, rig: RigId) -> Result<Option<RigGlance>, StoreFault> {
    let found: Option<String> = conn
        .prepare_cached(include_str!("sql/rig.sql"))?
        .query_row([rig.to_string()], |row| row.get(0))
        .optional()?;
    let read = |body: String| json::read::<stored::RigGlance>(&body);
    found.map(read).transpose()
}

/// All rigs at a glance, in the order of their names.
pub(crate) fn glances(conn: &Connection) -> Result<Vec<RigGlance>, StoreFault> {
    let mut statement = conn.prepare_cached(include_str!("sql/rigs.sql"))?;
    let rows = statement.query_map([], |row| row.get::<_, String>(0))?;
    let mut rigs = rows
        .map(|row| json::read::<stored::RigGlance>(&row?))
        .collect::<Result<Vec<_>, _>>()?;
    rigs.sort_by(|a, b| (&a.rig.name, a.rig.id).cmp(&(&b.rig.name, b.rig.id)));
    Ok(rigs)
}

/// The outline of a rig.
pub(crate) fn outline(conn: &Connection, rig: RigId) -> Result<Option<RigOutline>, StoreFault> {
    let found: Option<String> = conn
        .prepare_cached(include_str!("sql/outline.sql"))?
        .query_row([rig.to_string()], |row| row.get(0))
        .optional()?;
    let read = |body: String| json::read::<stored::RigOutline>(&body);
    found.map(read).transpose()
}
