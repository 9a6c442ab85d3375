//! The list of walks.

use super::json;
use crate::store::StoreFault;
use crate::stored;
use baywalk_domain::ids::{RigId, WalkId};
use baywalk_domain::moment::Moment;
use baywalk_domain::walk::{Ending, Entry, Scope};
use rusqlite::{Connection, OptionalExtension, Row, params};

/// A walk in the list of walks.
#[derive(Debug, Clone, PartialEq)]
pub struct WalkHead {
    /// Its name.
    pub id: WalkId,
    /// Who walked.
    pub person: String,
    /// How much of the rig.
    pub scope: Scope,
    /// When it was started.
    pub started: Moment,
    /// When and how it ended; `None` while it is open.
    pub ended: Option<(Moment, Ending)>,
}

/// Puts a walk that is started.
pub(super) fn start(
    tx: &Connection,
    seq: u64,
    entry: &Entry,
    person: &str,
    scope: &Scope,
) -> Result<(), StoreFault> {
    tx.prepare_cached(include_str!("sql/walk_start.sql"))?
        .execute(params![
            entry.rig.to_string(),
            seq,
            entry.walk.map(|walk| walk.to_string()),
            person,
            json::write::<stored::Scope>(scope)?,
            json::write::<stored::Moment>(&entry.at)?,
        ])?;
    Ok(())
}

/// Notes the end of a walk.
pub(super) fn end(
    tx: &Connection,
    (seq, entry): (u64, &Entry),
    begun: u64,
    ending: &Ending,
) -> Result<(), StoreFault> {
    tx.prepare_cached(include_str!("sql/walk_end.sql"))?
        .execute(params![
            entry.rig.to_string(),
            begun,
            json::write::<stored::Moment>(&entry.at)?,
            json::write::<stored::Ending>(ending)?,
            seq,
        ])?;
    Ok(())
}

/// The walks of a rig, oldest first.
pub(crate) fn walks(conn: &Connection, rig: RigId) -> Result<Vec<WalkHead>, StoreFault> {
    let mut statement = conn.prepare_cached(include_str!("sql/walks.sql"))?;
    let rows = statement.query_map([rig.to_string()], |row| Ok(head(row)))?;
    rows.map(|row| row?).collect()
}

fn head(row: &Row<'_>) -> Result<WalkHead, StoreFault> {
    let ended: Option<(String, String)> = row
        .get::<_, Option<String>>(4)?
        .zip(row.get::<_, Option<String>>(5)?);
    let ended = ended.map(|(at, ending)| {
        let at = json::read::<stored::Moment>(&at)?;
        Ok::<_, StoreFault>((at, json::read::<stored::Ending>(&ending)?))
    });
    Ok(WalkHead {
        id: json::text(&row.get::<_, String>(0)?)?,
        person: row.get(1)?,
        scope: json::read::<stored::Scope>(&row.get::<_, String>(2)?)?,
        started: json::read::<stored::Moment>(&row.get::<_, String>(3)?)?,
        ended: ended.transpose()?,
    })
}

/// Where the entries of a walk stand.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Extent {
    /// The rig.
    pub(crate) rig: RigId,
    /// The entry that started it.
    pub(crate) begun: u64,
    /// The entry that ended it; `None` while it is open.
    pub(crate) last: Option<u64>,
}

/// Where the entries of a walk stand.
pub(crate) fn walk_extent(conn: &Connection, walk: WalkId) -> Result<Option<Extent>, StoreFault> {
    let found = conn
        .prepare_cached(include_str!("sql/walk_begun.sql"))?
        .query_row([walk.to_string()], |row| {
            Ok((row.get::<_, String>(0)?, row.get(1)?, row.get(2)?))
        })
        .optional()?;
    found
        .map(|(rig, begun, last)| {
            let rig = json::text(&rig)?;
            Ok(Extent { rig, begun, last })
        })
        .transpose()
}
