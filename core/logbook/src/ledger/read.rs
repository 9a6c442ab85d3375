//! Reading entries.

use super::{Digest, EntryFault, Head, current, upcast};
use crate::store::{Damage, Newer, StoreFault};
use crate::stored;
use baywalk_domain::ids::{ActId, WalkId};
use baywalk_domain::walk::{Act, Entry};
use rusqlite::{Connection, OptionalExtension, Row};
use serde_json::Value;

/// An entry and its number.
#[derive(Debug, Clone, PartialEq)]
pub struct Numbered {
    /// Its number; the first is 1.
    pub seq: u64,
    /// The entry.
    pub entry: Entry,
}

/// Reads an entry from its stored text, whatever version it was written in.
///
/// # Errors
/// [`EntryFault`] where it is no entry, or one of a newer program.
///
/// # Example
/// ```
/// let faulty = baywalk_logbook::ledger::read("{}");
/// assert!(faulty.is_err());
/// ```
pub fn read(text: &str) -> Result<Numbered, EntryFault> {
    versioned(text).map(|(_, numbered)| numbered)
}

/// Reads an entry; gives the version in which it is stored, too.
pub(crate) fn versioned(text: &str) -> Result<(u32, Numbered), EntryFault> {
    let shape = shape(text)?;
    let (seq, version, said) = (shape.seq, shape.version, shape.kind.clone());
    let entry = shape.domain()?;
    let found = entry.act.kind();
    if found == said {
        Ok((version, Numbered { seq, entry }))
    } else {
        let found = found.to_owned();
        Err(EntryFault::Kind { said, found })
    }
}

/// The stored shape of an entry, its body in the current form. One that is stored in the current
/// version, as nearly all are, is read at once; others, and those with a fault, are taken apart.
fn shape(text: &str) -> Result<stored::Entry, EntryFault> {
    match serde_json::from_str::<stored::Entry>(text) {
        Ok(shape) if current(&shape.kind) == Some(shape.version) => Ok(shape),
        _ => brought_up(text),
    }
}

/// The stored shape of an entry of any version, its body brought to the current form.
fn brought_up(text: &str) -> Result<stored::Entry, EntryFault> {
    let form = |error: serde_json::Error| EntryFault::Form(error.to_string());
    let mut value: Value = serde_json::from_str(text).map_err(form)?;
    let kind = value.get("kind").and_then(Value::as_str).unwrap_or("");
    let kind = kind.to_owned();
    let version = value.get("version").and_then(Value::as_u64);
    let version = version.ok_or_else(|| EntryFault::Form("no version".to_owned()))?;
    let too_new = || EntryFault::TooNew {
        kind: kind.clone(),
        version,
    };
    let known = current(&kind).ok_or_else(too_new)?;
    let found = u32::try_from(version).map_err(|_| too_new())?;
    if found > known {
        return Err(too_new());
    }
    if found < known
        && let Some(body) = value.get_mut("body")
    {
        let missing = || EntryFault::Form(format!("no way from version {found}"));
        *body = upcast::upcast(&kind, found, known, body.take()).ok_or_else(missing)?;
    }
    serde_path_to_error::deserialize(value).map_err(|error| {
        let (at, why) = (error.path().to_string(), error.inner().to_string());
        EntryFault::Form(format!("at {at}: {why}"))
    })
}

/// The newest entry's number and digest.
pub(crate) fn head(conn: &Connection) -> Result<Head, StoreFault> {
    let found = conn
        .prepare_cached(include_str!("sql/head.sql"))?
        .query_row([], |row| {
            Ok((row.get::<_, u64>(0)?, row.get::<_, Vec<u8>>(1)?))
        })
        .optional()?;
    let Some((seq, digest)) = found else {
        return Ok(Head::START);
    };
    let digest = Digest::from_bytes(&digest).ok_or_else(|| short(seq))?;
    Ok(Head { seq, digest })
}

/// The entry of an act.
pub(crate) fn by_id(conn: &Connection, id: ActId) -> Result<Option<Numbered>, StoreFault> {
    let text = conn
        .prepare_cached(include_str!("sql/by_id.sql"))?
        .query_row([id.to_string()], text)
        .optional()?;
    text.map(|(seq, text)| entry(seq, &text)).transpose()
}

