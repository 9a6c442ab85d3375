//! Every field of a row that is changed behind the logbook's back is told, with its entry.

use crate::script::{open, whole_walk};
use baywalk_logbook::ledger::MisfitWhy;
use baywalk_logbook::store::{Damage, StoreFault};
use rusqlite::Connection;
use std::path::Path;
use tempfile::tempdir;

fn change(folder: &Path, sql: &str) {
    let conn = Connection::open(folder.join("baywalk.db")).unwrap();
    let changed = conn.execute(sql, []).unwrap();
    assert!(changed > 0, "{sql}");
}

#[test]
fn every_field_that_is_changed_is_told_with_its_entry() {
    let changes = [
        ("seq = 5000", 20),
        ("id = 'ffffffff-0000-4000-8000-000000000000'", 20),
        ("rig = 'ffffffff-0000-4000-8000-000000000000'", 20),
        ("walk = NULL", 20),
        ("kind = 'pause'", 20),
        ("version = 2", 20),
        ("body = replace(body, '2027', '2026')", 20),
        ("body = body || ' '", 20),
        ("body = ''", 20),
        ("digest = zeroblob(32)", 20),
    ];
    for (set, entry) in changes {
        let folder = tempdir().unwrap();
        whole_walk().play(&mut open(folder.path()));
        let logbook = open(folder.path());
        assert_eq!(logbook.verify().unwrap().broken, None);
        change(
            folder.path(),
            &format!("UPDATE ledger SET {set} WHERE seq = {entry}"),
        );
        let verified = logbook.verify().unwrap();
        let broken = verified.broken.unwrap();
        assert_eq!((broken.seq, verified.entries), (entry, entry - 1), "{set}");
    }
}

#[test]
fn entries_taken_out_are_told() {
    let folder = tempdir().unwrap();
    whole_walk().play(&mut open(folder.path()));
    let logbook = open(folder.path());
    change(folder.path(), "DELETE FROM ledger WHERE seq = 7");
    let broken = logbook.verify().unwrap().broken.unwrap();
    assert_eq!(
        (broken.seq, broken.why),
        (7, MisfitWhy::Number { found: 8 })
    );
}

#[test]
fn a_tail_that_is_cut_off_is_told_and_the_store_not_opened_over_it() {
    let folder = tempdir().unwrap();
    whole_walk().play(&mut open(folder.path()));
    let logbook = open(folder.path());
    let last = logbook.digest().seq;
    change(
        folder.path(),
        &format!("DELETE FROM ledger WHERE seq > {}", last - 3),
    );
    let broken = logbook.verify().unwrap().broken.unwrap();
    assert_eq!(
        (broken.seq, broken.why),
        (last - 2, MisfitWhy::Gone { until: last })
    );
    drop(logbook);
    let clock = Box::new(crate::script::TestClock::default());
    let refused = baywalk_logbook::Logbook::open(folder.path(), clock);
    assert_eq!(
        refused.err(),
        Some(StoreFault::Damaged(Damage::TailGone {
            found: last - 3,
            expected: last
        }))
    );
}
