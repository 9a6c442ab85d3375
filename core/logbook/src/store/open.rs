//! Opening a store: what is ours and whole is opened, what is not is left as it is.

use super::lock::{Lock, lock};
use super::{
    APPLICATION, DATABASE, Damage, Reader, StoreFault, Swap, VERSION, folder, header, migrate,
    pragma, room,
};
use baywalk_domain::moment::Moment;
use rusqlite::config::DbConfig;
use rusqlite::{Connection, OpenFlags, TransactionBehavior};
use std::path::{Path, PathBuf};

/// The lasting tables.
const SCHEMA: &str = include_str!("schema.sql");

/// An open store, held by this process alone.
#[derive(Debug)]
pub(crate) struct Store {
    conn: Connection,
    folder: PathBuf,
    _lock: Lock,
}

impl Store {
    /// Opens the store in a folder, or makes one there.
    pub(crate) fn open(folder: &Path, now: &Moment) -> Result<Self, StoreFault> {
        Swap::of(folder).finish()?;
        folder::make(folder)?;
        let held = lock(folder, now)?;
        let conn = connect(&folder.join(DATABASE))?;
        Ok(Self {
            conn,
            folder: folder.to_owned(),
            _lock: held,
        })
    }

    /// Opens the database anew, after an error that leaves a connection in doubt. That one is let go
    /// first: a lock that it could not give back would keep the new one waiting.
    pub(crate) fn reopen(&mut self) -> Result<(), StoreFault> {
        self.conn = Connection::open_in_memory()?;
        self.conn = connect(&self.folder.join(DATABASE))?;
        Ok(())
    }

    /// Sees that closing writes nothing to a file that is refused.
    pub(crate) fn leave_as_it_is(&self) -> Result<(), StoreFault> {
        let unwritten = DbConfig::SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE;
        self.conn.set_db_config(unwritten, true)?;
        Ok(())
    }

    /// The connection, to read.
    pub(crate) const fn conn(&self) -> &Connection {
        &self.conn
    }

    /// The connection, to write.
    pub(crate) const fn conn_mut(&mut self) -> &mut Connection {
        &mut self.conn
    }

    /// The store as it stands now, to read beside the writer.
    pub(crate) fn reader(&self) -> Result<Reader, StoreFault> {
        Reader::open(&self.folder)
    }

    /// The free bytes where the store stands.
    pub(crate) fn room(&self) -> Result<u64, StoreFault> {
        room(&self.folder)
    }

    /// The folder of the store.
    pub(crate) fn folder(&self) -> &Path {
        &self.folder
    }

    /// The folder of the photos.
    pub(crate) fn photos(&self) -> PathBuf {
        self.folder.join(super::PHOTOS)
    }
}

fn connect(path: &Path) -> Result<Connection, StoreFault> {
    header::look(path)?;
    let flags = OpenFlags::SQLITE_OPEN_READ_WRITE
        | OpenFlags::SQLITE_OPEN_CREATE
        | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let mut conn = Connection::open_with_flags(path, flags)?;
    // Until it is known to be ours and whole, closing must not write to it.
    conn.set_db_config(DbConfig::SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, true)?;
    pragma::set(&conn)?;
    match version(&conn, path)? {
        None => create(&mut conn)?,
        Some(VERSION) => {}
        Some(older) => migrate::migrate(&mut conn, older)?,
    }
    same_schema(&conn)?;
    conn.set_db_config(DbConfig::SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, false)?;
    Ok(conn)
}

/// The version of the store, as its log has it too; `None` where nothing was committed to it yet.
fn version(conn: &Connection, path: &Path) -> Result<Option<u32>, StoreFault> {
    let pragma = |name: &str| -> rusqlite::Result<i32> {
        conn.query_row(&format!("PRAGMA {name}"), [], |row| row.get(0))
    };
    let (application, version) = (pragma("application_id")?, pragma("user_version")?);
    header::may_open(application, version, path)?;
    let tables: u32 = conn.query_row("SELECT count(*) FROM sqlite_schema", [], |r| r.get(0))?;
    match (application, tables) {
        (0, 0) => Ok(None),
        (0, _) => Err(StoreFault::NotOurs {
            path: path.to_owned(),
        }),
        _ => Ok(u32::try_from(version).ok()),
    }
}

/// Makes the lasting tables, all or none.
fn create(conn: &mut Connection) -> Result<(), StoreFault> {
    pragma::write_ahead(conn)?;
    let tx = conn.transaction_with_behavior(TransactionBehavior::Immediate)?;
    tx.execute_batch(SCHEMA)?;
    tx.pragma_update(None, "application_id", APPLICATION)?;
    tx.pragma_update(None, "user_version", VERSION)?;
    tx.commit()?;
    // The marks stand in the file itself from now on, not in its log alone.
    conn.query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |_| Ok(()))?;
    Ok(())
}

/// Sees that the lasting tables are those of this version: the database keeps the statement that
/// made each, letter by letter.
pub(crate) fn same_schema(conn: &Connection) -> Result<(), StoreFault> {
    let mut find = conn.prepare(include_str!("sql/table.sql"))?;
    for sql in statements() {
        let table = sql.split_whitespace().nth(2).unwrap_or_default();
        if !find.exists((table, sql))? {
            let table = table.to_owned();
            return Err(StoreFault::Damaged(Damage::Schema { table }));
        }
    }
    Ok(())
}

/// The statements that make the lasting tables, without what stands before and behind them.
fn statements() -> impl Iterator<Item = &'static str> {
    SCHEMA.split(";\n").filter_map(|part| {
        let begins = part.find("CREATE TABLE")?;
        part.get(begins..)
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_statement_is_kept_as_it_is_written() {
        let conn = Connection::open_in_memory().unwrap();
        assert!(same_schema(&conn).is_err());
        conn.execute_batch(SCHEMA).unwrap();
        same_schema(&conn).unwrap();
        let made: usize = conn
            .query_row(
                "SELECT count(*) FROM sqlite_schema WHERE type = 'table'",
                [],
                |row| row.get(0),
            )
            .unwrap();
        assert_eq!(statements().count(), made);
    }
}
