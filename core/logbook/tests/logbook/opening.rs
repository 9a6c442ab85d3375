//! What is opened, and what is left untouched.

use crate::script::{TestClock, open, rig, whole_walk};
use baywalk_logbook::Logbook;
use baywalk_logbook::store::{Damage, Newer, StoreFault, VERSION};
use rusqlite::Connection;
use std::path::Path;
use tempfile::tempdir;

fn refused(folder: &Path) -> StoreFault {
    Logbook::open(folder, Box::new(TestClock::default())).unwrap_err()
}

/// The bytes of the database and its log; an empty log is none.
fn bytes(folder: &Path) -> Vec<Vec<u8>> {
    ["baywalk.db", "baywalk.db-wal"]
        .iter()
        .map(|name| std::fs::read(folder.join(name)).unwrap_or_default())
        .collect()
}

fn sql(folder: &Path, sql: &str) {
    let conn = Connection::open(folder.join("baywalk.db")).unwrap();
    conn.execute_batch(sql).unwrap();
}

#[test]
fn a_newer_store_is_refused_and_left_byte_for_byte() {
    let folder = tempdir().unwrap();
    whole_walk().play(&mut open(folder.path()));
    sql(
        folder.path(),
        &format!("PRAGMA user_version = {}", VERSION + 1),
    );
    let before = bytes(folder.path());
    let newer = StoreFault::TooNew(Newer::Store {
        found: VERSION + 1,
        known: VERSION,
    });
    assert_eq!(refused(folder.path()), newer);
    assert!(bytes(folder.path()) == before);
}

#[test]
fn a_newer_store_whose_version_stands_in_its_log_alone_is_left_too() {
    let folder = tempdir().unwrap();
    let copy = tempdir().unwrap();
    whole_walk().play(&mut open(folder.path()));
    let conn = Connection::open(folder.path().join("baywalk.db")).unwrap();
    conn.execute_batch("PRAGMA user_version = 7").unwrap();
    for name in ["baywalk.db", "baywalk.db-wal"] {
        std::fs::copy(folder.path().join(name), copy.path().join(name)).unwrap();
    }
    let before = bytes(copy.path());
    assert!(!before[1].is_empty());
    let newer = StoreFault::TooNew(Newer::Store {
        found: 7,
        known: VERSION,
    });
    assert_eq!(refused(copy.path()), newer);
    assert!(bytes(copy.path()) == before);
}

#[test]
fn what_is_no_database_is_refused_and_kept() {
    for text in [
        "not a database, but somebody's notes\n".repeat(9),
        "x".to_owned(),
    ] {
        let folder = tempdir().unwrap();
        let path = folder.path().join("baywalk.db");
        std::fs::write(&path, &text).unwrap();
        assert_eq!(
            refused(folder.path()),
            StoreFault::Damaged(Damage::NotADatabase { path: path.clone() })
        );
        assert_eq!(std::fs::read_to_string(path).unwrap(), text);
    }
}

#[test]
fn a_file_whose_first_sector_was_being_written_is_opened_by_its_log() {
    let (folder, copy) = (tempdir().unwrap(), tempdir().unwrap());
    let mut logbook = open(folder.path());
    whole_walk().play(&mut logbook);
    for name in ["baywalk.db", "baywalk.db-wal"] {
        std::fs::copy(folder.path().join(name), copy.path().join(name)).unwrap();
    }
    let path = copy.path().join("baywalk.db");
    let mut file = std::fs::read(&path).unwrap();
    file[..512].fill(0x5a);
    std::fs::write(&path, &file).unwrap();
    assert_eq!(open(copy.path()).digest(), logbook.digest());
    // With the file alone, and with a log that is none, it is refused and kept.
    std::fs::write(&path, &file).unwrap();
    for log in [&b""[..], &b"\x37\x7f\x06\x82 no log"[..]] {
        std::fs::write(copy.path().join("baywalk.db-wal"), log).unwrap();
        assert!(matches!(refused(copy.path()), StoreFault::Damaged(_)));
        assert!(std::fs::read(&path).unwrap() == file);
    }
}

