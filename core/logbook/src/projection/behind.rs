//! What stands behind an entry, for a reminder to back up.

use crate::store::StoreFault;
use baywalk_domain::walk::Act;
use rusqlite::Connection;

/// Notes the end of a walk, and where the logbook tells where it comes from.
pub(super) fn put(tx: &Connection, seq: u64, act: &Act) -> Result<(), StoreFault> {
    let sql = match act {
        Act::End(_) => include_str!("sql/walk_end_put.sql"),
        act if act.is_origin() => include_str!("sql/origin_put.sql"),
        _ => return Ok(()),
    };
    tx.prepare_cached(sql)?.execute([seq])?;
    Ok(())
}

/// How many entries, and how many ends of walks, stand behind an entry, up to the last one; what the
/// logbook tells of itself is not counted.
pub(crate) fn behind(conn: &Connection, seq: u64, last: u64) -> Result<(u64, u64), StoreFault> {
    let (origins, walks): (u64, u64) = conn
        .prepare_cached(include_str!("sql/behind.sql"))?
        .query_row([seq], |row| Ok((row.get(0)?, row.get(1)?)))?;
    let entries = last.saturating_sub(seq).saturating_sub(origins);
    Ok((entries, walks))
}
