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
