//! What a file is, by its first bytes; its name says nothing.

use super::{Foreign, PhotoFault};

/// The forms that are read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Kind {
    /// JPEG (ITU-T T.81).
    Jpeg,
    /// PNG (W3C PNG).
    Png,
}

/// The first bytes of forms that are recognised and not read, each from its own specification.
const FOREIGN: [(&[u8], Foreign); 7] = [
    (b"GIF8", Foreign::Gif),
    (b"II*\0", Foreign::Tiff),
    (b"MM\0*", Foreign::Tiff),
    (b"BM", Foreign::Bmp),
    (b"\xFF\x0A", Foreign::JpegXl),
    (b"\0\0\0\x0CJXL \r\n\x87\n", Foreign::JpegXl),
    (b"II+\0", Foreign::Tiff),
];

/// Tells the form of a file.
pub(super) fn kind(bytes: &[u8]) -> Result<Kind, PhotoFault> {
    if bytes.is_empty() {
        return Err(PhotoFault::Empty);
    }
    if bytes.starts_with(b"\xFF\xD8\xFF") {
        return Ok(Kind::Jpeg);
    }
    if bytes.starts_with(b"\x89PNG\r\n\x1A\n") {
        return Ok(Kind::Png);
    }
    let known = FOREIGN.iter().find(|(first, _)| bytes.starts_with(first));
    let found = known.map(|(_, found)| *found).or_else(|| boxed(bytes));
    Err(found.map_or(PhotoFault::NotAPhoto, |found| PhotoFault::Foreign { found }))
}

/// The form of a file that is a box with a brand: RIFF, or ISO/IEC 14496-12 `ftyp`.
fn boxed(bytes: &[u8]) -> Option<Foreign> {
    let word = |from: usize| bytes.get(from..).and_then(|rest| rest.first_chunk::<4>());
    match (word(0)?, word(4)?, word(8)?) {
        (b"RIFF", _, b"WEBP") => Some(Foreign::WebP),
        (_, b"ftyp", b"avif" | b"avis") => Some(Foreign::Avif),
        (_, b"ftyp", b"mif1" | b"msf1") => Some(Foreign::Heic),
        (_, b"ftyp", [b'h', b'e', _, _]) => Some(Foreign::Heic),
        (_, b"ftyp", _) => Some(Foreign::Mp4),
        _ => None,
    }
}
