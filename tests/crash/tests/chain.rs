//! Whatever is changed in the ledger behind the logbook's back is named by its first bad entry.

#![expect(
    clippy::unwrap_used,
    reason = "a test that can't go on stops with the reason"
)]

use baywalk_crash::work::{Work, open};
use baywalk_logbook::Logbook;
use baywalk_logbook::ledger::{Misfit, MisfitWhy};
use baywalk_logbook::store::DATABASE;
use rusqlite::Connection;

fn broken(logbook: &Logbook) -> Option<Misfit> {
    logbook.verify().unwrap().broken
}

fn row(conn: &Connection, column: &str, seq: u64) -> Vec<u8> {
    let sql = format!("SELECT CAST({column} AS BLOB) FROM ledger WHERE seq = ?1");
    conn.query_row(&sql, [seq], |row| row.get(0)).unwrap()
}

fn put(conn: &Connection, column: &str, seq: u64, bytes: &[u8]) {
    let kind = if column == "body" { "TEXT" } else { "BLOB" };
    let sql = format!("UPDATE ledger SET {column} = CAST(?2 AS {kind}) WHERE seq = ?1");
    assert_eq!(conn.execute(&sql, (seq, bytes)).unwrap(), 1);
}

#[test]
fn each_change_of_the_ledger_is_named_by_its_first_bad_entry() {
    let folder = tempfile::tempdir().unwrap();
    let mut logbook = open(folder.path()).unwrap();
    for (call, at, _) in &Work::opening(60).acts {
        logbook.call(call, at).unwrap();
    }
    assert_eq!(broken(&logbook), None);
    let conn = Connection::open(folder.path().join(DATABASE)).unwrap();
    conn.execute_batch("PRAGMA synchronous = OFF").unwrap();
    let mut flipped = 0;
    for seq in 1..=60 {
        for column in ["body", "digest"] {
            let sound = row(&conn, column, seq);
            // Every byte of a digest; of a body, which may be long, some thirty.
            for place in (0..sound.len()).step_by(sound.len() / 40 + 1) {
                let mut spoiled = sound.clone();
                spoiled[place] ^= 1;
                put(&conn, column, seq, &spoiled);
                let misfit = broken(&logbook).unwrap();
                assert_eq!((misfit.seq, misfit.why), (seq, MisfitWhy::Digest));
                flipped += 1;
            }
            put(&conn, column, seq, &sound);
        }
    }
    assert!(flipped > 3000, "{flipped}");
    assert_eq!(broken(&logbook), None);
}

#[test]
fn rows_taken_out_swapped_or_put_in_are_named() {
    let folder = tempfile::tempdir().unwrap();
    let mut logbook = open(folder.path()).unwrap();
    for (call, at, _) in &Work::opening(30).acts {
        logbook.call(call, at).unwrap();
    }
    let conn = Connection::open(folder.path().join(DATABASE)).unwrap();
    let swap = |one: u64, other: u64| {
        for (from, to) in [(one, 900), (other, one), (900, other)] {
            let moved = conn.execute("UPDATE ledger SET seq = ?2 WHERE seq = ?1", (from, to));
            assert_eq!(moved.unwrap(), 1);
        }
    };
    for seq in 1..30 {
        swap(seq, seq + 1);
        let misfit = broken(&logbook).unwrap();
        assert_eq!((misfit.seq, misfit.why), (seq, MisfitWhy::Digest));
        swap(seq, seq + 1);
        conn.execute("UPDATE ledger SET seq = 900 WHERE seq = ?1", [seq])
            .unwrap();
        assert_eq!(broken(&logbook).unwrap().seq, seq);
        conn.execute("UPDATE ledger SET seq = ?1 WHERE seq = 900", [seq])
            .unwrap();
    }
    conn.execute_batch(
        "INSERT INTO ledger SELECT 31, 'x', rig, walk, kind, version, body, digest FROM ledger
         WHERE seq = 30",
    )
    .unwrap();
    let misfit = broken(&logbook).unwrap();
    assert_eq!((misfit.seq, misfit.why), (31, MisfitWhy::Digest));
}
