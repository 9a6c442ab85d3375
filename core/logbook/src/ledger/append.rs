//! Appending an entry.

use super::read::said;
use super::{EntryFault, Head, current};
use crate::store::{Damage, StoreFault};
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
    put(tx, head, &shape, &body)
}

/// Puts stored bytes behind the head as they are; `shape` is what they were read as.
pub(crate) fn put(
    tx: &Connection,
    head: Head,
    shape: &stored::Entry,
    body: &str,
) -> Result<Head, StoreFault> {
    let next = head.then(body.as_bytes());
    let unread = |fault: EntryFault| {
        let seq = next.seq;
        StoreFault::Damaged(Damage::Entry { seq, fault })
    };
    let walk = shape.walk.clone().map(said).transpose().map_err(unread)?;
    tx.prepare_cached(include_str!("sql/append.sql"))?
        .execute(params![
            next.seq,
            said(shape.id.clone()).map_err(unread)?,
            said(shape.rig.clone()).map_err(unread)?,
            walk,
            shape.kind,
            shape.version,
            body,
            next.digest.bytes().as_slice(),
        ])?;
    Ok(next)
}
