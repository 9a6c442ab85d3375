//! What tells when to look again: the acts that say so, and the fold of all that is known.

use super::standing::{standings, unsettled};
use super::{ended, json};
use crate::store::StoreFault;
use crate::stored;
use baywalk_domain::due::Known;
use baywalk_domain::ids::{ActId, RigId};
use baywalk_domain::rig::Book;
use baywalk_domain::walk::{Act, Entry};
use chrono::NaiveDate;
use rusqlite::Connection;

/// The days of a rig that are told beside its acts.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Days {
    /// On which it was noted first.
    pub(super) noted: Option<NaiveDate>,
    /// Of the last whole walk of the whole rig.
    pub(super) last_walk: Option<NaiveDate>,
    /// Of the last end of any walk.
    pub(super) last_end: Option<NaiveDate>,
}

/// Whether an act tells when to look again.
pub(super) const fn tells(act: &Act) -> bool {
    matches!(
        act,
        Act::Odometer(_) | Act::Usage(_) | Act::Rule(_) | Act::PutOff { .. }
    )
}

pub(super) fn put(tx: &Connection, seq: u64, entry: &Entry) -> Result<(), StoreFault> {
    let (rig, act) = (entry.rig.to_string(), entry.id.to_string());
    let day = crate::stored::Texted::write(&entry.at.date());
    let body = json::write::<stored::Act>(&entry.act)?;
    tx.prepare_cached(include_str!("sql/timing_put.sql"))?
        .execute((rig, seq, act, day, body))?;
    Ok(())
}

pub(super) fn remove(tx: &Connection, seq: u64, entry: &Entry) -> Result<(), StoreFault> {
    tx.prepare_cached(include_str!("sql/timing_remove.sql"))?
        .execute((entry.rig.to_string(), seq))?;
    Ok(())
}

/// All that is known of a rig when it is asked what is due.
pub(super) fn known(
    conn: &Connection,
    rig: RigId,
    book: &Book,
    days: Days,
) -> Result<Known, StoreFault> {
    let standings = standings(conn, rig)?;
    let mut known = Known {
        noted: days.noted,
        last_walk: days.last_walk,
        last_end: days.last_end,
        unsettled: unsettled(book, &standings),
        tracks: standings
            .iter()
            .map(|(point, standing)| (*point, standing.track))
            .collect(),
        ended: ended::ended(conn, rig)?,
        ..Known::default()
    };
    for (day, id, act) in acts(conn, rig)? {
        known.take(day, id, &act);
    }
    Ok(known)
}

/// The acts that tell when to look again, oldest first, each with its day and name.
pub(crate) fn acts(
    conn: &Connection,
    rig: RigId,
) -> Result<Vec<(NaiveDate, ActId, Act)>, StoreFault> {
    let mut statement = conn.prepare_cached(include_str!("sql/timing.sql"))?;
    let mut rows = statement.query([rig.to_string()])?;
    let mut acts = Vec::new();
    while let Some(row) = rows.next()? {
        let (act, day, body): (String, String, String) = (row.get(0)?, row.get(1)?, row.get(2)?);
        let said = json::read::<stored::Act>(&body)?;
        acts.push((json::text(&day)?, json::text(&act)?, said));
    }
    Ok(acts)
}
