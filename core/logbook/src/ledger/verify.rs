//! Verifying the ledger: that each entry hangs on the one before it, and that each can be read.

use super::{Digest, EntryFault, Head, Misfit, MisfitWhy, Verified, read};
use crate::store::{Reader, StoreFault};
use rusqlite::{Connection, OptionalExtension, Row};

/// How deep the ledger is looked into.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Depth {
    /// Numbers, and digests over the stored bytes.
    Chain,
    /// The chain, that each entry can be read, and that its columns say what it says.
    Entries,
}

/// The last entry of a part that fits, and why the one behind it does not.
type Found = (Head, Option<MisfitWhy>);

/// Verifies the ledger. `known` is the head that the computed tables had reached; `beside` are other
/// connections that see the same rows: with each of them a part of the ledger is looked into at the
/// same time. The digest before a part is taken as it is stored, since the part before judges it; so
/// the first entry that does not fit is the same in however many parts.
pub(crate) fn verify(
    conn: &Connection,
    beside: Vec<Reader>,
    depth: Depth,
    known: u64,
) -> Result<Verified, StoreFault> {
    let bounds = bounds(conn, beside.len())?;
    let found = std::thread::scope(|scope| {
        let others: Vec<_> = beside
            .into_iter()
            .zip(bounds.iter().skip(1))
            .map(|(reader, bounds)| scope.spawn(move || part(reader.conn(), *bounds, depth)))
            .collect();
        let first = bounds.iter().take(1);
        let first: Vec<_> = first.map(|bounds| part(conn, *bounds, depth)).collect();
        let stopped = |_| Err(StoreFault::Unexpected("a thread has stopped".to_owned()));
        let others = others.into_iter();
        let others = others.map(|other| other.join().unwrap_or_else(stopped));
        first
            .into_iter()
            .chain(others)
            .collect::<Result<Vec<Found>, _>>()
    })?;
    let mut sound = Head::START;
    for (head, why) in found {
        sound = head;
        if why.is_some() {
            return Ok(verified(sound, why));
        }
    }
    let gone = (known > sound.seq).then_some(MisfitWhy::Gone { until: known });
    Ok(verified(sound, gone))
}

fn verified(sound: Head, why: Option<MisfitWhy>) -> Verified {
    let seq = sound.seq.saturating_add(1);
    Verified {
        entries: sound.seq,
        digest: sound.digest,
        broken: why.map(|why| Misfit { seq, why }),
    }
}

/// The parts of a ledger, each from a number to another; the first has no start, the last no end.
fn bounds(conn: &Connection, beside: usize) -> Result<Vec<(i64, i64)>, StoreFault> {
    let last: i64 = conn.query_row(include_str!("sql/last.sql"), [], |row| row.get(0))?;
    let parts = i64::try_from(beside).unwrap_or_default().saturating_add(1);
    let each = last.checked_div(parts).unwrap_or_default();
    let cuts = (1..parts).map(|part| each.saturating_mul(part));
    let starts = cuts.clone().map(|cut| cut.saturating_add(1));
    let starts = std::iter::once(i64::MIN).chain(starts);
    Ok(starts.zip(cuts.chain([i64::MAX])).collect())
}

/// Looks into a part, from the row before it on.
fn part(conn: &Connection, bounds: (i64, i64), depth: Depth) -> Result<Found, StoreFault> {
    let mut sound = match bounds.0 {
        i64::MIN => Head::START,
        first => before(conn, first.saturating_sub(1))?,
    };
    let mut statement = conn.prepare(match depth {
        Depth::Chain => include_str!("sql/chain.sql"),
        Depth::Entries => include_str!("sql/verify.sql"),
    })?;
    let mut rows = statement.query(bounds)?;
    while let Some(row) = rows.next()? {
        match fits(sound, row, depth)? {
            Ok(next) => sound = next,
            Err(why) => return Ok((sound, Some(why))),
        }
    }
    Ok((sound, None))
}

/// The newest row up to a number, as it tells of itself.
fn before(conn: &Connection, seq: i64) -> Result<Head, StoreFault> {
    let found = conn.query_row(include_str!("sql/before.sql"), [seq], |row| {
        let digest = Digest::from_bytes(row.get_ref(1)?.as_bytes().unwrap_or_default());
        Ok((row.get::<_, i64>(0)?, digest))
    });
    let Some((seq, digest)) = found.optional()? else {
        return Ok(Head::START);
    };
    Ok(Head {
        seq: u64::try_from(seq).unwrap_or_default(),
        digest: digest.unwrap_or(Digest::START),
    })
}

