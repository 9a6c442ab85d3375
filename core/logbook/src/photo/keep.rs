//! Keeping photos in the store.

use super::files::{self, Named, ORIGINALS, SMALL, named};
use super::{make, thumbnail};
use crate::ledger::{self, Digest};
use crate::store::{Store, StoreFault};
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

/// The key under which it is kept whether pictures are kept as they came.
const KEEP_ORIGINALS: &str = "keep_originals";

/// A file of photos that an entry of the ledger stands on, and that belongs in a backup.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct KeptPhoto {
    /// Its name below the folder of photos, with forward slashes.
    pub(crate) name: String,
    /// Where it is.
    pub(crate) path: PathBuf,
    /// The SHA-256 that its bytes must have, in hexadecimal.
    pub(crate) digest: String,
}

impl Store {
    /// Takes a photo in and gives the digest of its master. What is given is lasting.
    pub(crate) fn add_photo(&self, path: &Path) -> Result<Digest, StoreFault> {
        let made = make(files::read(path)?, self.keeps_originals()?)?;
        let digest = Digest::of(&made.master);
        let photos = self.photos();
        if let Some((original, ending)) = &made.original {
            let name = format!("{digest}.{}.{ending}", Digest::of(original));
            files::put(&photos.join(ORIGINALS), &name, original)?;
        }
        let name = format!("{digest}.jpg");
        files::put(&photos.join(SMALL), &name, &made.thumbnail)?;
        files::put(&photos, &name, &made.master)?;
        Ok(digest)
    }

    /// Whether pictures are kept as they came, beside their masters.
    pub(crate) fn keeps_originals(&self) -> Result<bool, StoreFault> {
        Ok(self.scratch(KEEP_ORIGINALS)?.is_some())
    }

    /// Sets whether pictures are kept as they came.
    pub(crate) fn set_keeps_originals(&self, keep: bool) -> Result<(), StoreFault> {
        self.set_scratch(KEEP_ORIGINALS, keep.then_some("yes"))
    }

    /// The thumbnail of a photo, made where it is not there or where it is to be made anew.
    pub(crate) fn thumbnail(&self, digest: &str, anew: bool) -> Result<PathBuf, StoreFault> {
        let photos = self.photos();
        let (folder, name) = (photos.join(SMALL), format!("{digest}.jpg"));
        let there = folder.join(&name);
        if !anew && there.is_file() {
            return Ok(there);
        }
        let photo = files::find(&photos, digest).ok_or(StoreFault::NotFound("photo"))?;
        files::put(&folder, &name, &thumbnail(files::read(&photo)?)?)
    }

    /// The digests that entries name, struck ones too: what was struck stays readable.
    pub(crate) fn photos_entered(&self) -> Result<BTreeSet<String>, StoreFault> {
        Ok(ledger::photos(self.conn())?.into_iter().collect())
    }

    /// The files that entries stand on and that are there: masters, and pictures as they came.
    pub(super) fn photos_kept(
        &self,
        entered: &BTreeSet<String>,
    ) -> Result<Vec<KeptPhoto>, StoreFault> {
        let photos = self.photos();
        let mut kept = Vec::new();
        for (name, path) in files::list(&photos)? {
            if let Named::Photo(digest) = named(&name)
                && entered.contains(digest)
            {
                let digest = digest.to_owned();
                kept.push(KeptPhoto { name, path, digest });
            }
        }
        for (name, path) in files::list(&photos.join(ORIGINALS))? {
            if let Named::Original(master, own) = named(&name)
                && entered.contains(master)
            {
                let digest = own.to_owned();
                let name = format!("{ORIGINALS}/{name}");
                kept.push(KeptPhoto { name, path, digest });
            }
        }
        Ok(kept)
    }
}
