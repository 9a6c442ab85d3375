//! From the bytes of a file to what is kept of it.

use super::source::Source;
use super::{MASTER_EDGE, PhotoFault, THUMBNAIL_EDGE, pixels};
use std::panic::{UnwindSafe, catch_unwind};

/// JPEG quality of a master, on the scale of the Independent JPEG Group.
const MASTER_QUALITY: u8 = 80;

/// JPEG quality of a thumbnail.
const THUMBNAIL_QUALITY: u8 = 75;

/// What is kept of a photo.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Made {
    /// The master: JPEG, upright, long edge 1600 pixels or less, with the time and nothing else.
    pub master: Vec<u8>,
    /// The thumbnail: JPEG, upright, long edge 320 pixels or less.
    pub thumbnail: Vec<u8>,
    /// The picture as it came, where it is to be kept, and the ending of its name.
    pub original: Option<(Vec<u8>, &'static str)>,
}

/// Makes what is kept of a photo from the bytes of a file.
///
/// # Errors
/// [`PhotoFault`] where it is no photo, not within the limits, or not sound; a panic in a decoder
/// is such a fault, and stops nothing.
///
/// # Example
/// ```
/// use baywalk_logbook::photo::{PhotoFault, make};
/// assert_eq!(make(b"dear aunt".to_vec(), false), Err(PhotoFault::NotAPhoto));
/// assert_eq!(make(Vec::new(), false), Err(PhotoFault::Empty));
/// ```
pub fn make(bytes: Vec<u8>, keep_original: bool) -> Result<Made, PhotoFault> {
    guarded(move || made(bytes, keep_original))
}

fn made(bytes: Vec<u8>, keep_original: bool) -> Result<Made, PhotoFault> {
    let source = Source::read(bytes)?;
    let image = source.upright(MASTER_EDGE)?;
    let master = pixels::code(&image, MASTER_QUALITY, source.time().as_deref())?;
    drop(image);
    let original = if keep_original {
        Some(source.original()?)
    } else {
        None
    };
    Ok(Made {
        thumbnail: small(master.clone(), THUMBNAIL_EDGE)?,
        master,
        original,
    })
}

/// Makes the thumbnail of a photo that is kept.
///
/// # Errors
/// [`PhotoFault`] where the photo is not sound.
pub fn thumbnail(photo: Vec<u8>) -> Result<Vec<u8>, PhotoFault> {
    smaller(photo, THUMBNAIL_EDGE)
}

/// Makes a photo that is kept smaller: JPEG, its long edge so many pixels or less, to be mailed.
///
/// # Errors
/// [`PhotoFault`] where the photo is not sound.
pub fn smaller(photo: Vec<u8>, edge: u32) -> Result<Vec<u8>, PhotoFault> {
    guarded(move || small(photo, edge))
}

fn small(photo: Vec<u8>, edge: u32) -> Result<Vec<u8>, PhotoFault> {
    let image = Source::read(photo)?.upright(edge)?;
    pixels::code(&image, THUMBNAIL_QUALITY, None)
}

/// Does the work of decoders that are not ours: a panic in one of them ends with the photo. The
/// work owns all that it changes, so that nothing half done is left.
fn guarded<T>(work: impl FnOnce() -> Result<T, PhotoFault> + UnwindSafe) -> Result<T, PhotoFault> {
    catch_unwind(work)
        .unwrap_or_else(|_| Err(PhotoFault::Damaged("the decoder gave it up".to_owned())))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_panic_of_a_decoder_is_a_fault_of_the_photo() {
        let stopped: Result<(), _> = guarded(|| panic!("a picture that no one thought of"));
        assert!(matches!(stopped, Err(PhotoFault::Damaged(_))));
    }
}
