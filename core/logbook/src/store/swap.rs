//! Putting a whole new store in the place of another, so that a power cut leaves the one or the other.
//!
//! The new store is made under `NAME.coming`. When it is whole and lasting it is renamed to
//! `NAME.ready`; the store that was there is renamed to `NAME.before-DATE`; then `NAME.ready` is
//! renamed to `NAME`. A cut before the second rename leaves the old store in its place; a cut
//! behind it leaves a whole new store under `NAME.ready`, which the next opening puts in its place.
//! What was there is kept under its new name.

use super::{DATABASE, StoreFault, folder};
use chrono::{DateTime, FixedOffset};
use std::ffi::OsString;
use std::path::{Path, PathBuf};

/// The names that a swap uses, beside the folder of the store.
#[derive(Debug, Clone)]
pub(crate) struct Swap {
    folder: PathBuf,
}

impl Swap {
    /// Around the folder of a store.
    pub(crate) fn of(folder: &Path) -> Self {
        let whole = std::fs::canonicalize(folder);
        Self {
            folder: whole.unwrap_or_else(|_| folder.to_owned()),
        }
    }

    /// Where the new store is made.
    pub(crate) fn coming(&self) -> PathBuf {
        self.beside(".coming")
    }

    fn ready(&self) -> PathBuf {
        self.beside(".ready")
    }

    fn beside(&self, ending: &str) -> PathBuf {
        let mut name = self
            .folder
            .file_name()
            .map_or_else(OsString::new, ToOwned::to_owned);
        name.push(ending);
        self.folder.with_file_name(name)
    }

    /// Takes away what an earlier swap left that did not come to its end.
    pub(crate) fn clear(&self) -> Result<(), StoreFault> {
        self.finish()?;
        for left in [self.coming(), self.ready()] {
            if left.exists() {
                let gone = std::fs::remove_dir_all(&left);
                gone.map_err(|error| StoreFault::file(&left, &error))?;
            }
        }
        Ok(())
    }

    /// Puts the new store in the place of the old one; gives where the old one is kept now.
    pub(crate) fn swap(&self, now: &DateTime<FixedOffset>) -> Result<Option<PathBuf>, StoreFault> {
        folder::sync_all(&self.coming())?;
        self.rename(&self.coming(), &self.ready())?;
        let kept = self.set_aside(now)?;
        self.finish()?;
        Ok(kept)
    }

    /// Renames what is there, where something is.
    fn set_aside(&self, now: &DateTime<FixedOffset>) -> Result<Option<PathBuf>, StoreFault> {
        if !self.folder.exists() {
            return Ok(None);
        }
        let dated = now.format(".before-%Y-%m-%d-%H%M%S").to_string();
        let names = (1..).map(|n| match n {
            1 => self.beside(&dated),
            n => self.beside(&format!("{dated}-{n}")),
        });
        let free = names.into_iter().find(|name| !name.exists());
        let kept = free.unwrap_or_else(|| self.beside(&dated));
        self.rename(&self.folder, &kept)?;
        Ok(Some(kept))
    }

    /// Ends a swap that was cut off between its two last renames.
    pub(super) fn finish(&self) -> Result<(), StoreFault> {
        let ready = self.ready();
        if self.folder.exists() || !ready.join(DATABASE).exists() {
            return Ok(());
        }
        self.rename(&ready, &self.folder)
    }

    fn rename(&self, from: &Path, to: &Path) -> Result<(), StoreFault> {
        std::fs::rename(from, to).map_err(|error| StoreFault::file(to, &error))?;
        match self.folder.parent() {
            Some(parent) if !parent.as_os_str().is_empty() => folder::sync(parent),
            _ => folder::sync(Path::new(".")),
        }
    }
}
