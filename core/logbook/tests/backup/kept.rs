//! Recovery of a damaged logbook.

use crate::script::{open, rig};
use crate::store::{Place, clock, on};
use baywalk_domain::isolation::Lapse;
use baywalk_domain::walk::{Act, Recovery, Span};
use baywalk_logbook::ledger::Head;
use baywalk_logbook::recover::{RecoverFault, Recovered, Wish, recover};
use rusqlite::Connection;
use std::path::Path;

fn change(folder: &Path, sql: &str) {
    let conn = Connection::open(folder.join("baywalk.db")).unwrap();
    conn.execute_batch(sql).unwrap();
}

fn recovered(place: &Place, backup: Option<&str>) -> Result<Recovered, RecoverFault> {
    let (folder, backup) = (place.at("one"), backup.map(|name| place.at(name)));
    let wish = Wish {
        folder: &folder,
        backup: backup.as_deref(),
        passphrase: None,
    };
    recover(&wish, clock(), &mut on)
}

fn damaged(sql: &str) -> (Place, Head) {
    let place = Place::new();
    let logbook = place.store("one", true);
    place.backup(&logbook, "one.zip", None);
    let head = logbook.digest();
    drop(logbook);
    change(&place.at("one"), sql);
    (place, head)
}

#[test]
fn entries_around_a_damaged_one_are_kept_and_it_is_named() {
    let (place, head) =
        damaged("UPDATE ledger SET body = replace(body, '2027', '2026') WHERE seq = 20");
    let before = std::fs::read(place.at("one/baywalk.db")).unwrap();
    let recovered = recovered(&place, None).unwrap();
    let Recovery {
        whole_to,
        reached,
        missing,
        sealed_anew,
    } = &recovered.recovery;
    assert_eq!((whole_to.seq, *reached), (19, head.seq));
    assert_eq!(missing, &[Span { from: 20, to: 20 }]);
    assert_eq!(*sealed_anew, head.seq - 20);
    assert!(recovered.photos_missing.is_empty());
    let logbook = recovered.logbook;
    assert_eq!(logbook.verify().unwrap().broken, None);
    // What tells of it, the later entries, and the lapse of the open walk.
    assert_eq!(logbook.digest().seq, 19 + 1 + (head.seq - 20) + 1);
    let origins = logbook.origins().unwrap();
    assert_eq!((origins.len(), origins[0].seq), (1, 20));
    assert!(matches!(origins[0].entry.act, Act::Recovered(_)));
    let walk = logbook.open_walk(rig()).unwrap().unwrap();
    assert!(
        walk.bays
            .values()
            .flat_map(|work| &work.proofs)
            .all(|proof| proof.lapsed.is_some())
    );
    let last = logbook.entries(walk.id).unwrap().pop().unwrap();
    assert_eq!(last.entry.flags.lapse, Some(Lapse::Restored));
    let kept = recovered.kept.unwrap();
    assert!(
        std::fs::read(kept.join("baywalk.db")).unwrap() == before,
        "kept untouched"
    );
}

#[test]
fn a_backup_fills_the_gap_and_the_chain_goes_on() {
    let (place, head) = damaged("DELETE FROM ledger WHERE seq BETWEEN 5 AND 30");
    let recovered = recovered(&place, Some("one.zip")).unwrap();
    assert_eq!(recovered.recovery.whole_to, head.mark());
    assert_eq!(recovered.recovery.missing, []);
    assert_eq!(recovered.logbook.digest().seq, head.seq + 2);
}

#[test]
fn what_lost_what_it_rests_on_is_told_as_missing() {
    let (place, head) = damaged("DELETE FROM ledger WHERE seq = 1");
    let refused = recovered(&place, None).unwrap_err();
    assert_eq!(refused, RecoverFault::Nothing, "no rig, no walk");
    assert!(place.names().contains(&"one".to_owned()));
    let (place, _) = damaged("DELETE FROM ledger WHERE seq = 3");
    let recovered = recovered(&place, None).unwrap();
    let gone: u64 = recovered
        .recovery
        .missing
        .iter()
        .map(|gap| gap.to + 1 - gap.from)
        .sum();
    assert_eq!(gone + recovered.recovery.sealed_anew + 2, head.seq);
    assert!(
        recovered.recovery.missing[0].to > 50,
        "the walk whose start is gone"
    );
    assert_eq!(recovered.logbook.walks(rig()).unwrap().len(), 1);
}

#[test]
fn a_tail_that_is_gone_is_named() {
    let (place, head) = damaged("DELETE FROM ledger WHERE seq > 100");
    let recovered = recovered(&place, None).unwrap();
    assert_eq!(
        recovered.recovery.missing,
        [Span {
            from: 101,
            to: head.seq
        }]
    );
    assert_eq!(recovered.recovery.whole_to.seq, 100);
}

#[test]
fn a_file_that_was_cut_or_spoiled_gives_what_can_be_read_or_says_that_nothing_can() {
    let place = Place::new();
    let logbook = place.store("one", false);
    place.backup(&logbook, "one.zip", None);
    let fingerprint = logbook.fingerprint().unwrap();
    drop(logbook);
    let path = place.at("one/baywalk.db");
    let whole = std::fs::read(&path).unwrap();
    let pages = whole.len() / 4096;
    let mut partly = 0;
    for page in 0..pages {
        let mut spoiled = whole.clone();
        spoiled[page * 4096..(page + 1) * 4096]
            .iter_mut()
            .for_each(|byte| *byte ^= 0x5a);
        std::fs::write(&path, &spoiled).unwrap();
        match recovered(&place, None) {
            Ok(recovered) => {
                partly += 1;
                assert_eq!(
                    recovered.logbook.verify().unwrap().broken,
                    None,
                    "page {page}"
                );
            }
            Err(RecoverFault::Nothing | RecoverFault::Whole) => {}
            Err(RecoverFault::Store(fault)) => assert!(page == 0, "page {page}: {fault}"),
            Err(fault) => panic!("page {page}: {fault}"),
        }
        std::fs::remove_dir_all(place.at("one")).unwrap();
        drop(place.restore("one.zip", "one", true));
        std::fs::write(&path, &whole).unwrap();
    }
    assert!(partly > pages / 2, "{partly} of {pages}");
    // With a backup, everything comes back whatever page is gone.
    for page in [1, pages / 2, pages - 1] {
        let mut spoiled = whole.clone();
        spoiled.truncate(page * 4096);
        std::fs::write(&path, &spoiled).unwrap();
        let recovered = recovered(&place, Some("one.zip")).unwrap();
        assert_eq!(recovered.logbook.fingerprint().unwrap(), fingerprint);
        assert_eq!(recovered.recovery.missing, []);
        drop(recovered);
        std::fs::write(&path, &whole).unwrap();
    }
}

#[test]
fn what_is_whole_is_left_alone() {
    let place = Place::new();
    drop(place.store("one", false));
    assert_eq!(recovered(&place, None).unwrap_err(), RecoverFault::Whole);
    assert_eq!(place.names(), ["one"]);
    drop(open(&place.at("one")));
}