/// The entries of a walk, in order, from the entry that started it to its last one, if it ended.
pub(crate) fn of_walk(
    conn: &Connection,
    walk: WalkId,
    (begun, last): (u64, Option<u64>),
) -> Result<Vec<Numbered>, StoreFault> {
    let last = last.and_then(|last| i64::try_from(last).ok());
    let mut statement = conn.prepare_cached(include_str!("sql/of_walk.sql"))?;
    let rows = statement.query_map((begun, last.unwrap_or(i64::MAX), walk.to_string()), text)?;
    rows.map(|row| {
        row.map_err(StoreFault::from)
            .and_then(|(n, t)| entry(n, &t))
    })
    .collect()
}

/// Goes through the stored bytes of all entries with their digests, in order.
pub(crate) fn each_stored<E: From<StoreFault>>(
    conn: &Connection,
    mut visit: impl FnMut(u64, &str, Digest) -> Result<(), E>,
) -> Result<(), E> {
    let stored = |error: rusqlite::Error| E::from(StoreFault::from(error));
    let mut statement = conn
        .prepare(include_str!("sql/stored.sql"))
        .map_err(stored)?;
    let mut rows = statement.query([]).map_err(stored)?;
    while let Some(row) = rows.next().map_err(stored)? {
        let (seq, text) = text(row).map_err(stored)?;
        let digest: Vec<u8> = row.get(2).map_err(stored)?;
        let digest = Digest::from_bytes(&digest).ok_or_else(|| E::from(short(seq)))?;
        visit(seq, &text, digest)?;
    }
    Ok(())
}

/// The digests of the photos that entries name, struck ones too, each once.
pub(crate) fn photos(conn: &Connection) -> Result<Vec<String>, StoreFault> {
    let entries = of_kind(conn, "photo")?.into_iter();
    let named = entries.filter_map(|numbered| match numbered.entry.act {
        Act::Photo { digest, .. } => Some(digest),
        _ => None,
    });
    let mut named: Vec<String> = named.collect();
    named.sort_unstable();
    named.dedup();
    Ok(named)
}

/// What the logbook tells of where it comes from, oldest first.
pub(crate) fn origins(conn: &Connection) -> Result<Vec<Numbered>, StoreFault> {
    let mut statement = conn.prepare_cached(include_str!("sql/origins.sql"))?;
    let rows = statement.query_map([], text)?;
    rows.map(|row| {
        row.map_err(StoreFault::from)
            .and_then(|(seq, text)| entry(seq, &text))
    })
    .filter(|read| {
        !read
            .as_ref()
            .is_ok_and(|numbered| numbered.entry.walk.is_some())
    })
    .collect()
}

/// All entries of a kind, in order, struck ones too.
pub(crate) fn of_kind(conn: &Connection, kind: &str) -> Result<Vec<Numbered>, StoreFault> {
    let mut statement = conn.prepare_cached(include_str!("sql/of_kind.sql"))?;
    let rows = statement.query_map([kind], text)?;
    rows.map(|row| {
        row.map_err(StoreFault::from)
            .and_then(|(n, t)| entry(n, &t))
    })
    .collect()
}

fn short(seq: u64) -> StoreFault {
    let fault = EntryFault::Form("its digest has not 32 bytes".to_owned());
    StoreFault::Damaged(Damage::Entry { seq, fault })
}

/// Goes through all entries, in order.
pub(crate) fn each(
    conn: &Connection,
    mut visit: impl FnMut(Numbered) -> Result<(), StoreFault>,
) -> Result<(), StoreFault> {
    let mut statement = conn.prepare(include_str!("sql/each.sql"))?;
    let mut rows = statement.query([])?;
    while let Some(row) = rows.next()? {
        let (seq, text) = text(row)?;
        visit(entry(seq, &text)?)?;
    }
    Ok(())
}

fn text(row: &Row<'_>) -> rusqlite::Result<(u64, String)> {
    Ok((row.get(0)?, row.get(1)?))
}

/// Reads one row, whose number must be the one the entry says.
fn entry(seq: u64, text: &str) -> Result<Numbered, StoreFault> {
    match read(text) {
        Ok(numbered) if numbered.seq == seq => Ok(numbered),
        Ok(numbered) => {
            let fault = EntryFault::Form(format!("it calls itself entry {}", numbered.seq));
            Err(Damage::Entry { seq, fault }.into())
        }
        Err(EntryFault::TooNew { kind, version }) => {
            Err(Newer::Entry { seq, kind, version }.into())
        }
        Err(fault) => Err(Damage::Entry { seq, fault }.into()),
    }
}
