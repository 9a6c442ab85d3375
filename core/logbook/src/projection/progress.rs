//! How far the computed tables have come.

use super::json;
use crate::ledger::{Digest, Head};
use crate::store::StoreFault;
use crate::stored;
use baywalk_domain::moment::Moment;
use rusqlite::{Connection, OptionalExtension};

/// How far the computed tables have come, and the newest wall clock up to there.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Progress {
    /// The version of the tables.
    pub(crate) version: u32,
    /// The last entry they were computed from.
    pub(crate) head: Head,
    /// The moment with the newest wall clock; `None` before the first entry.
    pub(crate) newest: Option<Moment>,
}

impl Progress {
    /// Before the first entry.
    pub(crate) const START: Self = Self {
        version: super::VERSION,
        head: Head::START,
        newest: None,
    };

    /// After one more entry.
    pub(crate) fn then(&self, head: Head, at: &Moment) -> Self {
        let newer = |newest: &Moment| at.wall < newest.wall;
        let newest = self.newest.clone().filter(newer);
        Self {
            version: super::VERSION,
            head,
            newest: Some(newest.unwrap_or_else(|| at.clone())),
        }
    }

    /// Writes it.
    pub(crate) fn put(&self, tx: &Connection) -> Result<(), StoreFault> {
        let newest = self.newest.as_ref().map(json::write::<stored::Moment>);
        tx.prepare_cached(include_str!("sql/progress_put.sql"))?
            .execute((
                self.version,
                self.head.seq,
                self.head.digest.bytes().as_slice(),
                newest.transpose()?.unwrap_or_default(),
            ))?;
        Ok(())
    }
}

/// How far the computed tables of a store have come; `None` where there are none yet.
pub(crate) fn progress(conn: &Connection) -> Result<Option<Progress>, StoreFault> {
    let found = conn
        .prepare_cached(include_str!("sql/progress.sql"))?
        .query_row([], |row| {
            let digest: Vec<u8> = row.get(2)?;
            Ok((row.get(0)?, row.get(1)?, digest, row.get::<_, String>(3)?))
        })
        .optional()?;
    let Some((version, seq, digest, newest)) = found else {
        return Ok(None);
    };
    let newest = (!newest.is_empty()).then(|| json::read::<stored::Moment>(&newest));
    let digest = Digest::from_bytes(&digest);
    let digest = digest.ok_or_else(|| json::computed(&"a digest has not 32 bytes"))?;
    Ok(Some(Progress {
        version,
        head: Head { seq, digest },
        newest: newest.transpose()?,
    }))
}