#[test]
fn another_programs_database_is_refused_and_kept() {
    let folder = tempdir().unwrap();
    let path = folder.path().join("baywalk.db");
    sql(
        folder.path(),
        "CREATE TABLE theirs (a); PRAGMA user_version = 1",
    );
    let before = bytes(folder.path());
    assert_eq!(
        refused(folder.path()),
        StoreFault::NotOurs { path: path.clone() }
    );
    sql(folder.path(), "PRAGMA user_version = 0");
    assert_eq!(refused(folder.path()), StoreFault::NotOurs { path });
    assert!(bytes(folder.path()) != before);
}

#[test]
fn a_damaged_store_is_refused_or_told_and_kept() {
    let folder = tempdir().unwrap();
    whole_walk().play(&mut open(folder.path()));
    let path = folder.path().join("baywalk.db");
    let whole = std::fs::read(&path).unwrap();
    std::fs::write(&path, &whole[..whole.len() / 2]).unwrap();
    let before = bytes(folder.path());
    assert!(matches!(refused(folder.path()), StoreFault::Damaged(_)));
    assert!(bytes(folder.path()) == before);

    let mut spoiled = whole.clone();
    for page in spoiled.chunks_mut(4096).skip(1) {
        page.iter_mut().take(64).for_each(|byte| *byte ^= 0x5a);
    }
    std::fs::write(&path, &spoiled).unwrap();
    assert!(matches!(refused(folder.path()), StoreFault::Damaged(_)));
    assert!(std::fs::read(&path).unwrap() == spoiled);
}

#[test]
fn tables_that_are_not_ours_are_told() {
    let folder = tempdir().unwrap();
    drop(open(folder.path()));
    sql(folder.path(), "ALTER TABLE ledger ADD COLUMN extra TEXT");
    assert_eq!(
        refused(folder.path()),
        StoreFault::Damaged(Damage::Schema {
            table: "ledger".to_owned()
        })
    );
}

#[test]
fn an_entry_of_a_newer_program_is_told_as_such() {
    let folder = tempdir().unwrap();
    whole_walk().play(&mut open(folder.path()));
    sql(
        folder.path(),
        "UPDATE ledger SET body = replace(body, '\"version\":1', '\"version\":9') WHERE seq = 9; \
         UPDATE projected SET version = 0",
    );
    assert!(matches!(
        refused(folder.path()),
        StoreFault::TooNew(Newer::Entry {
            seq: 9,
            version: 9,
            ..
        })
    ));
}

#[test]
fn a_creation_that_was_cut_short_is_done_again() {
    let folder = tempdir().unwrap();
    std::fs::write(folder.path().join("baywalk.db"), b"").unwrap();
    drop(open(folder.path()));
    let half = tempdir().unwrap();
    sql(half.path(), "PRAGMA journal_mode = WAL; VACUUM");
    let logbook = open(half.path());
    assert_eq!(logbook.rigs().unwrap(), []);
    assert_eq!(logbook.digest().seq, 0);
}

#[test]
fn every_connection_is_set_up_for_power_cuts() {
    let folder = tempdir().unwrap();
    drop(open(folder.path()));
    let head = std::fs::read(folder.path().join("baywalk.db")).unwrap();
    assert_eq!(&head[68..72], b"bayw");
    assert_eq!(head[60..64], VERSION.to_be_bytes());
    assert_eq!(&head[18..20], &[2, 2], "write-ahead log");
    let mut logbook = open(folder.path());
    logbook.set_scratch("card", Some("F8")).unwrap();
    assert_eq!(logbook.scratch("card").unwrap().as_deref(), Some("F8"));
    logbook.set_scratch("card", None).unwrap();
    assert_eq!(logbook.scratch("card").unwrap(), None);
    let ninety = baywalk_domain::torque::Practice::new(90).unwrap();
    logbook.set_practice(ninety).unwrap();
    assert_eq!(logbook.practice().unwrap(), ninety);
    assert!(matches!(
        logbook.book(rig()),
        Err(StoreFault::NotFound("rig"))
    ));
}
