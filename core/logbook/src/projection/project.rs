//! Takes one entry into the tables. The live act and the rebuilding go through here alike.

use super::change::{changes, point_of};
use super::{Change, RigFold, book, finding, odometer, past, walk};
use crate::ledger::Numbered;
use crate::store::StoreFault;
use baywalk_domain::walk::{Act, Entry};
use rusqlite::Connection;

/// Takes an entry into the fold of its rig and into the tables; gives what it moved.
pub(crate) fn project(
    tx: &Connection,
    fold: &mut RigFold,
    numbered: &Numbered,
) -> Result<Vec<Change>, StoreFault> {
    let struck = fold.take(numbered);
    let Numbered { seq, entry } = numbered;
    match &entry.act {
        Act::Book(change) => {
            book::put(tx, entry.rig, *seq, change)?;
            book::put_rig(tx, entry.rig, fold.book.as_ref())?;
        }
        Act::Odometer(reading) => odometer::put(tx, *seq, entry, reading)?,
        Act::Start { person, scope } => walk::start(tx, *seq, entry, person, scope)?,
        Act::End(ending) => walk::end(tx, *seq, entry, fold, ending)?,
        Act::Decide { finding, follow_up } => finding::decide(tx, *finding, *seq, follow_up)?,
        act => put_point(tx, fold, act)?,
    }
    if let Some(struck) = &struck {
        take_back(tx, fold, struck)?;
    }
    finding::put(tx, *seq, entry)?;
    fold.let_go();
    let struck: Option<&Entry> = struck.as_ref().map(|struck| &struck.entry);
    Ok(changes(entry, struck))
}

/// Takes a struck entry out of the tables again.
fn take_back(tx: &Connection, fold: &RigFold, struck: &Numbered) -> Result<(), StoreFault> {
    let Numbered { seq, entry } = struck;
    finding::remove(tx, entry.rig, *seq)?;
    match &entry.act {
        Act::Book(_) => {
            book::remove(tx, entry.rig, *seq)?;
            book::put_rig(tx, entry.rig, fold.book.as_ref())
        }
        Act::Odometer(_) => odometer::remove(tx, entry.rig, *seq),
        Act::Decide { finding, .. } => finding::undecide(tx, *finding, *seq),
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
