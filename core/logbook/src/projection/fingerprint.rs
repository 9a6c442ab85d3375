//! One digest over all computed tables, to tell whether two stores read alike.

use crate::ledger::Digest;
use crate::store::StoreFault;
use rusqlite::Connection;
use rusqlite::types::ValueRef;

/// The table that tells where a logbook comes from: two that read alike may differ in it.
const ORIGIN: &str = "origin";

/// The digest over all rows of all computed tables but that of origins.
pub(crate) fn fingerprint(conn: &Connection) -> Result<Digest, StoreFault> {
    let mut digest = Digest::START;
    let mut tables = tables(conn)?;
    tables.retain(|table| table != ORIGIN);
    for table in tables {
        digest = digest.then(table.as_bytes());
        let mut statement = conn.prepare(&format!("SELECT * FROM {}", quoted(&table)))?;
        let columns = statement.column_count();
        let mut rows = statement.query([])?;
        while let Some(row) = rows.next()? {
            for column in 0..columns {
                digest = value(digest, row.get_ref(column)?);
            }
        }
    }
    Ok(digest)
}

fn value(digest: Digest, value: ValueRef<'_>) -> Digest {
    match value {
        ValueRef::Null => digest.then(b"n"),
        ValueRef::Integer(number) => digest.then(format!("i{number}").as_bytes()),
        ValueRef::Real(number) => digest.then(format!("r{number}").as_bytes()),
        ValueRef::Text(bytes) => digest.then(b"t").then(bytes),
        ValueRef::Blob(bytes) => digest.then(b"b").then(bytes),
    }
}

/// The names of the computed tables, in order: all but the lasting ones.
pub(super) fn tables(conn: &Connection) -> Result<Vec<String>, StoreFault> {
    let mut statement = conn.prepare(include_str!("sql/tables.sql"))?;
    let names = statement.query_map([], |row| row.get(0))?;
    Ok(names.collect::<Result<_, _>>()?)
}

/// A table's name as SQL has it.
pub(super) fn quoted(table: &str) -> String {
    format!("\"{}\"", table.replace('"', "\"\""))
}
