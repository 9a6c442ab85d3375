//! Odometer notes.

use super::json;
use crate::store::StoreFault;
use crate::stored::{Quantity, Texted};
use baywalk_domain::due::OdometerNote;
use baywalk_domain::ids::RigId;
use baywalk_domain::units::{DistanceUnit, Stated};
use baywalk_domain::walk::Entry;
use chrono::NaiveDate;
use rusqlite::{Connection, OptionalExtension, Row};

pub(super) fn put(
    tx: &Connection,
    seq: u64,
    entry: &Entry,
    reading: &Stated<DistanceUnit>,
) -> Result<(), StoreFault> {
    let body = json::write::<Quantity<DistanceUnit>>(reading)?;
    let day = entry.at.date().write();
    tx.prepare_cached(include_str!("sql/odometer_put.sql"))?
        .execute((entry.rig.to_string(), seq, day, body))?;
    Ok(())
}

pub(super) fn remove(tx: &Connection, seq: u64, entry: &Entry) -> Result<(), StoreFault> {
    let day = entry.at.date().write();
    tx.prepare_cached(include_str!("sql/odometer_remove.sql"))?
        .execute((entry.rig.to_string(), day, seq))?;
    Ok(())
}

/// The notes of a rig, oldest first.
pub(super) fn odometer(conn: &Connection, rig: RigId) -> Result<Vec<OdometerNote>, StoreFault> {
    let mut statement = conn.prepare_cached(include_str!("sql/odometer.sql"))?;
    let rows = statement.query_map([rig.to_string()], noted)?;
    rows.map(|row| note(&row?)).collect()
}

/// The notes of a rig that count for when it is due, oldest first: the one of the first day, that of
/// the last, and the last ones up to some days.
pub(super) fn telling(
    conn: &Connection,
    rig: RigId,
    days: &[Option<NaiveDate>],
) -> Result<Vec<OdometerNote>, StoreFault> {
    let rig = rig.to_string();
    let mut first = conn.prepare_cached(include_str!("sql/odometer_first.sql"))?;
    let mut up_to = conn.prepare_cached(include_str!("sql/odometer_up_to.sql"))?;
    let mut rows = vec![first.query_row([&rig], noted).optional()?];
    let days = days.iter().flatten().map(Texted::write);
    for day in days.chain(std::iter::once(LAST.to_owned())) {
        rows.push(up_to.query_row([&rig, &day], noted).optional()?);
    }
    let mut rows: Vec<Noted> = rows.into_iter().flatten().collect();
    rows.sort_by_key(|(seq, _, _)| *seq);
    rows.dedup_by_key(|(seq, _, _)| *seq);
    rows.iter().map(note).collect()
}

/// Behind every day, as text.
const LAST: &str = "~";

/// A row: the entry, the day, the reading.
type Noted = (u64, String, String);

fn noted(row: &Row<'_>) -> rusqlite::Result<Noted> {
    Ok((row.get(0)?, row.get(1)?, row.get(2)?))
}

fn note((_, day, body): &Noted) -> Result<OdometerNote, StoreFault> {
    Ok(OdometerNote {
        on: json::text(day)?,
        reading: json::read::<Quantity<DistanceUnit>>(body)?,
    })
}
