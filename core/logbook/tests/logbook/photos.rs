//! Photos taken in.

use crate::script::open;
use baywalk_logbook::store::{PhotoFault, StoreFault};
use tempfile::tempdir;

#[test]
fn a_photo_is_kept_under_its_digest_and_what_is_none_is_refused() {
    let folder = tempdir().unwrap();
    let mut logbook = open(folder.path());
    let from = folder.path().join("camera");
    std::fs::write(&from, b"\xff\xd8\xff\xe0 a photo").unwrap();
    let digest = logbook.add_photo(&from).unwrap();
    assert_eq!(logbook.add_photo(&from).unwrap(), digest);
    let kept: Vec<_> = std::fs::read_dir(folder.path().join("photos"))
        .unwrap()
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .collect();
    assert_eq!(kept, [format!("{digest}.jpg")]);
    std::fs::write(&from, b"GIF89a").unwrap();
    assert_eq!(
        logbook.add_photo(&from),
        Err(StoreFault::Photo(PhotoFault::NotAPhoto))
    );
    assert!(matches!(
        logbook.add_photo(&folder.path().join("none")),
        Err(StoreFault::File { .. })
    ));
}
