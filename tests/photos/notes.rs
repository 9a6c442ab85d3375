//! Hostile Exif blocks: directories that lead to themselves, lengths beyond the end, too many fields.

use baywalk_logbook::photo::make;
use baywalk_tests::hostile::PHOTOS;

/// A sound photo with an Exif block of this text in place of its own.
fn with_exif(block: &[u8]) -> Vec<u8> {
    let photo = PHOTOS[3];
    let length = u16::try_from(block.len() + 8).unwrap();
    let mut bytes = b"\xFF\xD8\xFF\xE1".to_vec();
    bytes.extend(length.to_be_bytes());
    bytes.extend(b"Exif\0\0");
    bytes.extend(block);
    bytes.extend(&photo[2..]);
    bytes
}

/// A TIFF directory, big-endian (TIFF 6.0 section 2): fields of tag, kind, count, value; the next.
fn block(fields: &[(u16, u16, u32, u32)], next: u32) -> Vec<u8> {
    let mut block = b"MM\0*\0\0\0\x08".to_vec();
    block.extend(u16::try_from(fields.len()).unwrap().to_be_bytes());
    for (tag, kind, count, value) in fields {
        block.extend(tag.to_be_bytes());
        block.extend(kind.to_be_bytes());
        block.extend(count.to_be_bytes());
        block.extend(value.to_be_bytes());
    }
    block.extend(next.to_be_bytes());
    block
}

#[test]
fn notes_that_lead_in_circles_or_nowhere_leave_the_photo_as_it_is() {
    let plain = make(PHOTOS[3].to_vec(), true).unwrap();
    let hostile = [
        block(&[], 8),
        block(&[(0x8769, 4, 1, 8)], 8),
        block(
            &[(0x8769, 4, 1, 8), (0x8825, 4, 1, 8), (0xA005, 4, 1, 8)],
            8,
        ),
        block(&[(0x9003, 2, u32::MAX, 8)], 0),
        block(&[(0x9003, 2, 20, u32::MAX)], 0),
        block(&[(0x0112, 3, u32::MAX, 0)], u32::MAX),
        block(&[(0x0112, 3, 1, 9 << 16)], 0),
        block(&[(0x0112, 3, 1, 0)], 0),
        block(&vec![(0x927C, 7, 60_000, 8); 5_000], 8),
        b"MM\0*".to_vec(),
        b"II\0*\x08\0\0\0".to_vec(),
        Vec::new(),
    ];
    for (number, exif) in hostile.iter().enumerate() {
        assert_eq!(
            make(with_exif(exif), true),
            Ok(plain.clone()),
            "block {number}"
        );
    }
}
