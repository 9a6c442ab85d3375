//! Photos that are cut off, changed or huge: each is refused or taken in, none stops the program.
#![expect(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    clippy::panic,
    reason = "a test that can't go on stops with the reason"
)]

mod forms;
mod limits;
mod made;
mod notes;

use baywalk_logbook::photo::{PhotoFault, make};
use baywalk_tests::hostile::{JPEGS, PHOTOS};

/// The photos that are read.
fn read() -> &'static [&'static [u8]] {
    &PHOTOS[..PHOTOS.len() - 1]
}

#[test]
fn every_sound_photo_is_taken_in() {
    for (photo, sound) in read().iter().enumerate() {
        assert!(make(sound.to_vec(), true).is_ok(), "photo {photo}");
    }
}

#[test]
fn a_photo_that_is_cut_off_is_refused_at_every_length() {
    for (photo, sound) in read().iter().enumerate() {
        // A PNG without its empty last chunk has all its pixels; one of several pictures has its first.
        let whole = match photo {
            photo if photo < JPEGS => sound.len(),
            _ => end_of_first_picture(sound),
        };
        for length in 0..whole {
            let made = make(sound[..length].to_vec(), false);
            assert!(made.is_err(), "photo {photo} cut at {length}");
        }
    }
}

/// Where the first chunk of pixels that is not followed by one like it ends, less its checksum.
fn end_of_first_picture(png: &[u8]) -> usize {
    let mut at = 8;
    loop {
        let length = u32::from_be_bytes(png[at..at + 4].try_into().unwrap());
        let end = at + 12 + usize::try_from(length).unwrap();
        if &png[at + 4..at + 8] == b"IDAT" {
            return end - 4;
        }
        at = end;
    }
}

#[test]
fn a_photo_with_any_byte_changed_is_taken_or_refused() {
    let mut refused = 0;
    for sound in read() {
        for at in 0..sound.len() {
            let mut changed = sound.to_vec();
            changed[at] ^= if at % 2 == 0 { 0xFF } else { 1 << (at / 2 % 8) };
            refused += usize::from(make(changed, false).is_err());
        }
    }
    assert!(refused > 1000);
}

#[test]
fn what_is_no_photo_is_told_as_such() {
    assert_eq!(make(Vec::new(), false), Err(PhotoFault::Empty));
    for bytes in [
        &b"\xFF\xD8"[..],
        b"\x89PNG\r\n\x1A",
        b"PK\x03\x04",
        b"%PDF-1.7",
        &[0; 64],
    ] {
        assert_eq!(make(bytes.to_vec(), false), Err(PhotoFault::NotAPhoto));
    }
}
