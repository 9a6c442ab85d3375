//! Odometer notes.

use super::json;
use crate::store::StoreFault;
use crate::stored::{Quantity, Texted};
use baywalk_domain::due::OdometerNote;
use baywalk_domain::ids::RigId;
use baywalk_domain::units::{DistanceUnit, Stated};
use baywalk_domain::walk::Entry;
use rusqlite::Connection;

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

pub(super) fn remove(tx: &Connection, rig: RigId, seq: u64) -> Result<(), StoreFault> {
    tx.prepare_cached(include_str!("sql/odometer_remove.sql"))?
        .execute((rig.to_string(), seq))?;
    Ok(())
}

/// The notes of a rig, oldest first.
pub(super) fn odometer(conn: &Connection, rig: RigId) -> Result<Vec<OdometerNote>, StoreFault> {
    let mut statement = conn.prepare_cached(include_str!("sql/odometer.sql"))?;
    let rows = statement.query_map([rig.to_string()], |row| {
        Ok((row.get::<_, String>(0)?, row.get::<_, String>(1)?))
    })?;
    rows.map(|row| {
        let (day, body) = row?;
        Ok(OdometerNote {
            on: json::text(&day)?,
            reading: json::read::<Quantity<DistanceUnit>>(&body)?,
        })
    })
    .collect()
}
