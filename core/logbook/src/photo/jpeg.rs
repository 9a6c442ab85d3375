//! A JPEG taken apart: what makes the picture is kept, what tells of it is set aside or dropped.
//!
//! Markers and segments as in ITU-T T.81 annex B. What is dropped: all application segments but
//! the two that say how colours are coded (rewritten to their fixed part), comments, and all
//! behind the end of the picture, where phones put second pictures and films.

use super::frame::Frame;
use super::{MOST_SEGMENTS, PhotoFault};
use image::{DynamicImage, GrayImage, RgbImage};
use jpeg_decoder::{Decoder, PixelFormat};

const SOI: u8 = 0xD8;
const EOI: u8 = 0xD9;
const SOS: u8 = 0xDA;

/// JFIF 1.01 with square pixels and no thumbnail (ITU-T T.871).
const JFIF: &[u8] = b"JFIF\0\x01\x01\0\0\x01\0\x01\0\0";

/// The length of the fixed part of an Adobe segment.
const ADOBE: usize = 12;

/// A JPEG with what tells of it set aside.
#[derive(Debug, Default)]
pub(super) struct Jpeg {
    /// The picture: the same coded samples, and nothing that tells of them.
    pub(super) clean: Vec<u8>,
    /// The Exif block, from its TIFF header on.
    pub(super) exif: Vec<u8>,
    /// The colour profile.
    pub(super) icc: Vec<u8>,
    frame: Option<Frame>,
}

/// Takes a JPEG apart and sees that it is within the limits.
pub(super) fn read(bytes: &[u8]) -> Result<Jpeg, PhotoFault> {
    let mut jpeg = Jpeg {
        clean: Vec::with_capacity(bytes.len()),
        ..Jpeg::default()
    };
    jpeg.clean.extend([0xFF, SOI]);
    let mut rest = bytes.get(2..).unwrap_or_default();
    for _ in 0..MOST_SEGMENTS {
        let (marker, after) = marker(rest).ok_or(PhotoFault::CutOff)?;
        rest = match marker {
            EOI => {
                jpeg.clean.extend([0xFF, EOI]);
                jpeg.framed()?.end()?;
                return Ok(jpeg);
            }
            SOI => return Err(PhotoFault::Damaged("a second start".to_owned())),
            0x01 | 0xD0..=0xD7 => after,
            _ => {
                let (body, after) = segment(after).ok_or(PhotoFault::CutOff)?;
                jpeg.take(marker, body)?;
                if marker == SOS {
                    let (scan, after) = scan(after).ok_or(PhotoFault::CutOff)?;
                    jpeg.framed()?.scan(scan.len())?;
                    jpeg.clean.extend_from_slice(scan);
                    after
                } else {
                    after
                }
            }
        };
    }
    Err(PhotoFault::Damaged(format!(
        "more than {MOST_SEGMENTS} segments"
    )))
}

impl Jpeg {
    /// Takes one segment: keeps it, sets it aside or drops it.
    fn take(&mut self, marker: u8, body: &[u8]) -> Result<(), PhotoFault> {
        match marker {
            0xE0 if body.starts_with(b"JFIF\0") => self.push(marker, JFIF),
            0xE1 => {
                if let Some(exif) = body.strip_prefix(b"Exif\0\0")
                    && self.exif.is_empty()
                {
                    self.exif = exif.to_vec();
                }
            }
            0xE2 => {
                let profile = body.strip_prefix(b"ICC_PROFILE\0");
                // Two bytes number the parts, which stand in their order.
                self.icc
                    .extend(profile.and_then(|part| part.get(2..)).unwrap_or_default());
            }
            0xEE if body.starts_with(b"Adobe") => {
                self.push(marker, body.get(..ADOBE).unwrap_or_default());
            }
            0xE0..=0xEF | 0xFE => {}
            0xC0..=0xCF if !matches!(marker, 0xC4 | 0xC8 | 0xCC) => {
                if self.frame.is_some() {
                    return Err(PhotoFault::Damaged("a second frame".to_owned()));
                }
                self.frame = Some(Frame::read(marker, body)?);
                self.push(marker, body);
            }
            _ => self.push(marker, body),
        }
        Ok(())
    }

