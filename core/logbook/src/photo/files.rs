//! The files of photos: how they are named, and how they come to last.
//!
//! ```text
//! photos/DIGEST.jpg                    a master; older stores have .png too
//! photos/small/DIGEST.jpg              its thumbnail
//! photos/originals/DIGEST.OWN.jpg      the picture as it came, behind its master's digest and its own
//! photos/….coming                      not written to its end
//! ```

use super::{MOST_BYTES, PhotoFault};
use crate::ledger::Digest;
use crate::store::{StoreFault, sync};
use std::io::{Read, Write};
use std::path::{Path, PathBuf};

/// The folder of thumbnails, below that of photos.
pub(super) const SMALL: &str = "small";

/// The folder of pictures as they came, below that of photos.
pub(super) const ORIGINALS: &str = "originals";

/// The ending of a file that is not written to its end.
const COMING: &str = "coming";

/// What a name in a folder of photos says.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Named<'a> {
    /// A photo or its thumbnail, by its digest.
    Photo(&'a str),
    /// A picture as it came, by its master's digest and its own.
    Original(&'a str, &'a str),
    /// A file that was not written to its end.
    Coming,
    /// None of ours.
    Other,
}

/// Reads what a name says.
pub(super) fn named(name: &str) -> Named<'_> {
    let parts: Vec<&str> = name.split('.').collect();
    match parts.as_slice() {
        [.., COMING] => Named::Coming,
        [digest, "jpg" | "png"] if is_digest(digest) => Named::Photo(digest),
        [master, own, "jpg" | "png"] if is_digest(master) && is_digest(own) => {
            Named::Original(master, own)
        }
        _ => Named::Other,
    }
}

/// The digest of a photo, by the name of its file; `None` where it has no such name.
pub(crate) fn digest_of(name: &str) -> Option<Digest> {
    match named(name) {
        Named::Photo(digest) => Digest::read(digest),
        Named::Original(..) | Named::Coming | Named::Other => None,
    }
}

fn is_digest(text: &str) -> bool {
    Digest::read(text).is_some()
}

/// The file of a photo, where there is one.
pub(crate) fn find(photos: &Path, digest: &str) -> Option<PathBuf> {
    let names = ["jpg", "png"].map(|ending| photos.join(format!("{digest}.{ending}")));
    names.into_iter().find(|path| path.is_file())
}

/// The files of a folder by their names, in order; none where there is no folder.
pub(super) fn list(folder: &Path) -> Result<Vec<(String, PathBuf)>, StoreFault> {
    let fault = |error: &std::io::Error| StoreFault::file(folder, error);
    let entries = match std::fs::read_dir(folder) {
        Ok(entries) => entries,
        Err(error) if error.kind() == std::io::ErrorKind::NotFound => return Ok(Vec::new()),
        Err(error) => return Err(fault(&error)),
    };
    let mut found = Vec::new();
    for entry in entries {
        let entry = entry.map_err(|error| fault(&error))?;
        if !entry.path().is_dir() {
            found.push((
                entry.file_name().to_string_lossy().into_owned(),
                entry.path(),
            ));
        }
    }
    found.sort();
    Ok(found)
}

/// Reads a file that is to be a photo, up to the most bytes there may be.
pub(super) fn read(path: &Path) -> Result<Vec<u8>, StoreFault> {
    let fault = |error: std::io::Error| StoreFault::file(path, &error);
    let file = std::fs::File::open(path).map_err(fault)?;
    let mut bytes = Vec::new();
    let most = MOST_BYTES.saturating_add(1);
    file.take(most).read_to_end(&mut bytes).map_err(fault)?;
    let found = u64::try_from(bytes.len()).unwrap_or(u64::MAX);
    if found > MOST_BYTES {
        return Err(PhotoFault::TooLarge {
            found,
            most: MOST_BYTES,
        }
        .into());
    }
    Ok(bytes)
}

/// Writes a file so that it lasts under its name, whole or not at all: to a temporary name, synced,
/// renamed, the folder synced. One that is there with these bytes stays.
pub(super) fn put(folder: &Path, name: &str, bytes: &[u8]) -> Result<PathBuf, StoreFault> {
    make(folder)?;
    let kept = folder.join(name);
    if !std::fs::read(&kept).is_ok_and(|there| there == bytes) {
        let coming = folder.join(format!("{name}.{COMING}"));
        let written = std::fs::File::create(&coming).and_then(|mut file| {
            file.write_all(bytes)?;
            file.sync_all()
        });
        let put = written.and_then(|()| std::fs::rename(&coming, &kept));
        if let Err(error) = put {
            // What was begun takes room; where it can't be removed it is told as a stray.
            let _left = std::fs::remove_file(&coming);
            return Err(StoreFault::file(&kept, &error));
        }
    }
    // Where the file was there already, a cut may have come between its name and this.
    sync(folder)?;
    Ok(kept)
}

/// Makes a folder below that of photos, lastingly.
fn make(folder: &Path) -> Result<(), StoreFault> {
    if folder.is_dir() {
        return Ok(());
    }
    std::fs::create_dir(folder).map_err(|error| StoreFault::file(folder, &error))?;
    folder.parent().map_or(Ok(()), sync)
}
