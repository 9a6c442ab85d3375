//! Takes one entry into the tables. The live act and the rebuilding go through here alike.

use super::change::{changes, point_of};
use super::{Change, RigFold, behind, book, finding, glance, past, standing, timing, walk};
use crate::ledger::Numbered;
use crate::store::StoreFault;
use baywalk_domain::walk::{Act, Ending, Entry};
use rusqlite::Connection;

/// Takes an entry into the fold of its rig and into the tables; gives what it moved.
pub(crate) fn project(
    tx: &Connection,
    fold: &mut RigFold,
    numbered: &Numbered,
) -> Result<Vec<Change>, StoreFault> {
    let Numbered { seq, entry } = numbered;
    if let (Act::Start { .. }, Some(walk)) = (&entry.act, fold.open_walk()) {
        // Its end is missing, as after a recovery; what it told stands all the same.
        standing::take(tx, entry.rig, walk)?;
    }
    let struck = fold.take(numbered);
    match &entry.act {
        Act::Book(change) => book::put(tx, entry.rig, *seq, change)?,
        act if timing::tells(act) => timing::put(tx, *seq, entry)?,
        Act::Start { person, scope } => walk::start(tx, *seq, entry, person, scope)?,
        Act::End(ending) => end(tx, fold, numbered, ending)?,
        Act::Decide { finding, follow_up } => {
            finding::decide(tx, (entry.rig, *finding), *seq, follow_up)?;
        }
        act => put_point(tx, fold, act)?,
    }
    if let Some(struck) = &struck {
        take_back(tx, fold, struck)?;
    }
    finding::put(tx, *seq, entry)?;
    behind::put(tx, *seq, &entry.act)?;
    let struck: Option<&Entry> = struck.as_ref().map(|struck| &struck.entry);
    let changes = changes(entry, struck);
    put_glance(tx, fold, numbered, &changes)?;
    fold.let_go();
    Ok(changes)
}

/// Writes what the first screens tell of the rig, where an entry moved it.
fn put_glance(
    tx: &Connection,
    fold: &RigFold,
    numbered: &Numbered,
    changes: &[Change],
) -> Result<(), StoreFault> {
    let entry = &numbered.entry;
    let moved = |any: &[Change]| changes.iter().any(|change| any.contains(change));
    if moved(&[Change::Book, Change::Walks]) {
        glance::put_outline(tx, entry.rig, fold)?;
    }
    if moved(&[
        Change::Rigs,
        Change::Book,
        Change::Walks,
        Change::Findings,
        Change::Timing,
    ]) {
        let timing = moved(&[Change::Rigs, Change::Book, Change::Walks, Change::Timing]);
        glance::put(tx, numbered, fold, timing)?;
    }
    Ok(())
}

/// Notes the end of a walk, and what it tells of its points.
fn end(
    tx: &Connection,
    fold: &RigFold,
    numbered: &Numbered,
    ending: &Ending,
) -> Result<(), StoreFault> {
    let Numbered { seq, entry } = numbered;
    if let Some(walk) = &fold.walk {
        walk::end(tx, (*seq, entry), walk.begun, ending)?;
        standing::take(tx, entry.rig, walk)?;
    }
    Ok(())
}

/// Takes a struck entry out of the tables again.
fn take_back(tx: &Connection, fold: &RigFold, struck: &Numbered) -> Result<(), StoreFault> {
    let Numbered { seq, entry } = struck;
    finding::remove(tx, entry.rig, *seq)?;
    match &entry.act {
        Act::Book(_) => book::remove(tx, entry.rig, *seq),
        act if timing::tells(act) => timing::remove(tx, *seq, entry),
        Act::Decide { finding, .. } => finding::undecide(tx, (entry.rig, *finding), *seq),
        act => put_point(tx, fold, act),
    }
}

/// Writes what the open walk knows of the point of an act.
fn put_point(tx: &Connection, fold: &RigFold, act: &Act) -> Result<(), StoreFault> {
    match (point_of(act), &fold.walk) {
        (Some(point), Some(walk)) => past::put(tx, walk, point),
        _ => Ok(()),
    }
}
