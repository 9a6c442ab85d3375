//! Photos in the logbook: kept, expected of a camera, held against the ledger.

use crate::rehearsal::CLAMP;
use crate::script::{at_ac_bay, open, point, rig};
use baywalk_domain::finding::About;
use baywalk_domain::walk::Act;
use baywalk_logbook::Logbook;
use baywalk_logbook::photo::{Came, Foreign, MissingWhy, PhotoFault, StrayWhy};
use baywalk_logbook::store::StoreFault;
use std::path::Path;
use tempfile::tempdir;

/// A JPEG of 64 by 48 pixels that says where it was taken; see `tests/photos/README.md`.
const JPEG: &[u8] = include_bytes!("../photos/located.jpg");

fn walking(folder: &Path) -> Logbook {
    let mut logbook = open(&folder.join("store"));
    at_ac_bay().play(&mut logbook);
    logbook
}

fn names(folder: &Path) -> Vec<String> {
    let all = std::fs::read_dir(folder).unwrap().map(Result::unwrap);
    let files = all.filter(|entry| entry.path().is_file());
    files
        .map(|entry| entry.file_name().into_string().unwrap())
        .collect()
}

#[test]
fn a_photo_is_kept_under_its_digest_and_what_is_none_is_refused() {
    let folder = tempdir().unwrap();
    let mut logbook = open(folder.path());
    let from = folder.path().join("camera");
    std::fs::write(&from, JPEG).unwrap();
    let digest = logbook.add_photo(&from).unwrap();
    assert_eq!(logbook.add_photo(&from).unwrap(), digest);
    let photos = folder.path().join("photos");
    assert_eq!(names(&photos), [format!("{digest}.jpg")]);
    assert_eq!(names(&photos.join("small")), [format!("{digest}.jpg")]);
    assert_eq!(
        logbook.photo(&digest.to_string()),
        Some(photos.join(format!("{digest}.jpg")))
    );
    assert!(!photos.join("originals").exists());
    std::fs::write(&from, b"GIF89a").unwrap();
    let found = Foreign::Gif;
    assert_eq!(
        logbook.add_photo(&from),
        Err(StoreFault::Photo(PhotoFault::Foreign { found }))
    );
    assert!(matches!(
        logbook.add_photo(&folder.path().join("none")),
        Err(StoreFault::File { .. })
    ));
    let huge = std::fs::File::create(&from).unwrap();
    huge.set_len(1 << 40).unwrap();
    assert!(matches!(
        logbook.add_photo(&from),
        Err(StoreFault::Photo(PhotoFault::TooLarge { .. }))
    ));
    assert_eq!(names(&photos).len(), 1);
}

#[test]
fn an_expected_photo_is_entered_once_however_often_it_is_looked_for() {
    let folder = tempdir().unwrap();
    let mut logbook = walking(folder.path());
    let camera = folder.path().join("store").join("camera.jpg");
    let about = About::Point(point(CLAMP));
    logbook.photo_expected(rig(), about, &camera).unwrap();
    std::fs::write(&camera, JPEG).unwrap();
    let noted = logbook.scratch("photos_expected").unwrap().unwrap();
    assert!(
        noted.contains("\"camera.jpg\""),
        "told from the store on: {noted}"
    );
    let before = logbook.digest().seq;
    let arrived = logbook.photos_arrived().unwrap();
    let seq = before + 1;
    assert_eq!(arrived[0].came, Came::Entered { seq });
    assert_eq!((arrived[0].about, arrived[0].rig), (about, rig()));
    assert_eq!(logbook.photos_arrived().unwrap(), []);
    assert_eq!(logbook.digest().seq, seq);

    // The end came between the entry and the note of it.
    logbook
        .set_scratch("photos_expected", Some(&noted))
        .unwrap();
    assert_eq!(
        logbook.photos_arrived().unwrap()[0].came,
        Came::Entered { seq }
    );
    assert_eq!(logbook.digest().seq, seq);
    let entry = logbook
        .entries(logbook.open_walk(rig()).unwrap().unwrap().id)
        .unwrap();
    let Act::Photo { digest, .. } = &entry.last().unwrap().entry.act else {
        panic!("{entry:?}")
    };
    assert!(logbook.photo(digest).is_some());
}

