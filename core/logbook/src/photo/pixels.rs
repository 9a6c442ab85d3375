//! Pixels: made smaller, laid on white, coded as JPEG.

use super::PhotoFault;
use fast_image_resize::images::{Image, ImageRef};
use fast_image_resize::{PixelType, Resizer};
use image::{DynamicImage, GrayImage, RgbImage, RgbaImage};
use jpeg_encoder::{ColorType, Encoder};

/// The pixels with a long edge not above the one asked for (Lanczos, three lobes); they are never
/// made larger.
pub(super) fn fit(image: &DynamicImage, edge: u32) -> Result<RgbImage, PhotoFault> {
    let (width, height) = size(image.width(), image.height(), edge);
    if (width, height) == (image.width(), image.height()) {
        return Ok(on_white(image.clone()));
    }
    let kind = match image {
        DynamicImage::ImageLuma8(_) => PixelType::U8,
        DynamicImage::ImageRgba8(_) => PixelType::U8x4,
        _ => PixelType::U8x3,
    };
    let inside = |error: &dyn std::fmt::Display| PhotoFault::Damaged(error.to_string());
    let from = ImageRef::new(image.width(), image.height(), image.as_bytes(), kind)
        .map_err(|error| inside(&error))?;
    let mut to = Image::new(width, height, kind);
    let mut resizer = Resizer::new();
    let done = resizer.resize(&from, &mut to, None);
    done.map_err(|error| inside(&error))?;
    let pixels = to.into_vec();
    let small = match kind {
        PixelType::U8 => GrayImage::from_raw(width, height, pixels).map(DynamicImage::from),
        PixelType::U8x4 => RgbaImage::from_raw(width, height, pixels).map(DynamicImage::from),
        _ => RgbImage::from_raw(width, height, pixels).map(DynamicImage::from),
    };
    small
        .map(on_white)
        .ok_or_else(|| inside(&"its size and its pixels differ"))
}

/// Width and height so that the longer of them is the edge, or less; neither is 0.
fn size(width: u32, height: u32, edge: u32) -> (u32, u32) {
    let long = u64::from(width.max(height).max(1));
    let scaled = |side: u32| {
        let side = (u64::from(side) * u64::from(edge) + long / 2) / long;
        u32::try_from(side).unwrap_or(edge).clamp(1, edge)
    };
    if long <= u64::from(edge) {
        (width, height)
    } else {
        (scaled(width), scaled(height))
    }
}

/// What can be seen through shows white.
fn on_white(image: DynamicImage) -> RgbImage {
    let DynamicImage::ImageRgba8(seen_through) = image else {
        return image.into_rgb8();
    };
    let mut laid = RgbImage::new(seen_through.width(), seen_through.height());
    for (to, from) in laid.pixels_mut().zip(seen_through.pixels()) {
        let [red, green, blue, alpha] = from.0.map(u16::from);
        to.0 = [red, green, blue].map(|colour| {
            let mixed = (colour * alpha + 255 * (255 - alpha) + 127) / 255;
            u8::try_from(mixed).unwrap_or(u8::MAX)
        });
    }
    laid
}

/// Codes pixels as JPEG, with an Exif block of ours.
pub(super) fn code(
    image: &RgbImage,
    quality: u8,
    exif: Option<&[u8]>,
) -> Result<Vec<u8>, PhotoFault> {
    let inside = |error: jpeg_encoder::EncodingError| PhotoFault::Damaged(error.to_string());
    let side = |side: u32| u16::try_from(side).unwrap_or(u16::MAX);
    let mut bytes = Vec::new();
    let mut encoder = Encoder::new(&mut bytes, quality);
    if let Some(exif) = exif {
        encoder.add_exif_metadata(exif).map_err(inside)?;
    }
    let (width, height) = (side(image.width()), side(image.height()));
    encoder
        .encode(image.as_raw(), width, height, ColorType::Rgb)
        .map_err(inside)?;
    Ok(bytes)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_long_edge_is_kept_and_no_edge_is_nothing() {
        assert_eq!(size(4032, 3024, 1600), (1600, 1200));
        assert_eq!(size(3024, 4032, 320), (240, 320));
        assert_eq!(size(65_535, 1, 1600), (1600, 1));
        assert_eq!(size(640, 480, 1600), (640, 480));
    }

    #[test]
    fn what_can_be_seen_through_shows_white() {
        let clear = RgbaImage::from_raw(2, 1, vec![10, 20, 30, 0, 10, 20, 30, 255]).unwrap();
        let laid = on_white(clear.into());
        assert_eq!(laid.as_raw(), &[255, 255, 255, 10, 20, 30]);
    }
}
