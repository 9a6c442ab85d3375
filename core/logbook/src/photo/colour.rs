//! Colours of a wide profile, brought to those that every screen and printer takes for granted.

use image::RgbImage;
use moxcms::{ColorProfile, DataColorSpace, Layout, TransformOptions};

/// The most bytes of a profile that is looked at; those of cameras have a few thousand.
const MOST_BYTES: usize = 1024 * 1024;

/// Turns pixels of a profile into sRGB (IEC 61966-2-1). A profile that can't be read, or is none
/// of RGB, changes nothing.
pub(super) fn to_srgb(image: RgbImage, icc: &[u8]) -> RgbImage {
    turned(&image, icc).unwrap_or(image)
}

fn turned(image: &RgbImage, icc: &[u8]) -> Option<RgbImage> {
    if icc.is_empty() || icc.len() > MOST_BYTES {
        return None;
    }
    let profile = ColorProfile::new_from_slice(icc).ok()?;
    if profile.color_space != DataColorSpace::Rgb {
        return None;
    }
    let srgb = ColorProfile::new_srgb();
    let transform = profile
        .create_transform_8bit(Layout::Rgb, &srgb, Layout::Rgb, TransformOptions::default())
        .ok()?;
    let mut pixels = vec![0; image.as_raw().len()];
    transform.transform(image.as_raw(), &mut pixels).ok()?;
    RgbImage::from_raw(image.width(), image.height(), pixels)
}