#[test]
fn an_expected_photo_that_the_rules_refuse_stays_expected() {
    let folder = tempdir().unwrap();
    let mut logbook = open(folder.path());
    let camera = folder.path().join("camera.jpg");
    std::fs::write(&camera, JPEG).unwrap();
    logbook.photo_expected(rig(), About::Rig, &camera).unwrap();
    for _ in 0..2 {
        let came = logbook.photos_arrived().unwrap().swap_remove(0).came;
        assert!(matches!(came, Came::NotTaken(_)), "{came:?}");
    }
    assert!(camera.exists());
    logbook.photo_not_expected(&camera).unwrap();
    assert_eq!(logbook.photos_arrived().unwrap(), []);
    logbook
        .set_scratch("photos_expected", Some("not JSON"))
        .unwrap();
    assert_eq!(logbook.photos_arrived().unwrap(), []);
}

#[test]
fn photos_of_an_older_form_are_read_and_get_thumbnails() {
    let folder = tempdir().unwrap();
    let mut logbook = walking(folder.path());
    // Older stores kept the bytes of a camera under their digest.
    let digest = baywalk_logbook::ledger::Digest::of(JPEG).to_string();
    let photos = folder.path().join("store/photos");
    std::fs::write(photos.join(format!("{digest}.jpg")), JPEG).unwrap();
    let act = Act::Photo {
        about: About::Rig,
        digest: digest.clone(),
        caption: String::new(),
    };
    logbook.act(rig(), act).unwrap();
    let check = logbook.check_photos().unwrap();
    assert_eq!(
        (check.entered, check.missing, check.strays),
        (1, vec![], vec![])
    );
    let small = logbook.thumbnail(&digest).unwrap();
    assert!(std::fs::read(small).unwrap().starts_with(b"\xFF\xD8"));
    assert_eq!(logbook.make_thumbnails().unwrap(), (1, vec![]));
    assert!(matches!(
        logbook.thumbnail(&"ab".repeat(32)),
        Err(StoreFault::NotFound("photo"))
    ));
}

#[test]
fn a_photo_kept_and_not_entered_is_a_stray_and_a_struck_one_is_none() {
    let folder = tempdir().unwrap();
    let mut logbook = walking(folder.path());
    let camera = folder.path().join("camera.jpg");
    std::fs::write(&camera, JPEG).unwrap();
    logbook.set_keeps_originals(true).unwrap();
    let digest = logbook.add_photo(&camera).unwrap().to_string();
    let strays = logbook.check_photos().unwrap().strays;
    assert_eq!(strays.len(), 3, "master, thumbnail, original: {strays:?}");
    assert!(strays.iter().all(|stray| stray.why == StrayWhy::NotEntered));
    let photo = Act::Photo {
        about: About::Rig,
        digest: digest.clone(),
        caption: String::new(),
    };
    let act = logbook.act(rig(), photo).unwrap().entry.id;
    logbook.act(rig(), Act::Strike { act }).unwrap();
    assert_eq!(logbook.check_photos().unwrap().strays, []);
    assert_eq!(logbook.remove_strays().unwrap(), []);

    let original = folder.path().join("store/photos/originals");
    let original = original.join(&names(&original)[0]);
    std::fs::write(&original, "changed").unwrap();
    let why = |logbook: &Logbook| logbook.check_photos().unwrap().missing[0].why;
    assert_eq!(why(&logbook), MissingWhy::OriginalChanged);
    let master = logbook.photo(&digest).unwrap();
    std::fs::write(&master, "changed").unwrap();
    assert_eq!(why(&logbook), MissingWhy::Changed);
    std::fs::remove_file(&master).unwrap();
    assert_eq!(why(&logbook), MissingWhy::Gone);
    assert_eq!(logbook.make_thumbnails().unwrap(), (0, vec![digest]));
}