/// Sees that a row is the next entry behind a head.
fn fits(before: Head, row: &Row<'_>, depth: Depth) -> rusqlite::Result<Result<Head, MisfitWhy>> {
    let found: i64 = row.get(0)?;
    let body = row.get_ref(1)?.as_bytes().unwrap_or_default();
    let digest = row.get_ref(2)?.as_bytes().unwrap_or_default();
    let next = before.then(body);
    if u64::try_from(found) != Ok(next.seq) {
        return Ok(Err(MisfitWhy::Number { found }));
    }
    if digest != next.digest.bytes() {
        return Ok(Err(MisfitWhy::Digest));
    }
    Ok(match depth {
        Depth::Chain => Ok(next),
        Depth::Entries => reads(next.seq, body, row)?.map(|()| next),
    })
}

/// Sees that an entry can be read and that its columns say what it says.
fn reads(seq: u64, body: &[u8], row: &Row<'_>) -> rusqlite::Result<Result<(), MisfitWhy>> {
    let text = str::from_utf8(body).map_err(|error| EntryFault::Form(error.to_string()));
    let (version, numbered) = match text.and_then(read::versioned) {
        Ok(read) => read,
        Err(fault) => return Ok(Err(fault.into())),
    };
    let entry = &numbered.entry;
    let walk = entry.walk.map(|walk| walk.to_string());
    let text = |place| -> rusqlite::Result<Option<String>> { row.get(place) };
    let same = [
        ("seq", numbered.seq == seq),
        ("id", text(3)? == Some(entry.id.to_string())),
        ("rig", text(4)? == Some(entry.rig.to_string())),
        ("walk", text(5)? == walk),
        ("kind", text(6)?.as_deref() == Some(entry.act.kind())),
        ("version", row.get::<_, i64>(7)? == i64::from(version)),
    ];
    let other = same.into_iter().find(|(_, same)| !same);
    Ok(other.map_or(Ok(()), |(column, _)| Err(MisfitWhy::Column(column))))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::store::Store;
    use baywalk_domain::moment::{Boot, Moment};
    use chrono::DateTime;

    const ENTRIES: u64 = 40;

    fn store() -> (tempfile::TempDir, Store) {
        let folder = tempfile::tempdir().unwrap();
        let wall = DateTime::parse_from_rfc3339("2027-03-20T09:31:00-07:00").unwrap();
        let boot = Boot::new("start", 1);
        let store = Store::open(folder.path(), &Moment { wall, boot }).unwrap();
        store
            .conn()
            .execute_batch("PRAGMA synchronous = OFF")
            .unwrap();
        fill(&store);
        (folder, store)
    }

    fn verified(store: &Store, beside: usize) -> Verified {
        let readers = (0..beside).map(|_| store.reader().unwrap()).collect();
        verify(store.conn(), readers, Depth::Chain, ENTRIES).unwrap()
    }

    #[test]
    fn in_however_many_parts_the_first_that_does_not_fit_is_the_same() {
        let (_folder, store) = store();
        for beside in 0..5 {
            assert_eq!(verified(&store, beside).broken, None);
            assert_eq!(verified(&store, beside).entries, ENTRIES);
        }
        let changes = [
            "UPDATE ledger SET body = 'other' WHERE seq = ?1",
            "UPDATE ledger SET digest = zeroblob(32) WHERE seq = ?1",
            "UPDATE ledger SET seq = 900 WHERE seq = ?1",
            "UPDATE ledger SET seq = -900 WHERE seq = ?1",
            "DELETE FROM ledger WHERE seq = ?1",
            "DELETE FROM ledger WHERE seq >= ?1",
            "DELETE FROM ledger WHERE seq BETWEEN ?1 AND ?1 + 13",
        ];
        for (change, number) in changes
            .iter()
            .flat_map(|c| (1..=ENTRIES).map(move |n| (c, n)))
        {
            store.conn().execute(change, [number]).unwrap();
            let whole = verified(&store, 0);
            assert!(whole.broken.is_some(), "{change}, {number}");
            for beside in 1..5 {
                assert_eq!(verified(&store, beside), whole, "{change}, {number}");
            }
            fill(&store);
        }
    }

    /// Puts the rows in as they should be, and no others.
    fn fill(store: &Store) {
        let tx = store.conn().unchecked_transaction().unwrap();
        tx.execute("DELETE FROM ledger", []).unwrap();
        let mut head = Head::START;
        for number in 1..=ENTRIES {
            let body = format!("entry {number}");
            head = head.then(body.as_bytes());
            let sql = "INSERT INTO ledger VALUES (?1, ?2, 'rig', NULL, 'kind', 1, ?2, ?3)";
            let row = (number, &body, head.digest.bytes().as_slice());
            tx.execute(sql, row).unwrap();
        }
        tx.commit().unwrap();
    }
}
