//! Pictures that claim to be huge, and small files made to take long.

use baywalk_logbook::photo::{MOST_PIXELS, MOST_PIXELS_WHOLE, PhotoFault, make};
use baywalk_tests::hostile::PHOTOS;

const BASELINE: &[u8] = PHOTOS[0];
const PROGRESSIVE: &[u8] = PHOTOS[1];
const GREY: &[u8] = PHOTOS[2];
const PNG: &[u8] = PHOTOS[7];

fn at(bytes: &[u8], marker: u8) -> usize {
    let marker = [0xFF, marker];
    bytes.windows(2).position(|two| two == marker).unwrap()
}

/// A sound photo with another size in its frame header (ITU-T T.81 B.2.2).
fn sized(photo: &[u8], width: u16, height: u16) -> Vec<u8> {
    let mut bytes = photo.to_vec();
    let frame = at(photo, if photo == PROGRESSIVE { 0xC2 } else { 0xC0 });
    bytes[frame + 5..frame + 7].copy_from_slice(&height.to_be_bytes());
    bytes[frame + 7..frame + 9].copy_from_slice(&width.to_be_bytes());
    bytes
}

/// A PNG with another size in its header, and the checksum that fits.
fn png_sized(width: u32, height: u32) -> Vec<u8> {
    let mut bytes = PNG.to_vec();
    bytes[16..20].copy_from_slice(&width.to_be_bytes());
    bytes[20..24].copy_from_slice(&height.to_be_bytes());
    let sum = crc(&bytes[12..29]);
    bytes[29..33].copy_from_slice(&sum.to_be_bytes());
    bytes
}

/// The checksum of a PNG chunk (W3C PNG, annex D).
fn crc(bytes: &[u8]) -> u32 {
    !bytes.iter().fold(u32::MAX, |sum, byte| {
        (0..8).fold(sum ^ u32::from(*byte), |sum, _| {
            (sum >> 1) ^ if sum & 1 == 1 { 0xEDB8_8320 } else { 0 }
        })
    })
}

fn too_many(bytes: Vec<u8>) -> u64 {
    match make(bytes, false) {
        Err(PhotoFault::TooManyPixels { most, .. }) => most,
        other => panic!("{other:?}"),
    }
}

#[test]
fn a_picture_that_claims_too_many_pixels_is_refused_before_it_is_decoded() {
    assert_eq!(too_many(sized(BASELINE, 65_500, 65_500)), MOST_PIXELS);
    assert_eq!(
        too_many(sized(PROGRESSIVE, 5_000, 4_000)),
        MOST_PIXELS_WHOLE
    );
    assert!(too_many(png_sized(100_000, 100_000)) <= MOST_PIXELS_WHOLE);
    assert!(make(png_sized(u32::MAX, u32::MAX), false).is_err());
    assert!(make(png_sized(0, 1), false).is_err());
    assert!(make(sized(BASELINE, 0, 0), false).is_err());
    assert!(make(sized(GREY, 1, 65_535), false).is_err());
}

/// T.81 F.1.2: no block is coded in less than two bits.
#[test]
fn few_bytes_that_claim_many_pixels_are_cut_off() {
    for (width, height) in [(16_000, 12_000), (65_500, 3_000), (1_000, 1_000)] {
        assert_eq!(
            make(sized(BASELINE, width, height), false),
            Err(PhotoFault::CutOff)
        );
    }
    assert_eq!(
        make(sized(PROGRESSIVE, 4_000, 4_000), false),
        Err(PhotoFault::CutOff)
    );
    assert!(make(png_sized(4_000, 4_000), false).is_err());
}

/// A progressive photo whose first scans come again and again.
fn scans_again(photo: &[u8], times: usize) -> Vec<u8> {
    let (first, end) = (at(photo, 0xDA), photo.len() - 2);
    let mut bytes = photo[..first].to_vec();
    for _ in 0..times {
        bytes.extend(&photo[first..end]);
    }
    bytes.extend(b"\xFF\xD9");
    bytes
}

#[test]
fn more_scans_than_a_camera_writes_are_refused() {
    let refused = |bytes: Vec<u8>| match make(bytes, false) {
        Err(PhotoFault::TooManyScans { pixels, most }) => (pixels, most),
        other => panic!("{other:?}"),
    };
    assert_eq!(refused(scans_again(PROGRESSIVE, 40)), (64 * 48, 32));
    let large = sized(PROGRESSIVE, 4_000, 4_000);
    assert_eq!(refused(scans_again(&large, 3)), (16_000_000, 12));
}

#[test]
fn more_segments_than_a_camera_writes_are_refused() {
    let mut segments = b"\xFF\xD8".to_vec();
    for _ in 0..5000 {
        segments.extend(b"\xFF\xFE\0\x02");
    }
    segments.extend(&BASELINE[2..]);
    assert!(matches!(make(segments, false), Err(PhotoFault::Damaged(_))));
}

/// What a hostile colour profile unpacks to is limited: 50 million zeros in 50 kB.
#[test]
fn a_png_whose_profile_unpacks_to_much_is_refused_or_taken_without_it() {
    // A deflate stream of one fixed block (RFC 1951 3.2.6): a zero, then runs of 258 of it.
    let mut bits: Vec<bool> = vec![true, true, false];
    bits.extend([false, false, true, true, false, false, false, false]);
    for _ in 0..200_000 {
        bits.extend([true, true, false, false, false, true, false, true]);
        bits.extend([false; 5]);
    }
    bits.extend([false; 7]);
    let mut packed = b"bomb\0\0\x78\x01".to_vec();
    let byte = |bits: &[bool]| {
        bits.iter()
            .enumerate()
            .fold(0_u8, |byte, (place, bit)| byte | (u8::from(*bit) << place))
    };
    packed.extend(bits.chunks(8).map(byte));
    packed.extend([0; 4]);
    let mut chunk = b"iCCP".to_vec();
    chunk.extend(packed);
    let mut bytes = PNG[..33].to_vec();
    bytes.extend(u32::try_from(chunk.len() - 4).unwrap().to_be_bytes());
    bytes.extend(&chunk);
    bytes.extend(crc(&chunk).to_be_bytes());
    bytes.extend(&PNG[33..]);
    if let Ok(made) = make(bytes, true) {
        assert!(made.master.len() < 10_000);
    }
}
