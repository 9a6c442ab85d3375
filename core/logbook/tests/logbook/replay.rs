//! The same acts again: repeated, after reopening, from the start, from the ledger.

use crate::rehearsal::LINE;
use crate::script::{TestClock, at_ac_bay, found, held, moment, open, rig, whole_walk};
use baywalk_domain::ids::ActId;
use baywalk_domain::walk::{Act, Call, Phase, WalkState};
use baywalk_logbook::{ActFault, Logbook};
use rusqlite::Connection;
use std::path::Path;
use tempfile::tempdir;

/// The stored bytes of the whole ledger.
pub(crate) fn ledger(folder: &Path) -> Vec<(i64, String, Vec<u8>)> {
    let conn = Connection::open(folder.join("baywalk.db")).unwrap();
    let mut rows = conn
        .prepare("SELECT seq, body, digest FROM ledger ORDER BY seq")
        .unwrap();
    rows.query_map([], |row| Ok((row.get(0)?, row.get(1)?, row.get(2)?)))
        .unwrap()
        .collect::<Result<_, _>>()
        .unwrap()
}

#[test]
fn an_act_sent_twice_is_recorded_once_and_says_so() {
    let folder = tempdir().unwrap();
    let mut logbook = open(folder.path());
    let script = whole_walk();
    let first: Vec<_> = script
        .calls
        .iter()
        .map(|(call, at)| logbook.call(call, at).unwrap())
        .collect();
    let head = logbook.digest();
    for ((call, at), first) in script.calls.iter().zip(first) {
        assert!(!first.repeated);
        let again = logbook.call(call, at).unwrap();
        assert!(again.repeated);
        assert_eq!(
            (again.seq, again.entry, again.changes),
            (first.seq, first.entry, first.changes)
        );
    }
    assert_eq!(logbook.digest(), head);
    let other = Call {
        act: Act::Pause,
        ..script.calls[0].0.clone()
    };
    assert_eq!(
        logbook.call(&other, &script.calls[0].1),
        Err(ActFault::NameTaken { seq: 1 })
    );
}

#[test]
fn going_on_after_any_act_gives_the_same_state_and_the_same_bytes() {
    let (straight, broken) = (tempdir().unwrap(), tempdir().unwrap());
    let script = whole_walk();
    let mut logbook = open(straight.path());
    for (call, at) in &script.calls {
        logbook.call(call, at).unwrap();
        let mut other = open(broken.path());
        other.call(call, at).unwrap();
        assert_eq!(
            logbook.open_walk(rig()).unwrap(),
            other.open_walk(rig()).unwrap()
        );
        assert_eq!(logbook.book(rig()).unwrap(), other.book(rig()).unwrap());
    }
    assert_eq!(
        logbook.fingerprint().unwrap(),
        open(broken.path()).fingerprint().unwrap()
    );
    drop(logbook);
    assert_eq!(ledger(straight.path()), ledger(broken.path()));
}

#[test]
fn what_is_in_memory_equals_the_fold_of_the_ledger_after_every_act() {
    let folder = tempdir().unwrap();
    let mut logbook = open(folder.path());
    for (call, at) in &whole_walk().calls {
        let outcome = logbook.call(call, at).unwrap();
        let Some(walk) = outcome.entry.walk else {
            continue;
        };
        let entries: Vec<_> = logbook
            .entries(walk)
            .unwrap()
            .into_iter()
            .map(|numbered| numbered.entry)
            .collect();
        let folded = WalkState::fold(&entries, &logbook.book(rig()).unwrap());
        let open = logbook.open_walk(rig()).unwrap();
        match folded.unwrap() {
            ended if ended.phase == Phase::Ended => assert_eq!(open, None),
            folded => assert_eq!(open, Some(folded)),
        }
    }
}

#[test]
fn two_replays_give_the_same_ledger_byte_for_byte() {
    let (one, two) = (tempdir().unwrap(), tempdir().unwrap());
    for folder in [&one, &two] {
        whole_walk().play(&mut open(folder.path()));
    }
    let ledger = ledger(one.path());
    assert_eq!(ledger, self::ledger(two.path()));
    assert!(ledger.len() > 60);
    for (_, body, _) in ledger {
        let value: serde_json::Value = serde_json::from_str(&body).unwrap();
        assert_eq!(
            serde_json_canonicalizer::to_string(&value).unwrap(),
            body,
            "not canonical"
        );
    }
}

#[test]
fn rebuilt_tables_equal_those_kept_after_every_act() {
    let folder = tempdir().unwrap();
    let mut logbook = open(folder.path());
    for (n, (call, at)) in whole_walk().calls.iter().enumerate() {
        logbook.call(call, at).unwrap();
        if n % 7 == 0 || matches!(call.act, Act::Strike { .. } | Act::End(_)) {
            let kept = logbook.fingerprint().unwrap();
            logbook.rebuild().unwrap();
            assert_eq!(logbook.fingerprint().unwrap(), kept, "after act {n}");
        }
    }
}

#[test]
fn tables_of_another_version_are_rebuilt_at_opening() {
    let folder = tempdir().unwrap();
    let mut logbook = open(folder.path());
    whole_walk().play(&mut logbook);
    let kept = logbook.fingerprint().unwrap();
    drop(logbook);
    let conn = Connection::open(folder.path().join("baywalk.db")).unwrap();
    conn.execute_batch(
        "UPDATE projected SET version = 0; DROP TABLE past; CREATE TABLE of_old (a INTEGER);",
    )
    .unwrap();
    drop(conn);
    let logbook = open(folder.path());
    assert_eq!(logbook.fingerprint().unwrap(), kept);
}

#[test]
fn a_replayed_act_may_not_be_earlier_than_the_newest_and_a_live_one_is_flagged() {
    let folder = tempdir().unwrap();
    let script = at_ac_bay();
    let clock = TestClock {
        off: -3600,
        ..TestClock::default()
    };
    let mut logbook = Logbook::open(folder.path(), Box::new(clock)).unwrap();
    script.play(&mut logbook);
    let newest = script.calls.last().unwrap().1.clone();
    let early = Call {
        id: ActId::new(crate::rehearsal::id(77)),
        rig: rig(),
        act: Act::Pause,
    };
    assert_eq!(
        logbook.call(&early, &moment(0)),
        Err(ActFault::Earlier {
            found: Box::new(moment(0)),
            newest: Box::new(newest)
        })
    );
    let outcome = logbook.act(rig(), Act::Pause).unwrap();
    assert!(outcome.entry.flags.clock_back);
    assert!(outcome.entry.flags.lapse.is_some());
}

#[test]
fn a_clock_that_jumped_locks_what_was_proved() {
    let folder = tempdir().unwrap();
    let mut logbook = open(folder.path());
    let mut script = at_ac_bay();
    script.play(&mut logbook);
    script.calls.clear();
    script.from = 10_000;
    script.add(found(LINE, held()));
    let (call, at) = script.calls.pop().unwrap();
    script.play(&mut logbook);
    assert!(matches!(
        logbook.call(&call, &at),
        Err(ActFault::Refused(_))
    ));
}
