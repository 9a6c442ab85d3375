//! Reading a store as it stood at one moment, beside whoever writes to it.

use super::{DATABASE, PHOTOS, StoreFault, header};
use rusqlite::{Connection, OpenFlags};
use std::path::{Path, PathBuf};
use std::time::Duration;

/// A store as it stood when this was made; entries written later are not seen.
#[derive(Debug)]
pub(crate) struct Reader {
    conn: Connection,
    photos: PathBuf,
}

impl Reader {
    /// Looks at the store in a folder, which is not written to.
    pub(crate) fn open(folder: &Path) -> Result<Self, StoreFault> {
        let path = folder.join(DATABASE);
        header::look(&path)?;
        let flags = OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_NO_MUTEX;
        let conn = Connection::open_with_flags(&path, flags)?;
        conn.busy_timeout(Duration::from_secs(3))?;
        conn.execute_batch(include_str!("sql/reader.sql"))?;
        conn.query_row("SELECT count(*) FROM sqlite_schema", [], |_| Ok(()))?;
        Ok(Self {
            conn,
            photos: folder.join(PHOTOS),
        })
    }

    /// The connection, in one transaction.
    pub(crate) const fn conn(&self) -> &Connection {
        &self.conn
    }

    /// The folder of the photos.
    pub(crate) fn photos(&self) -> &Path {
        &self.photos
    }
}
