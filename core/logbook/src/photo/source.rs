//! A picture as it came, once what tells of it is set aside.

use super::kind::{Kind, kind};
use super::notes::{self, Notes};
use super::{PhotoFault, colour, jpeg, pixels, png};
use image::metadata::Orientation;
use image::{DynamicImage, RgbImage};

/// A picture as it came: its samples, and what was taken from the camera's notes.
pub(super) struct Source {
    picture: Picture,
    pub(super) notes: Notes,
    icc: Vec<u8>,
}

enum Picture {
    /// A clean JPEG.
    Jpeg(Vec<u8>),
    /// The pixels of a PNG.
    Png(DynamicImage),
}

impl Source {
    /// Reads a file; its bytes are let go before the picture is decoded.
    pub(super) fn read(bytes: Vec<u8>) -> Result<Self, PhotoFault> {
        match kind(&bytes)? {
            Kind::Jpeg => {
                let jpeg = jpeg::read(&bytes)?;
                Ok(Self {
                    picture: Picture::Jpeg(jpeg.clean),
                    notes: notes::read(jpeg.exif),
                    icc: jpeg.icc,
                })
            }
            Kind::Png => {
                let (image, notes, icc) = png::read(&bytes)?;
                Ok(Self {
                    picture: Picture::Png(image),
                    notes,
                    icc,
                })
            }
        }
    }

    /// The picture upright, in common colours, with a long edge not above the one asked for.
    pub(super) fn upright(&self, edge: u32) -> Result<RgbImage, PhotoFault> {
        let small = match &self.picture {
            Picture::Jpeg(clean) => pixels::fit(&jpeg::pixels(clean, edge)?, edge)?,
            Picture::Png(image) => pixels::fit(image, edge)?,
        };
        let mut image = DynamicImage::from(colour::to_srgb(small, &self.icc));
        image.apply_orientation(self.notes.upright);
        Ok(image.into_rgb8())
    }

    /// The picture as it came, with the ending of its name: a JPEG keeps its coded samples and gets
    /// the time and which way is up; the pixels of a PNG are turned.
    pub(super) fn original(self) -> Result<(Vec<u8>, &'static str), PhotoFault> {
        match self.picture {
            Picture::Jpeg(clean) => {
                let exif = notes::write(self.notes.taken.as_ref(), self.notes.upright);
                Ok((jpeg::with_exif(&clean, exif.as_deref()), "jpg"))
            }
            Picture::Png(mut image) => {
                image.apply_orientation(self.notes.upright);
                Ok((png::write(&image)?, "png"))
            }
        }
    }

    /// The Exif block of a master: the time alone.
    pub(super) fn time(&self) -> Option<Vec<u8>> {
        notes::write(self.notes.taken.as_ref(), Orientation::NoTransforms)
    }
}
