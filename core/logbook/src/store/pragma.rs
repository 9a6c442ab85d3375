//! What is set on every connection, at creation and at every later opening.

use super::StoreFault;
use rusqlite::Connection;
use rusqlite::config::DbConfig;
use std::time::Duration;

/// How long a statement waits for another connection of this program, such as a backup.
const BUSY: Duration = Duration::from_secs(3);

/// Sets a connection up before anything is read.
///
/// `synchronous` comes before the switch to the write-ahead log: otherwise the journal of the
/// switch is deleted without its folder being synced, and a power cut may bring it back to roll
/// the file back. `EXTRA` costs no sync more than `FULL` in the log. `fullfsync` is what reaches
/// the medium on Apple systems; elsewhere it changes nothing.
pub(super) fn set(conn: &Connection) -> Result<(), StoreFault> {
    conn.busy_timeout(BUSY)?;
    conn.set_db_config(DbConfig::SQLITE_DBCONFIG_DEFENSIVE, true)?;
    conn.set_db_config(DbConfig::SQLITE_DBCONFIG_TRUSTED_SCHEMA, false)?;
    conn.set_db_config(DbConfig::SQLITE_DBCONFIG_ENABLE_FKEY, true)?;
    conn.execute_batch(include_str!("sql/pragmas.sql"))?;
    conn.set_prepared_statement_cache_capacity(64);
    Ok(())
}

/// Switches to the write-ahead log.
pub(super) fn write_ahead(conn: &Connection) -> Result<(), StoreFault> {
    let mode: String = conn.query_row("PRAGMA journal_mode = WAL", [], |row| row.get(0))?;
    if mode == "wal" {
        Ok(())
    } else {
        Err(StoreFault::Unexpected(format!("journal mode is {mode}")))
    }
}
