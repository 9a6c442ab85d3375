//! Folders and files that must be there after a power cut.

use super::StoreFault;
use std::path::Path;

/// Makes the folder of a store with its folder of photos, lastingly.
pub(super) fn make(folder: &Path) -> Result<(), StoreFault> {
    let photos = folder.join(super::PHOTOS);
    if photos.is_dir() {
        return Ok(());
    }
    std::fs::create_dir_all(&photos).map_err(|error| StoreFault::file(&photos, &error))?;
    sync(folder)?;
    folder
        .parent()
        .filter(|parent| parent.is_dir())
        .map_or(Ok(()), sync)
}

/// Makes the files of a store and their names last.
pub(super) fn sync_all(folder: &Path) -> Result<(), StoreFault> {
    let fault = |error: std::io::Error| StoreFault::file(folder, &error);
    for entry in std::fs::read_dir(folder).map_err(fault)? {
        let path = entry.map_err(fault)?.path();
        if path.is_dir() {
            sync_all(&path)?;
        } else {
            let synced = std::fs::File::open(&path).and_then(|file| file.sync_all());
            synced.map_err(|error| StoreFault::file(&path, &error))?;
        }
    }
    sync(folder)
}

/// Makes the names in a folder last.
#[cfg(unix)]
pub(crate) fn sync(folder: &Path) -> Result<(), StoreFault> {
    std::fs::File::open(folder)
        .and_then(|folder| folder.sync_all())
        .map_err(|error| StoreFault::file(folder, &error))
}

/// Makes the names in a folder last; other systems do it by themselves.
#[cfg(not(unix))]
pub(crate) fn sync(_folder: &Path) -> Result<(), StoreFault> {
    Ok(())
}
