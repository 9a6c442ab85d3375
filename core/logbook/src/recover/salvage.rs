//! Reading what can be read of a damaged ledger.

use crate::ledger::{self, Depth, Digest};
use crate::store::{DATABASE, Damage, Reader, StoreFault, same_schema};
use rusqlite::Connection;
use std::collections::BTreeMap;
use std::path::Path;

/// The fewest bytes that an entry takes in the file; a bound for how many there can be.
const FEWEST: u64 = 300;

/// One row, as far as it can be read.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Row {
    pub(super) body: String,
    pub(super) digest: Digest,
}

/// What could be read of a ledger.
#[derive(Debug, Default)]
pub(super) struct Salvaged {
    /// The rows by their numbers.
    pub(super) rows: BTreeMap<u64, Row>,
    /// The newest entry that there was, as far as anything tells.
    pub(super) reached: u64,
}

/// How a store is damaged; `None` where it is whole.
pub(super) fn damage(folder: &Path) -> Result<Option<StoreFault>, StoreFault> {
    match look(folder) {
        Ok(found) => Ok(found.map(StoreFault::Damaged)),
        Err(fault @ (StoreFault::Damaged(_) | StoreFault::Unexpected(_))) => Ok(Some(fault)),
        Err(fault) => Err(fault),
    }
}

fn look(folder: &Path) -> Result<Option<Damage>, StoreFault> {
    let reader = Reader::open(folder)?;
    let conn = reader.conn();
    same_schema(conn)?;
    let said: String = conn.query_row("PRAGMA quick_check(1)", [], |row| row.get(0))?;
    if said != "ok" {
        return Ok(Some(Damage::Database(said)));
    }
    let known = known(conn, include_str!("sql/projected.sql")).unwrap_or(0);
    let verified = ledger::verify(conn, Vec::new(), Depth::Entries, known)?;
    let told = verified
        .broken
        .map(|misfit| Damage::Computed(misfit.to_string()));
    Ok(told)
}

/// Reads all rows that can be read, one by one: a damaged page takes only its own rows with it.
pub(super) fn salvage(folder: &Path) -> Salvaged {
    let Ok(reader) = Reader::open(folder) else {
        return Salvaged::default();
    };
    let conn = reader.conn();
    let told = [
        include_str!("sql/last.sql"),
        include_str!("sql/projected.sql"),
    ];
    let reached = told.iter().filter_map(|sql| known(conn, sql)).max();
    let size = std::fs::metadata(folder.join(DATABASE)).map_or(0, |about| about.len());
    let most = size / FEWEST;
    let mut salvaged = Salvaged::default();
    for seq in 1..=reached.unwrap_or(most).min(most.saturating_add(1)) {
        if let Some(row) = row(conn, seq) {
            salvaged.rows.insert(seq, row);
        }
    }
    let last = salvaged.rows.keys().next_back().copied();
    salvaged.reached = reached.max(last).unwrap_or(0);
    salvaged
}

fn known(conn: &Connection, sql: &str) -> Option<u64> {
    let told: Option<u64> = conn.query_row(sql, [], |row| row.get(0)).ok()?;
    told
}

fn row(conn: &Connection, seq: u64) -> Option<Row> {
    let mut statement = conn.prepare_cached(include_str!("sql/row.sql")).ok()?;
    let read = statement.query_row([seq], |row| {
        Ok((row.get::<_, String>(0)?, row.get::<_, Vec<u8>>(1)?))
    });
    let (body, digest) = read.ok()?;
    let digest = Digest::from_bytes(&digest)?;
    Some(Row { body, digest })
}
