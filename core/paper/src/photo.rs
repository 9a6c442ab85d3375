//! Photos on paper: named by their digest, handed over by whoever keeps them, one at a time.

/// Hands over photos by their digest.
///
/// # Example
/// ```
/// use baywalk_paper::photo::{NoPhotos, Photos};
/// assert!(NoPhotos.jpeg("00").is_none());
/// ```
pub trait Photos {
    /// The bytes of a photo as JPEG, where it is there.
    fn jpeg(&self, digest: &str) -> Option<Vec<u8>>;
}

/// Has no photo: a report then tells of them without showing them.
#[derive(Debug, Clone, Copy)]
pub struct NoPhotos;

impl Photos for NoPhotos {
    fn jpeg(&self, _digest: &str) -> Option<Vec<u8>> {
        None
    }
}

/// A photo in a sheet.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Photo {
    /// Its number and what it shows.
    pub(crate) head: String,
    /// What stands under it: caption, pins, digest.
    pub(crate) lines: Vec<String>,
    /// By which its picture is asked for.
    pub(crate) digest: String,
}

impl Photo {
    /// What is read aloud in place of the picture.
    pub(crate) fn aloud(&self) -> String {
        let mut told = self.head.clone();
        if let Some(line) = self.lines.first() {
            told.push_str(". ");
            told.push_str(line);
        }
        told
    }
}
