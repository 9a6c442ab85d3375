//! A backup holds the whole logbook, and a restore gives it back.

use crate::script::rig;
use crate::store::{Place, clock, on};
use baywalk_domain::isolation::Lapse;
use baywalk_domain::walk::Act;
use baywalk_logbook::backup::{
    ArchiveFault, BackupFault, Go, Passphrase, Relation, RestoreFault, Wish, check, plan, restore,
};
use baywalk_logbook::store::StoreFault;

#[test]
fn a_restore_elsewhere_gives_an_equal_logbook_that_tells_where_it_comes_from() {
    let place = Place::new();
    let logbook = place.store("one", false);
    let made = place.backup(&logbook, "one.zip", None);
    assert_eq!(
        (made.head, made.photos, made.missing.len()),
        (logbook.digest(), 1, 0)
    );
    let mut restored = place.restore("one.zip", "two", false).logbook;
    assert_eq!(
        restored.fingerprint().unwrap(),
        logbook.fingerprint().unwrap()
    );
    assert_eq!(restored.verify().unwrap().broken, None);
    let told = restored.origins().unwrap();
    let expected = Act::FromBackup {
        backup: logbook.digest().mark(),
        replaced: None,
    };
    assert_eq!(told.len(), 1);
    assert_eq!(
        (told[0].seq, &told[0].entry.act),
        (made.head.seq + 1, &expected)
    );
    let photos = std::fs::read_dir(place.at("two/photos")).unwrap().count();
    assert_eq!(photos, 1);
    assert_eq!(restored.since_backup().unwrap().entries, 0);
    let kept = restored.fingerprint().unwrap();
    restored.rebuild().unwrap();
    assert_eq!(restored.fingerprint().unwrap(), kept);
    assert_eq!(place.names(), ["one", "one.zip", "two"]);
}

#[test]
fn an_open_walk_needs_a_new_proof_after_a_restore() {
    let place = Place::new();
    let logbook = place.store("one", true);
    place.backup(&logbook, "one.zip", None);
    let before = logbook.open_walk(rig()).unwrap().unwrap();
    let standing = |walk: &baywalk_domain::walk::WalkState| {
        let proofs = walk.bays.values().flat_map(|work| &work.proofs);
        proofs.filter(|proof| proof.lapsed.is_none()).count()
    };
    assert!(standing(&before) > 0);
    let restored = place.restore("one.zip", "two", false).logbook;
    let walk = restored.open_walk(rig()).unwrap().unwrap();
    assert_eq!(standing(&walk), 0);
    assert_eq!(
        walk.standing, before.standing,
        "undo does not strike the restore"
    );
    let last = restored.entries(walk.id).unwrap().pop().unwrap();
    assert_eq!(last.entry.flags.lapse, Some(Lapse::Restored));
    assert_eq!(
        restored.fingerprint().unwrap(),
        logbook.fingerprint().unwrap()
    );
}

#[test]
fn a_passphrase_opens_it_and_no_other_does() {
    let place = Place::new();
    let logbook = place.store("one", false);
    place.backup(&logbook, "one.age", Some("four tired owls"));
    let open = |text: Option<&str>| {
        let secret = text.map(|text| Passphrase::new(text).unwrap());
        check(&place.at("one.age"), secret.as_ref(), &mut on)
            .map(|archive| archive.manifest.entries)
    };
    assert_eq!(open(Some("four tired owls")), Ok(logbook.digest().seq));
    assert_eq!(
        open(Some("four tired owl")),
        Err(ArchiveFault::WrongPassphrase)
    );
    assert_eq!(open(None), Err(ArchiveFault::NeedsPassphrase));
    let bytes = std::fs::read(place.at("one.age")).unwrap();
    let text = String::from_utf8_lossy(&bytes).into_owned();
    assert!(text.starts_with("age-encryption.org/v1\n-> scrypt "));
    assert!(
        text.lines().nth(1).unwrap().ends_with(" 16"),
        "the fixed work factor"
    );
    assert!(!text.contains("ledger"));
}

#[test]
fn what_is_there_is_replaced_only_when_said_and_is_told_and_kept() {
    let place = Place::new();
    let mut logbook = place.store("one", false);
    place.backup(&logbook, "one.zip", None);
    let (head, before) = (logbook.digest(), logbook.fingerprint().unwrap());
    let other = place.store("other", true);
    place.backup(&other, "ahead.zip", None);
    drop(other);
    logbook.note_backup(head).unwrap();
    drop(logbook);
    let plan_of = |name: &str| {
        let (folder, from) = (place.at("one"), place.at(name));
        let wish = Wish {
            folder: &folder,
            from: &from,
            passphrase: None,
            replace: false,
        };
        plan(&wish, &mut on).unwrap().1.unwrap()
    };
    assert_eq!(plan_of("one.zip").relation, Relation::Same);
    let ahead = plan_of("ahead.zip");
    assert!(matches!(ahead.relation, Relation::Newer { more } if more > 10));
    assert_eq!((ahead.contents.rigs, ahead.contents.walks), (1, 1));

    let (folder, from) = (place.at("one"), place.at("ahead.zip"));
    let wish = Wish {
        folder: &folder,
        from: &from,
        passphrase: None,
        replace: false,
    };
    let refused = restore(&wish, clock(), &mut on).unwrap_err();
    assert!(matches!(refused, RestoreFault::WouldReplace(_)));
    assert_eq!(crate::script::open(&folder).fingerprint().unwrap(), before);

    let restored = place.restore("ahead.zip", "one", true);
    let told = restored.logbook.origins().unwrap();
    assert!(matches!(&told[0].entry.act,
        Act::FromBackup { replaced: Some(mark), .. } if *mark == head.mark()));
    let kept = restored.kept.unwrap();
    assert_eq!(crate::script::open(&kept).fingerprint().unwrap(), before);
    drop(restored.logbook);
    assert!(matches!(plan_of("one.zip").relation, Relation::Older { lost } if lost > 10));
}

