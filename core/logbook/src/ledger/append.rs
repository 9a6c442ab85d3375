//! Appending an entry.

use super::{Head, current};
use crate::store::StoreFault;
use crate::stored;
use baywalk_domain::walk::Entry;
use rusqlite::{Connection, params};

/// Appends an entry behind the head; gives the new head.
pub(crate) fn append(tx: &Connection, head: Head, entry: &Entry) -> Result<Head, StoreFault> {
    let unexpected = |what: String| StoreFault::Unexpected(what);
    let kind = entry.act.kind();
    let version = current(kind).ok_or_else(|| unexpected(format!("no version of {kind}")))?;
    let seq = head.seq.saturating_add(1);
    let shape = stored::Entry::of(seq, version, entry);
    let body = serde_json_canonicalizer::to_string(&shape)
        .map_err(|error| unexpected(error.to_string()))?;
    put(tx, head, (version, entry), &body)
}

/// Puts stored bytes behind the head as they are; `read` is what they were read as, with the version
/// in which they are stored.
pub(crate) fn put(
    tx: &Connection,
    head: Head,
    read: (u32, &Entry),
    body: &str,
) -> Result<Head, StoreFault> {
    let next = head.then(body.as_bytes());
    let (version, entry) = read;
    tx.prepare_cached(include_str!("sql/append.sql"))?
        .execute(params![
            next.seq,
            entry.id.to_string(),
            entry.rig.to_string(),
            entry.walk.map(|walk| walk.to_string()),
            entry.act.kind(),
            version,
            body,
            next.digest.bytes().as_slice(),
        ])?;
    Ok(next)
}
