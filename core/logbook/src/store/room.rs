//! How much room there is.

use super::StoreFault;
use std::path::Path;

/// The free bytes that this program may use where a folder stands.
pub(crate) fn room(folder: &Path) -> Result<u64, StoreFault> {
    let there = folder.ancestors().find(|folder| folder.is_dir());
    let there = there.unwrap_or(Path::new("."));
    fs4::available_space(there).map_err(|error| StoreFault::file(there, &error))
}
