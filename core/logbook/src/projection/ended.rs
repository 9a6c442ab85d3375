//! The lives of terminals that are over.

use super::json;
use crate::store::StoreFault;
use crate::stored::Texted;
use baywalk_domain::ids::{PointId, RigId};
use baywalk_domain::loosening::{Ended, Tight};
use chrono::NaiveDate;
use rusqlite::{Connection, Row, params};

/// Notes a life that a walk ended; the walk is told by the entry that started it.
pub(super) fn put(
    tx: &Connection,
    rig: RigId,
    begun: u64,
    (point, ended): (PointId, &Ended),
) -> Result<(), StoreFault> {
    let tight = ended.tight.as_ref();
    tx.prepare_cached(include_str!("sql/ended_put.sql"))?
        .execute(params![
            rig.to_string(),
            begun,
            point.to_string(),
            tight.map(|tight| tight.since.write()),
            tight.map(|tight| tight.set),
            tight.and_then(|tight| tight.held).map(|day| day.write()),
            ended.moved.map(|day| day.write()),
        ])?;
    Ok(())
}

/// The lives of the terminals of a rig that are over, oldest first.
pub(super) fn ended(conn: &Connection, rig: RigId) -> Result<Vec<(PointId, Ended)>, StoreFault> {
    let mut statement = conn.prepare_cached(include_str!("sql/ended.sql"))?;
    let rows = statement.query_map([rig.to_string()], |row| Ok(life(row)))?;
    rows.map(|row| row?).collect()
}

fn life(row: &Row<'_>) -> Result<(PointId, Ended), StoreFault> {
    let point: String = row.get(0)?;
    let ended = Ended {
        tight: tight(row, 1)?,
        moved: day(row, 4)?,
    };
    Ok((json::text(&point)?, ended))
}

/// Since when a terminal is tight, from three columns beside each other.
pub(super) fn tight(row: &Row<'_>, first: usize) -> Result<Option<Tight>, StoreFault> {
    let since = day(row, first)?;
    let set: Option<bool> = row.get(first + 1)?;
    let held = day(row, first + 2)?;
    Ok(since
        .zip(set)
        .map(|(since, set)| Tight { since, set, held }))
}

/// A day, where one stands in a column.
pub(super) fn day(row: &Row<'_>, column: usize) -> Result<Option<NaiveDate>, StoreFault> {
    let text: Option<String> = row.get(column)?;
    text.map(|text| json::text(&text)).transpose()
}
