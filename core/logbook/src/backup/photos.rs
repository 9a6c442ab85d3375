//! The photos in a store, by their digests.

use crate::ledger::Digest;
use crate::photo::{MOST_BYTES as MOST_PHOTO_BYTES, digest_of};
use crate::store::StoreFault;
use std::collections::BTreeMap;
use std::io::Read;
use std::path::{Path, PathBuf};

/// The files of a folder of photos that have the name of a digest.
#[derive(Debug)]
pub(crate) struct Photos {
    folder: PathBuf,
    files: BTreeMap<String, (String, u64)>,
}

impl Photos {
    /// Lists a folder; one that is not there has none.
    pub(crate) fn list(folder: &Path) -> Result<Self, StoreFault> {
        let fault = |error: std::io::Error| StoreFault::file(folder, &error);
        let mut files = BTreeMap::new();
        let entries = match std::fs::read_dir(folder) {
            Err(error) if error.kind() == std::io::ErrorKind::NotFound => None,
            entries => Some(entries.map_err(fault)?),
        };
        for entry in entries.into_iter().flatten() {
            let entry = entry.map_err(fault)?;
            let Ok(name) = entry.file_name().into_string() else {
                continue;
            };
            let found = digest_of(&name).zip(entry.metadata().ok());
            if let Some((digest, about)) = found.filter(|(_, about)| about.is_file()) {
                files.insert(digest.to_string(), (name, about.len()));
            }
        }
        let folder = folder.to_owned();
        Ok(Self { folder, files })
    }

    /// The bytes of some photos together.
    pub(crate) fn size<'a>(&self, named: impl Iterator<Item = &'a String>) -> u64 {
        let sizes = named.filter_map(|digest| self.files.get(digest));
        sizes.map(|(_, size)| size).sum()
    }

    /// The name of a photo's file, and its bytes into a buffer; `None` where it is not there, or
    /// its bytes are not those of its name.
    pub(crate) fn read(&self, digest: &str, bytes: &mut Vec<u8>) -> Option<&str> {
        let (name, _) = self.files.get(digest)?;
        bytes.clear();
        let file = std::fs::File::open(self.folder.join(name)).ok()?;
        let read = file
            .take(MOST_PHOTO_BYTES.saturating_add(1))
            .read_to_end(bytes);
        let size = u64::try_from(read.ok()?).ok()?;
        let whole = size <= MOST_PHOTO_BYTES && Digest::of(bytes).to_string() == digest;
        whole.then_some(name.as_str())
    }
}
