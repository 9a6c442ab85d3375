//! Verifying the ledger: that each entry hangs on the one before it, and that each can be read.

use super::{Digest, EntryFault, Head, batches, read};
use crate::store::StoreFault;
use rusqlite::{Connection, Row};

/// How far the ledger is sound.
#[derive(Debug, Clone, PartialEq)]
pub struct Verified {
    /// How many entries fit, from the first on.
    pub entries: u64,
    /// The digest of the last of them.
    pub digest: Digest,
    /// The first that does not fit; `None` where all do.
    pub broken: Option<Misfit>,
}

/// An entry that does not fit.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("entry {seq} does not fit: {why}")]
pub struct Misfit {
    /// Its number, as expected.
    pub seq: u64,
    /// Why.
    pub why: MisfitWhy,
}

/// Why an entry does not fit.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum MisfitWhy {
    /// Another number stands there: entries are missing before it.
    #[error("the next entry is {found}")]
    Number {
        /// The number found.
        found: i64,
    },
    /// Its stored bytes, or those of the digest, are not what was written.
    #[error("its bytes and its digest do not belong together")]
    Digest,
    /// A column says something else than the entry itself.
    #[error("its column {0} says something else")]
    Column(&'static str),
    /// It can't be read.
    #[error(transparent)]
    Entry(#[from] EntryFault),
    /// It was the newest once, and is gone.
    #[error("it is gone, with all behind it up to {until}")]
    Gone {
        /// The last entry there was.
        until: u64,
    },
}

/// One row as it is stored.
pub(super) struct Stored {
    pub(super) seq: i64,
    body: Vec<u8>,
    pub(super) digest: Option<Digest>,
    columns: Option<Columns>,
}

/// The columns that repeat parts of the entry.
struct Columns {
    texts: [Option<String>; 4],
    version: i64,
}

/// Verifies that each entry hangs on the one before it: numbers and digests over the stored bytes.
/// `known` is the head that the computed tables had reached.
pub(crate) fn chain(conn: &Connection, known: u64) -> Result<Verified, StoreFault> {
    let sql = include_str!("sql/stored.sql");
    through(conn, sql, |row| link(row, None), known)
}

/// Verifies the chain, that each entry can be read, and that its columns say what it says.
pub(crate) fn verify(conn: &Connection, known: u64) -> Result<Verified, StoreFault> {
    let sql = include_str!("sql/verify.sql");
    let whole = |row: &Row<'_>| {
        let texts = [row.get(3)?, row.get(4)?, row.get(5)?, row.get(6)?];
        let version = row.get(7)?;
        link(row, Some(Columns { texts, version }))
    };
    through(conn, sql, whole, known)
}

/// Goes through all rows from the start.
fn through(
    conn: &Connection,
    sql: &str,
    stored: impl Fn(&Row<'_>) -> rusqlite::Result<Stored>,
    known: u64,
) -> Result<Verified, StoreFault> {
    let mut statement = conn.prepare(sql)?;
    let mut rows = statement.query([])?;
    let next = || rows.next()?.map(&stored).transpose();
    let (sound, why) = batches::judge(next, fits)?;
    let gone = || (known > sound.seq).then_some(MisfitWhy::Gone { until: known });
    let seq = sound.seq.saturating_add(1);
    Ok(Verified {
        entries: sound.seq,
        digest: sound.digest,
        broken: why.or_else(gone).map(|why| Misfit { seq, why }),
    })
}

fn link(row: &Row<'_>, columns: Option<Columns>) -> rusqlite::Result<Stored> {
    let bytes = |place| -> rusqlite::Result<&[u8]> {
        Ok(row.get_ref(place)?.as_bytes().unwrap_or_default())
    };
    Ok(Stored {
        seq: row.get(0)?,
        body: bytes(1)?.to_vec(),
        digest: Digest::from_bytes(bytes(2)?),
        columns,
    })
}

/// Sees that a row is the next entry behind a head.
fn fits(before: Head, row: &Stored) -> Result<Head, MisfitWhy> {
    let next = before.then(&row.body);
    if u64::try_from(row.seq) != Ok(next.seq) {
        return Err(MisfitWhy::Number { found: row.seq });
    }
    if row.digest != Some(next.digest) {
        return Err(MisfitWhy::Digest);
    }
    if let Some(columns) = &row.columns {
        reads(next.seq, &row.body, columns)?;
    }
    Ok(next)
}

/// Sees that an entry can be read and that its columns say what it says.
fn reads(seq: u64, body: &[u8], columns: &Columns) -> Result<(), MisfitWhy> {
    let text = str::from_utf8(body).map_err(|error| EntryFault::Form(error.to_string()))?;
    let (version, numbered) = read::versioned(text)?;
    let entry = &numbered.entry;
    let says = |column: &Option<String>, said: Option<String>| *column == said;
    let [id, rig, walk, kind] = &columns.texts;
    let same = [
        ("seq", numbered.seq == seq),
        ("id", says(id, Some(entry.id.to_string()))),
        ("rig", says(rig, Some(entry.rig.to_string()))),
        ("walk", says(walk, entry.walk.map(|walk| walk.to_string()))),
        ("kind", kind.as_deref() == Some(entry.act.kind())),
        ("version", columns.version == i64::from(version)),
    ];
    match same.into_iter().find(|(_, same)| !same) {
        Some((column, _)) => Err(MisfitWhy::Column(column)),
        None => Ok(()),
    }
}
