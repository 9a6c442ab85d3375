//! Verifying the chain: the stored bytes of every entry are hashed again.

use super::read::said;
use super::{Digest, EntryFault, Head, read};
use crate::store::StoreFault;
use rusqlite::{Connection, Row};

/// How far the chain is sound.
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
struct Stored {
    seq: i64,
    columns: [Option<String>; 4],
    version: i64,
    body: Vec<u8>,
    digest: Vec<u8>,
}

/// Verifies the chain from its start. `known` is the head that the computed tables had reached.
pub(crate) fn verify(conn: &Connection, known: u64) -> Result<Verified, StoreFault> {
    let mut statement = conn.prepare(include_str!("sql/verify.sql"))?;
    let mut rows = statement.query([])?;
    let mut sound = Head::START;
    while let Some(row) = rows.next()? {
        match fits(sound, &stored(row)?) {
            Ok(next) => sound = next,
            Err(why) => return Ok(broken(sound, why)),
        }
    }
    if known > sound.seq {
        return Ok(broken(sound, MisfitWhy::Gone { until: known }));
    }
    Ok(Verified {
        entries: sound.seq,
        digest: sound.digest,
        broken: None,
    })
}

fn broken(sound: Head, why: MisfitWhy) -> Verified {
    let seq = sound.seq.saturating_add(1);
    Verified {
        entries: sound.seq,
        digest: sound.digest,
        broken: Some(Misfit { seq, why }),
    }
}

fn stored(row: &Row<'_>) -> rusqlite::Result<Stored> {
    let bytes = |place| -> rusqlite::Result<Vec<u8>> {
        Ok(row.get_ref(place)?.as_bytes().unwrap_or_default().to_vec())
    };
    Ok(Stored {
        seq: row.get(0)?,
        columns: [row.get(1)?, row.get(2)?, row.get(3)?, row.get(4)?],
        version: row.get(5)?,
        body: bytes(6)?,
        digest: bytes(7)?,
    })
}

/// Sees that a row is the next entry behind a head.
fn fits(before: Head, row: &Stored) -> Result<Head, MisfitWhy> {
    let next = before.then(&row.body);
    if u64::try_from(row.seq) != Ok(next.seq) {
        return Err(MisfitWhy::Number { found: row.seq });
    }
    if Digest::from_bytes(&row.digest) != Some(next.digest) {
        return Err(MisfitWhy::Digest);
    }
    let text = str::from_utf8(&row.body).map_err(|error| EntryFault::Form(error.to_string()))?;
    let shape = read::shape(text)?;
    let [id, rig, walk, kind] = &row.columns;
    let walk_said = shape.walk.clone().map(said).transpose()?;
    let same = [
        ("seq", shape.seq == next.seq),
        ("id", *id == Some(said(shape.id.clone())?)),
        ("rig", *rig == Some(said(shape.rig.clone())?)),
        ("walk", *walk == walk_said),
        ("kind", kind.as_deref() == Some(shape.kind.as_str())),
        ("version", row.version == i64::from(shape.version)),
    ];
    if let Some((column, _)) = same.into_iter().find(|(_, same)| !same) {
        return Err(MisfitWhy::Column(column));
    }
    read::read(text)?;
    Ok(next)
}
