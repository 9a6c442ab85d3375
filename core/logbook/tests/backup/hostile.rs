//! Archives that were damaged, and archives that somebody made to do harm: all are refused, nothing
//! is written, nothing panics.

use crate::store::{Place, clock, on};
use baywalk_logbook::backup::{
    ArchiveFault, MemberFault, Passphrase, RestoreFault, Wish, check, restore,
};
use std::io::Write;
use std::path::Path;
use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, ZipWriter};

fn refused(path: &Path) -> Result<(), ArchiveFault> {
    check(path, None, &mut on).map(drop)
}

/// A small archive: a rig, a photo of 214 bytes and nothing else.
fn small(place: &Place) -> Vec<u8> {
    let logbook = place.store("one", false);
    place.backup(&logbook, "one.zip", None);
    std::fs::read(place.at("one.zip")).unwrap()
}

#[test]
fn every_byte_flipped_and_every_length_cut_is_told() {
    let place = Place::new();
    let whole = small(&place);
    let path = place.at("changed.zip");
    let mut file = std::fs::File::create(&path).unwrap();
    for at in 0..whole.len() {
        let mut changed = whole.clone();
        changed[at] ^= 1 << (at % 8);
        rewrite(&mut file, &changed);
        assert!(bytes_refused(&path), "byte {at} of {}", whole.len());
    }
    for length in 0..whole.len() {
        rewrite(&mut file, &whole[..length]);
        assert!(bytes_refused(&path), "length {length} of {}", whole.len());
    }
    rewrite(&mut file, &whole);
    assert_eq!(refused(&path), Ok(()));
}

/// Whether an archive is refused; the cheap way first, as a changed byte shows in the seal already.
fn bytes_refused(path: &Path) -> bool {
    refused(path).is_err()
}

fn rewrite(file: &mut std::fs::File, bytes: &[u8]) {
    use std::io::Seek;
    file.set_len(0).unwrap();
    file.rewind().unwrap();
    file.write_all(bytes).unwrap();
}

#[test]
fn every_byte_of_a_wrapped_head_and_some_behind_flipped_is_told() {
    let place = Place::new();
    let logbook = place.store("one", false);
    place.backup(&logbook, "one.age", Some("owl"));
    let whole = std::fs::read(place.at("one.age")).unwrap();
    let secret = Passphrase::new("owl").unwrap();
    let path = place.at("changed.age");
    let told = |bytes: &[u8]| {
        std::fs::write(&path, bytes).unwrap();
        check(&path, Some(&secret), &mut on).is_err()
    };
    // Each try of a passphrase costs its work, so the head is tried sparsely and the rest more so.
    let places = (0..200).step_by(23).chain((200..whole.len()).step_by(9973));
    for at in places {
        let mut changed = whole.clone();
        changed[at] ^= 1;
        assert!(told(&changed), "byte {at}");
        assert!(told(&whole[..at]), "length {at}");
    }
    assert!(told(&[whole.as_slice(), b"x"].concat()), "behind");
    assert!(!told(&whole));
}

/// Makes an archive of some members, each with its options.
fn archive(path: &Path, members: &[(&str, &[u8], SimpleFileOptions)]) {
    let mut zip = ZipWriter::new(std::fs::File::create(path).unwrap());
    zip.set_raw_comment(Box::new([b'0'; 64])).unwrap();
    for (name, bytes, options) in members {
        zip.start_file(*name, *options).unwrap();
        zip.write_all(bytes).unwrap();
    }
    zip.finish().unwrap();
}

fn stored() -> SimpleFileOptions {
    SimpleFileOptions::default().compression_method(CompressionMethod::Stored)
}

#[test]
fn names_that_no_backup_has_are_refused_before_anything_is_written() {
    let place = Place::new();
    let digest = "0f".repeat(32);
    let names = [
        "../baywalk.db".to_owned(),
        "photos/../../escape.jpg".to_owned(),
        format!("/photos/{digest}.jpg"),
        format!("photos\\{digest}.jpg"),
        format!("PHOTOS/{digest}.jpg"),
        format!("photos/{}.jpg", digest.to_uppercase()),
        "Ledger.jsonl".to_owned(),
        "baywalk.db".to_owned(),
        "C:\\ledger.jsonl".to_owned(),
        "ledger.jsonl\u{0}.txt".to_owned(),
    ];
    for name in &names {
        archive(&place.at("a.zip"), &[(name, b"x", stored())]);
        let (folder, from) = (place.at("to"), place.at("a.zip"));
        let wish = Wish {
            folder: &folder,
            from: &from,
            passphrase: None,
            replace: true,
        };
        let fault = restore(&wish, clock(), &mut on).unwrap_err();
        let RestoreFault::Archive(ArchiveFault::Member { why, .. }) = fault else {
            panic!("{name}: {fault}");
        };
        assert_eq!(why, MemberFault::Name, "{name}");
        assert_eq!(place.names(), ["a.zip"], "{name}");
    }
}

#[test]
fn links_and_folders_are_refused() {
    let place = Place::new();
    let path = place.at("a.zip");
    let mut zip = ZipWriter::new(std::fs::File::create(&path).unwrap());
    zip.set_raw_comment(Box::new([b'0'; 64])).unwrap();
    zip.add_symlink("ledger.jsonl", "/etc/passwd", stored())
        .unwrap();
    zip.finish().unwrap();
    assert!(matches!(
        refused(&path),
        Err(ArchiveFault::Member {
            why: MemberFault::NoFile,
            ..
        })
    ));
    let mut zip = ZipWriter::new(std::fs::File::create(&path).unwrap());
    zip.set_raw_comment(Box::new([b'0'; 64])).unwrap();
    zip.add_directory("photos/", stored()).unwrap();
    zip.finish().unwrap();
    assert!(matches!(
        refused(&path),
        Err(ArchiveFault::Member {
            why: MemberFault::NoFile,
            ..
        })
    ));
}

#[test]
fn a_newer_format_is_told_as_such_and_what_is_no_archive_too() {
    let place = Place::new();
    let path = place.at("a.zip");
    std::fs::write(&path, b"").unwrap();
    assert!(matches!(refused(&path), Err(ArchiveFault::NotAnArchive(_))));
    std::fs::write(&path, vec![7; 100_000]).unwrap();
    assert!(matches!(refused(&path), Err(ArchiveFault::NotAnArchive(_))));
    assert!(matches!(
        refused(&place.at("none")),
        Err(ArchiveFault::Unread(_))
    ));
    assert!(matches!(
        refused(place.at("").as_path()),
        Err(ArchiveFault::Unread(_))
    ));
}

#[test]
fn what_is_added_before_or_behind_is_told() {
    let place = Place::new();
    let whole = small(&place);
    let path = place.at("changed.zip");
    for bytes in [
        [b"x", whole.as_slice()].concat(),
        [whole.as_slice(), b"x"].concat(),
    ] {
        std::fs::write(&path, bytes).unwrap();
        assert!(refused(&path).is_err());
    }
    let twice = [whole.as_slice(), whole.as_slice()].concat();
    std::fs::write(&path, twice).unwrap();
    assert!(refused(&path).is_err());
}
