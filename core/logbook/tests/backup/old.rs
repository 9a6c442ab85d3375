//! Frozen stores of every version: each is opened for ever, with all that was in it.

use crate::store::{Place, copy, frozen};
use baywalk_logbook::store::VERSION;
use rusqlite::Connection;
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
const FROZEN: [(u32, u64, &str, &str); 1] = [(
    1,
    112,
    "bd8c7a3cadfe1897866413b3c2a41cca456680d93fff4b30be6da824a03c123b",
    "e5252e32494a97056e9e4eb190cf26527f86f39a1b67b7690d408e01ecd59ad0",
)];

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
fn there_is_a_frozen_store_of_every_older_version() {
    let frozen: Vec<u32> = FROZEN.iter().map(|(version, ..)| *version).collect();
    assert_eq!(frozen, (1..VERSION).collect::<Vec<_>>());
}
