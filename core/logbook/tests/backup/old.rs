//! Frozen stores of every version: each is opened for ever, with all that was in it.

use crate::store::{Place, clock, copy, frozen};
use baywalk_logbook::Logbook;
use baywalk_logbook::ledger::current;
use baywalk_logbook::store::{Newer, StoreFault, VERSION};
use rusqlite::Connection;
use std::collections::BTreeMap;
use std::path::Path;

type Rows = Vec<(i64, String, Vec<u8>)>;

fn ledger(folder: &Path) -> Rows {
    let conn = Connection::open(folder.join("baywalk.db")).unwrap();
    let mut rows = conn
        .prepare("SELECT seq, body, digest FROM ledger ORDER BY seq")
        .unwrap();
    rows.query_map([], |row| Ok((row.get(0)?, row.get(1)?, row.get(2)?)))
        .unwrap()
        .collect::<Result<_, _>>()
        .unwrap()
}

fn schema(folder: &Path) -> Vec<(String, Option<String>)> {
    let conn = Connection::open(folder.join("baywalk.db")).unwrap();
    let mut rows = conn
        .prepare("SELECT name, sql FROM sqlite_schema ORDER BY name")
        .unwrap();
    rows.query_map([], |row| Ok((row.get(0)?, row.get(1)?)))
        .unwrap()
        .collect::<Result<_, _>>()
        .unwrap()
}

fn version(folder: &Path) -> u32 {
    let head = std::fs::read(folder.join("baywalk.db")).unwrap();
    u32::from_be_bytes(head[60..64].try_into().unwrap())
}

/// What each frozen store held when it was frozen: version, entries, newest digest; and the digest over
/// all tables computed from it, in their present form.
const FROZEN: [(u32, u64, &str, &str); 3] = [
    (
        1,
        112,
        "bd8c7a3cadfe1897866413b3c2a41cca456680d93fff4b30be6da824a03c123b",
        "b54519380d1cd05c0496624bc2e0b25205e729d9892574b343f59b1b3d82568c",
    ),
    (
        2,
        113,
        "cfa98c02d666bdf03ee443991bb0a3c1b6d30332a30231b2aeab6d592e796c6f",
        "71e70881f63ae534bb93e73a80f3848777a23cb691299656a6d10c6fa31ba3c7",
    ),
    (
        3,
        125,
        "f835c5229f333d9213d37d097f4cf28e58c5a07feb3829e808ca5f7664c7790b",
        "6521b1d1863455091747d596845b597fa8b3f3e90cffe9f014146e46055033c2",
    ),
];

/// The kinds that came in with version 3.
const NEWEST: [&str; 5] = ["follow", "leave_plan", "put_off", "rule", "usage"];

#[test]
fn a_store_of_every_version_is_opened_with_every_entry_and_the_schema_of_a_fresh_one() {
    let place = Place::new();
    drop(crate::script::open(&place.at("fresh")));
    for (old, entries, head, tables) in FROZEN {
        let folder = place.at(&format!("old-{old}"));
        copy(&frozen(old), &folder);
        assert_eq!(version(&folder), old);
        let before = ledger(&folder);
        let logbook = crate::script::open(&folder);
        let now = logbook.digest();
        assert_eq!((now.seq, now.digest.to_string().as_str()), (entries, head));
        let verified = logbook.verify().unwrap();
        assert_eq!((verified.entries, verified.broken), (entries, None));
        assert_eq!(logbook.fingerprint().unwrap().to_string(), tables);
        assert!(logbook.open_walk(crate::script::rig()).unwrap().is_some());
        place.backup(&logbook, &format!("old-{old}.zip"), None);
        drop(logbook);
        assert_eq!(ledger(&folder), before);
        assert_eq!(schema(&folder), schema(&place.at("fresh")));
        assert_eq!(version(&folder), VERSION);
    }
}

#[test]
fn there_is_a_frozen_store_of_every_version() {
    let frozen: Vec<u32> = FROZEN.iter().map(|(version, ..)| *version).collect();
    assert_eq!(frozen, (1..=VERSION).collect::<Vec<_>>());
}

/// The kinds in a store, each with the number of its first entry.
fn kinds(folder: &Path) -> BTreeMap<String, i64> {
    let mut kinds = BTreeMap::new();
    for (seq, body, _) in ledger(folder) {
        let body: serde_json::Value = serde_json::from_str(&body).unwrap();
        let kind = body["kind"].as_str().unwrap().to_owned();
        kinds.entry(kind).or_insert(seq);
    }
    kinds
}

#[test]
fn a_newer_version_of_any_kind_is_told_and_left_as_it_is() {
    let place = Place::new();
    let kinds = kinds(&frozen(VERSION));
    assert!(
        NEWEST.iter().all(|kind| kinds.contains_key(*kind)),
        "{kinds:?}"
    );
    for (kind, seq) in kinds {
        let folder = place.at(&kind);
        copy(&frozen(VERSION), &folder);
        let version = current(&kind).unwrap();
        let conn = Connection::open(folder.join("baywalk.db")).unwrap();
        let newer = format!(
            "UPDATE ledger SET body = replace(body, '\"version\":{version}', '\"version\":{}') WHERE seq = {seq}; \
             UPDATE projected SET version = 0",
            version + 1
        );
        conn.execute_batch(&newer).unwrap();
        drop(conn);
        let before = ledger(&folder);
        let told = Logbook::open(&folder, clock()).unwrap_err();
        let expected = Newer::Entry {
            seq: u64::try_from(seq).unwrap(),
            kind: kind.clone(),
            version: u64::from(version) + 1,
        };
        assert_eq!(told, StoreFault::TooNew(expected));
        assert_eq!(ledger(&folder), before, "{kind}");
    }
}
