//! What is there now, beside what a backup holds.

use super::Archive;
use super::check::Contents;
use crate::ledger::{self, Digest, Head};
use crate::store::{DATABASE, Reader, StoreFault};
use rusqlite::{Connection, OptionalExtension};
use std::path::Path;

/// The logbook that is there now, and how a backup stands to it.
#[derive(Debug, Clone, PartialEq)]
pub struct Present {
    /// What it holds.
    pub contents: Contents,
    /// Its last entry; `None` where it can't be read.
    pub head: Option<Head>,
    /// How the backup stands to it.
    pub relation: Relation,
}

/// How a backup stands to the logbook that is there.
#[derive(Debug, Clone, PartialEq)]
pub enum Relation {
    /// The backup has all that is there, and nothing else.
    Same,
    /// The backup has all that is there, and more.
    Newer {
        /// The entries that only the backup has.
        more: u64,
    },
    /// What is there has all of the backup, and more, which would be lost from it.
    Older {
        /// The entries that the backup has not.
        lost: u64,
    },
    /// They have a past in common, and went apart.
    Apart {
        /// The last entry that they have in common.
        common: u64,
        /// The entries behind it that the backup has not.
        lost: u64,
    },
    /// They have nothing in common: the backup is of another logbook.
    Other {
        /// The entries that the backup has not.
        lost: u64,
    },
    /// What is there can't be read.
    Unreadable(Box<StoreFault>),
}

impl Present {
    /// What an open logbook holds, beside a backup of another.
    pub(super) fn of(logbook: &crate::Logbook) -> Result<Self, StoreFault> {
        let reader = logbook.reader()?;
        let head = ledger::head(reader.conn())?;
        Ok(Self {
            contents: contents(reader.conn())?,
            head: Some(head),
            relation: relation(reader.conn(), head, &[])?,
        })
    }
}

/// What is in a folder; `None` where there is no logbook, or an empty one.
pub(super) fn present(folder: &Path, archive: &Archive) -> Option<Present> {
    if !folder.join(DATABASE).exists() {
        return None;
    }
    match Reader::open(folder).and_then(|reader| read(reader.conn(), archive)) {
        Ok(present) => present,
        Err(fault) => Some(Present {
            contents: Contents::default(),
            head: None,
            relation: Relation::Unreadable(Box::new(fault)),
        }),
    }
}

fn read(conn: &Connection, archive: &Archive) -> Result<Option<Present>, StoreFault> {
    let tables: u32 = conn.query_row("SELECT count(*) FROM sqlite_schema", [], |r| r.get(0))?;
    if tables == 0 {
        return Ok(None);
    }
    let head = ledger::head(conn)?;
    if head == Head::START {
        return Ok(None);
    }
    Ok(Some(Present {
        contents: contents(conn)?,
        head: Some(head),
        relation: relation(conn, head, &archive.chain)?,
    }))
}

fn contents(conn: &Connection) -> Result<Contents, StoreFault> {
    let (rigs, walks, ended) = conn.query_row(include_str!("sql/contents.sql"), [], |row| {
        Ok((row.get(0)?, row.get(1)?, row.get::<_, usize>(2)?))
    })?;
    let newest: Option<String> = conn
        .query_row(include_str!("sql/newest.sql"), [], |row| row.get(0))
        .optional()?;
    let newest = newest.and_then(|body| ledger::read(&body).ok());
    Ok(Contents {
        rigs,
        walks,
        open_walks: walks.saturating_sub(ended),
        newest: newest.map(|numbered| numbered.entry.at.wall),
    })
}

fn relation(conn: &Connection, head: Head, chain: &[Digest]) -> Result<Relation, StoreFault> {
    let mut common: u64 = 0;
    ledger::each_stored(conn, |seq, _, digest| {
        let place = usize::try_from(seq.saturating_sub(1)).unwrap_or(usize::MAX);
        if common.saturating_add(1) == seq && chain.get(place) == Some(&digest) {
            common = seq;
        }
        Ok::<(), StoreFault>(())
    })?;
    let lost: u64 = conn.query_row(include_str!("sql/lost.sql"), [common], |row| row.get(0))?;
    let more = u64::try_from(chain.len())
        .unwrap_or(u64::MAX)
        .saturating_sub(common);
    Ok(match (common, head.seq.saturating_sub(common), more) {
        (0, _, _) => Relation::Other { lost },
        (_, 0, 0) => Relation::Same,
        (_, 0, more) => Relation::Newer { more },
        (_, _, 0) if lost == 0 => Relation::Same,
        (_, _, 0) => Relation::Older { lost },
        (common, _, _) => Relation::Apart { common, lost },
    })
}