    /// The frame, which has to stand before the first scan.
    fn framed(&mut self) -> Result<&mut Frame, PhotoFault> {
        let none = || PhotoFault::Damaged("no frame before its samples".to_owned());
        self.frame.as_mut().ok_or_else(none)
    }

    /// Puts a segment into the picture; one that would say more than its length can is none.
    fn push(&mut self, marker: u8, body: &[u8]) {
        if let Ok(length) = u16::try_from(body.len() + 2) {
            self.clean.extend([0xFF, marker]);
            self.clean.extend(length.to_be_bytes());
            self.clean.extend_from_slice(body);
        }
    }
}

/// The next marker and what follows it. Fill bytes, and what stands between segments, are passed.
fn marker(mut rest: &[u8]) -> Option<(u8, &[u8])> {
    loop {
        let at = rest.iter().position(|byte| *byte == 0xFF)?;
        let after = rest.get(at..)?;
        let marked = after.iter().position(|byte| *byte != 0xFF)?;
        let (byte, after) = after.get(marked..)?.split_first()?;
        if *byte != 0 {
            return Some((*byte, after));
        }
        rest = after;
    }
}

/// The body of a segment and what follows it.
fn segment(rest: &[u8]) -> Option<(&[u8], &[u8])> {
    let (length, rest) = rest.split_first_chunk::<2>()?;
    let length = usize::from(u16::from_be_bytes(*length)).checked_sub(2)?;
    rest.split_at_checked(length)
}

/// The coded samples of a scan and what follows them: up to a marker that is no restart.
fn scan(rest: &[u8]) -> Option<(&[u8], &[u8])> {
    let mut from = 0;
    loop {
        let at = from + rest.get(from..)?.iter().position(|byte| *byte == 0xFF)?;
        match rest.get(at + 1)? {
            0x00 | 0xD0..=0xD7 => from = at + 2,
            0xFF => from = at + 1,
            _ => return rest.split_at_checked(at),
        }
    }
}

/// A clean JPEG with an Exif block of ours.
pub(super) fn with_exif(clean: &[u8], exif: Option<&[u8]>) -> Vec<u8> {
    let mut jpeg = Jpeg::default();
    jpeg.clean.extend([0xFF, SOI]);
    if let Some(exif) = exif {
        jpeg.push(0xE1, &[b"Exif\0\0", exif].concat());
    }
    jpeg.clean.extend(clean.get(2..).unwrap_or_default());
    jpeg.clean
}

/// The pixels of a clean JPEG, at the smallest scale of 1, 1/2, 1/4 and 1/8 whose long edge is not
/// below the one asked for.
pub(super) fn pixels(clean: &[u8], edge: u32) -> Result<DynamicImage, PhotoFault> {
    let mut decoder = Decoder::new(clean);
    let edge = u16::try_from(edge).unwrap_or(u16::MAX);
    decoder.scale(edge, edge)?;
    let format = decoder.info().map(|info| info.pixel_format);
    if !matches!(format, Some(PixelFormat::L8 | PixelFormat::RGB24)) {
        return Err(PhotoFault::Unsupported(format!("{format:?}")));
    }
    let pixels = decoder.decode()?;
    let shape = || PhotoFault::Damaged("its size and its samples differ".to_owned());
    let info = decoder.info().ok_or_else(shape)?;
    let (width, height) = (u32::from(info.width), u32::from(info.height));
    let image = match info.pixel_format {
        PixelFormat::L8 => GrayImage::from_raw(width, height, pixels).map(DynamicImage::from),
        _ => RgbImage::from_raw(width, height, pixels).map(DynamicImage::from),
    };
    image.ok_or_else(shape)
}
