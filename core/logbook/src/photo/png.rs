//! PNG: screen pictures and labels sent by a maker. It has to be in memory as a whole.

use super::notes::{self, Notes};
use super::{MOST_PIXELS_WHOLE, PhotoFault};
use image::codecs::png::PngDecoder;
use image::{DynamicImage, ExtendedColorType, ImageDecoder, ImageEncoder, Limits};
use std::io::Cursor;

/// The most bytes of all pixels: 16 million with four channels.
const MOST_ALLOCATED: u64 = MOST_PIXELS_WHOLE * 4;

/// What is in a PNG: its pixels with 8 bits a channel, notes, colour profile.
pub(super) fn read(bytes: &[u8]) -> Result<(DynamicImage, Notes, Vec<u8>), PhotoFault> {
    let mut limits = Limits::no_limits();
    limits.max_alloc = Some(MOST_ALLOCATED);
    let mut decoder = PngDecoder::with_limits(Cursor::new(bytes), limits)?;
    let (width, height) = decoder.dimensions();
    let pixels = u64::from(width) * u64::from(height);
    let most = match decoder.total_bytes().checked_div(pixels) {
        Some(each) if each > 4 => MOST_ALLOCATED / each,
        _ => MOST_PIXELS_WHOLE,
    };
    if pixels > most {
        return Err(PhotoFault::TooManyPixels {
            width,
            height,
            most,
        });
    }
    let exif = decoder.exif_metadata()?.unwrap_or_default();
    let icc = decoder.icc_profile()?.unwrap_or_default();
    let image = DynamicImage::from_decoder(decoder)?;
    let image = if image.color().has_alpha() {
        image.into_rgba8().into()
    } else {
        image.into_rgb8().into()
    };
    Ok((image, notes::read(exif), icc))
}

/// The pixels as a PNG that says nothing else.
pub(super) fn write(image: &DynamicImage) -> Result<Vec<u8>, PhotoFault> {
    let mut bytes = Vec::new();
    let kind = ExtendedColorType::from(image.color());
    let encoder = image::codecs::png::PngEncoder::new(&mut bytes);
    encoder.write_image(image.as_bytes(), image.width(), image.height(), kind)?;
    Ok(bytes)
}
