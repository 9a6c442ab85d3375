//! Taking a photo in: copied under the name of its digest, lasting before it is entered.

use super::{Store, StoreFault, folder};
use crate::ledger::Digest;
use std::io::{Read, Write};
use std::path::Path;

/// The most bytes a photo may have.
pub const MOST_PHOTO_BYTES: u64 = 64 * 1024 * 1024;

/// Why a file is not taken in as a photo.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum PhotoFault {
    /// It is neither JPEG nor PNG by its first bytes.
    #[error("neither JPEG nor PNG")]
    NotAPhoto,
    /// It is too large.
    #[error("more than {most} bytes")]
    TooLarge {
        /// The most bytes there may be.
        most: u64,
    },
}

impl Store {
    /// Copies a photo into the store and gives its digest.
    pub(crate) fn add_photo(&self, path: &Path) -> Result<Digest, StoreFault> {
        let bytes = read(path)?;
        let ending = ending(&bytes).ok_or(PhotoFault::NotAPhoto)?;
        let digest = Digest::of(&bytes);
        let folder = self.photos();
        let kept = folder.join(format!("{digest}.{ending}"));
        if std::fs::read(&kept).is_ok_and(|there| there == bytes) {
            return Ok(digest);
        }
        let coming = folder.join(format!("{digest}.coming"));
        let written = std::fs::File::create(&coming).and_then(|mut file| {
            file.write_all(&bytes)?;
            file.sync_all()
        });
        let put = written.and_then(|()| std::fs::rename(&coming, &kept));
        if let Err(error) = put {
            // What was begun takes room; where it can't be removed it is harmless.
            let _left = std::fs::remove_file(&coming);
            return Err(StoreFault::file(&kept, &error));
        }
        folder::sync(&folder)?;
        Ok(digest)
    }
}

fn read(path: &Path) -> Result<Vec<u8>, StoreFault> {
    let fault = |error: std::io::Error| StoreFault::file(path, &error);
    let file = std::fs::File::open(path).map_err(fault)?;
    let mut bytes = Vec::new();
    let most = MOST_PHOTO_BYTES.saturating_add(1);
    file.take(most).read_to_end(&mut bytes).map_err(fault)?;
    if u64::try_from(bytes.len()).is_ok_and(|length| length <= MOST_PHOTO_BYTES) {
        Ok(bytes)
    } else {
        Err(PhotoFault::TooLarge {
            most: MOST_PHOTO_BYTES,
        }
        .into())
    }
}

/// The ending for a photo, by its first bytes (JPEG: ITU-T T.81 SOI marker and the next marker's
/// first byte; PNG: W3C PNG 5.2).
fn ending(bytes: &[u8]) -> Option<&'static str> {
    if bytes.starts_with(&[0xFF, 0xD8, 0xFF]) {
        Some("jpg")
    } else if bytes.starts_with(b"\x89PNG\r\n\x1a\n") {
        Some("png")
    } else {
        None
    }
}