#[test]
fn logbooks_that_went_apart_are_told_and_not_joined() {
    let place = Place::new();
    let mut one = place.store("one", false);
    let two = place.store("two", true);
    one.act(
        rig(),
        Act::Odometer(
            baywalk_domain::units::Stated::parse(
                "41300",
                baywalk_domain::units::DistanceUnit::Miles,
            )
            .unwrap(),
        ),
    )
    .unwrap();
    place.backup(&one, "one.zip", None);
    drop(two);
    let (folder, from) = (place.at("two"), place.at("one.zip"));
    let wish = Wish {
        folder: &folder,
        from: &from,
        passphrase: None,
        replace: false,
    };
    let Err(RestoreFault::WouldReplace(present)) = restore(&wish, clock(), &mut on) else {
        panic!("replaced unasked");
    };
    assert_eq!(
        present.relation,
        Relation::Apart {
            common: one.digest().seq - 1,
            lost: present.head.unwrap().seq + 1 - one.digest().seq
        }
    );
}

#[test]
fn a_running_logbook_is_backed_up_as_it_stood() {
    let place = Place::new();
    let mut logbook = place.store("one", false);
    let (head, job) = (logbook.digest(), logbook.backup().unwrap());
    for miles in ["41300", "41400", "41500"] {
        let miles =
            baywalk_domain::units::Stated::parse(miles, baywalk_domain::units::DistanceUnit::Miles);
        logbook.act(rig(), Act::Odometer(miles.unwrap())).unwrap();
    }
    let made = job.write(&place.at("one.zip"), None, &mut on).unwrap();
    assert_eq!(made.head, head);
    let archive = check(&place.at("one.zip"), None, &mut on).unwrap();
    assert_eq!(archive.manifest.entries, head.seq);
    logbook.note_backup(made.head).unwrap();
    assert_eq!(logbook.since_backup().unwrap().entries, 3);
}

#[test]
fn a_stopped_backup_or_restore_leaves_nothing() {
    let place = Place::new();
    let logbook = place.store("one", false);
    let mut calls = 0;
    let made = logbook
        .backup()
        .unwrap()
        .write(&place.at("all.zip"), None, &mut |_| {
            calls += 1;
            Go::On
        });
    made.unwrap();
    for stop in 1..=calls {
        let mut left = stop;
        let mut watch = |_| {
            left -= 1;
            if left == 0 { Go::Stop } else { Go::On }
        };
        let stopped = logbook
            .backup()
            .unwrap()
            .write(&place.at("some.zip"), None, &mut watch);
        assert_eq!(stopped.unwrap_err(), BackupFault::Stopped);
        assert_eq!(place.names(), ["all.zip", "one"]);
    }
    let (folder, from) = (place.at("two"), place.at("all.zip"));
    let wish = Wish {
        folder: &folder,
        from: &from,
        passphrase: None,
        replace: false,
    };
    for stop in 1..6 {
        let mut left = stop;
        let mut watch = |_| {
            left -= 1;
            if left == 0 { Go::Stop } else { Go::On }
        };
        if restore(&wish, clock(), &mut watch).is_err() {
            assert_eq!(place.names(), ["all.zip", "one"]);
        }
    }
}

#[test]
fn a_file_that_is_there_is_not_written_over_and_an_open_logbook_is_not_replaced() {
    let place = Place::new();
    let logbook = place.store("one", false);
    place.backup(&logbook, "one.zip", None);
    let again = logbook
        .backup()
        .unwrap()
        .write(&place.at("one.zip"), None, &mut on);
    assert_eq!(again.unwrap_err(), BackupFault::Exists(place.at("one.zip")));
    let (folder, from) = (place.at("one"), place.at("one.zip"));
    let wish = Wish {
        folder: &folder,
        from: &from,
        passphrase: None,
        replace: true,
    };
    let refused = restore(&wish, clock(), &mut on).unwrap_err();
    assert!(matches!(
        refused,
        RestoreFault::Store(StoreFault::Held { .. })
    ));
}

#[test]
fn a_photo_that_is_gone_or_damaged_is_told_and_the_rest_is_backed_up() {
    let place = Place::new();
    let logbook = place.store("one", false);
    let photo = std::fs::read_dir(place.at("one/photos"))
        .unwrap()
        .next()
        .unwrap()
        .unwrap()
        .path();
    std::fs::write(&photo, b"rotten").unwrap();
    let made = place.backup(&logbook, "one.zip", None);
    assert_eq!((made.photos, made.missing.len()), (0, 1));
    let archive = check(&place.at("one.zip"), None, &mut on).unwrap();
    assert_eq!(archive.manifest.missing, made.missing);
}
