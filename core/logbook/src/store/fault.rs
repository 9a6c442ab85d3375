//! What can go wrong with a store.

use crate::ledger::EntryFault;
use chrono::{DateTime, FixedOffset};
use std::path::{Path, PathBuf};

/// Why a store can't be opened, read or written.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum StoreFault {
    /// Another process has it open.
    #[error("the store is held by process {pid:?} since {since:?}")]
    Held {
        /// Its process number, where it left one.
        pid: Option<u32>,
        /// Since when, where it left that.
        since: Option<DateTime<FixedOffset>>,
    },
    /// It was written by a newer version; nothing was touched.
    #[error(transparent)]
    TooNew(#[from] Newer),
    /// The file belongs to another program; nothing was touched.
    #[error("{} belongs to another program", .path.display())]
    NotOurs {
        /// The file.
        path: PathBuf,
    },
    /// It is damaged; nothing was touched, and it is kept.
    #[error(transparent)]
    Damaged(#[from] Damage),
    /// There is no room left; the store is as it was.
    #[error("no room is left on the storage")]
    StorageFull,
    /// There is no such record.
    #[error("no such {0}")]
    NotFound(&'static str),
    /// A photo can't be taken in.
    #[error(transparent)]
    Photo(#[from] crate::photo::PhotoFault),
    /// A file or folder can't be read or written.
    #[error("{}: {detail}", .path.display())]
    File {
        /// The file or folder.
        path: PathBuf,
        /// What the system says.
        detail: String,
    },
    /// Something that should not happen.
    #[error("unexpected: {0}")]
    Unexpected(String),
}

/// What is of a newer version than this one reads.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum Newer {
    /// The store as a whole.
    #[error("the store has version {found}; this program reads up to {known}")]
    Store {
        /// Its version.
        found: u32,
        /// The newest version that is read.
        known: u32,
    },
    /// One entry.
    #[error("entry {seq} is a {kind:?} of version {version}, which this program does not know")]
    Entry {
        /// Its number.
        seq: u64,
        /// Its kind.
        kind: String,
        /// Its version.
        version: u64,
    },
}

/// How a store is damaged.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum Damage {
    /// The file is no database.
    #[error("{} is no database", .path.display())]
    NotADatabase {
        /// The file.
        path: PathBuf,
    },
    /// The database engine finds it damaged.
    #[error("the database is damaged: {0}")]
    Database(String),
    /// The tables are not those of its version.
    #[error("table {table} is missing or of another form")]
    Schema {
        /// The first such table.
        table: String,
    },
    /// An entry can't be read.
    #[error("entry {seq} can't be read: {fault}")]
    Entry {
        /// Its number.
        seq: u64,
        /// Why.
        fault: EntryFault,
    },
    /// The newest entries are gone: tables were computed from more than there is.
    #[error("the ledger ends at entry {found}; it had reached {expected}")]
    TailGone {
        /// The last entry there is.
        found: u64,
        /// The last entry there was.
        expected: u64,
    },
    /// A table that is computed from the ledger holds something unreadable.
    #[error("a computed table can't be read: {0}")]
    Computed(String),
}

impl StoreFault {
    /// Names the file that could not be read or written; a full storage is told as such.
    pub(crate) fn file(path: &Path, error: &std::io::Error) -> Self {
        use std::io::ErrorKind;
        match error.kind() {
            ErrorKind::StorageFull | ErrorKind::QuotaExceeded => Self::StorageFull,
            _ => Self::File {
                path: path.to_owned(),
                detail: error.to_string(),
            },
        }
    }

    /// Whether the connection can't be trusted any more and is opened anew before the next act.
    pub(crate) const fn asks_reopen(&self) -> bool {
        matches!(
            self,
            Self::Unexpected(_) | Self::Damaged(_) | Self::StorageFull
        )
    }
}

impl From<rusqlite::Error> for StoreFault {
    fn from(error: rusqlite::Error) -> Self {
        use rusqlite::ErrorCode;
        use rusqlite::ffi::SQLITE_IOERR_SHMSIZE;
        let Some(code) = error.sqlite_error() else {
            return Self::Damaged(Damage::Computed(error.to_string()));
        };
        match code.code {
            ErrorCode::DiskFull => Self::StorageFull,
            _ if code.extended_code == SQLITE_IOERR_SHMSIZE => Self::StorageFull,
            ErrorCode::DatabaseCorrupt | ErrorCode::NotADatabase => {
                Self::Damaged(Damage::Database(error.to_string()))
            }
            _ => Self::Unexpected(error.to_string()),
        }
    }
}
