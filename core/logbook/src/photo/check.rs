//! Photos held against the ledger: what an entry names and is not there, what is there and no
//! entry names.

use super::KeptPhoto;
use super::files::{self, Named, ORIGINALS, SMALL, named};
use crate::ledger::{self, Digest};
use crate::store::{Store, StoreFault, sync};
use baywalk_domain::finding::About;
use baywalk_domain::ids::RigId;
use baywalk_domain::walk::Act;
use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

/// What a check of the photos found.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct PhotoCheck {
    /// How many entries name a photo.
    pub entered: usize,
    /// Photos that an entry names and that are not there as they were.
    pub missing: Vec<MissingPhoto>,
    /// Files that no entry names.
    pub strays: Vec<Stray>,
}

/// A photo that an entry names and that is not there as it was.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct MissingPhoto {
    /// The number of the entry.
    pub seq: u64,
    /// The rig.
    pub rig: RigId,
    /// What the photo shows.
    pub about: About,
    /// Its SHA-256, in hexadecimal.
    pub digest: String,
    /// What is so with it.
    pub why: MissingWhy,
}

/// What is so with a missing photo.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum MissingWhy {
    /// Its file is gone.
    Gone,
    /// Its file has other bytes than were entered.
    Changed,
    /// Its file can't be read.
    Unreadable,
    /// The picture as it came has other bytes than were kept; the photo itself is there.
    OriginalChanged,
}

/// A file in the folders of photos that no entry names.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Stray {
    /// The file.
    pub path: PathBuf,
    /// How many bytes it has.
    pub bytes: u64,
    /// What it is.
    pub why: StrayWhy,
}

/// What a stray file is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum StrayWhy {
    /// A photo that was kept and not entered, or what belongs to one.
    NotEntered,
    /// A file that was not written to its end.
    Unfinished,
    /// Not a file of ours; it is never removed.
    NotOurs,
}

impl Store {
    /// Holds the photos against the ledger; every file is hashed again.
    pub(crate) fn check_photos(&self) -> Result<PhotoCheck, StoreFault> {
        let photos = self.photos();
        let entries = ledger::of_kind(self.conn(), "photo")?;
        let entered: BTreeSet<String> = entries.iter().filter_map(digest_in).collect();
        let changed = self.changed_originals(&entered)?;
        let mut known = BTreeMap::new();
        let mut check = PhotoCheck {
            entered: entries.len(),
            strays: self.strays(&entered)?,
            ..PhotoCheck::default()
        };
        for ledger::Numbered { seq, entry } in entries {
            let Act::Photo { about, digest, .. } = entry.act else {
                continue;
            };
            let state = known.entry(digest.clone());
            let original = changed
                .contains(&digest)
                .then_some(MissingWhy::OriginalChanged);
            if let Some(why) = state
                .or_insert_with(|| fault_of(&photos, &digest))
                .or(original)
            {
                check.missing.push(MissingPhoto {
                    seq,
                    rig: entry.rig,
                    about,
                    digest,
                    why,
                });
            }
        }
        Ok(check)
    }

    /// The masters whose pictures as they came have other bytes than were kept.
    fn changed_originals(
        &self,
        entered: &BTreeSet<String>,
    ) -> Result<BTreeSet<String>, StoreFault> {
        let kept = self.photos_kept(entered)?;
        Ok(kept.iter().filter_map(changed_original).collect())
    }

    /// The files of photos that were not entered, and those that are no photos.
    fn strays(&self, entered: &BTreeSet<String>) -> Result<Vec<Stray>, StoreFault> {
        let photos = self.photos();
        let mut strays = Vec::new();
        for folder in [photos.clone(), photos.join(SMALL), photos.join(ORIGINALS)] {
            for (name, path) in files::list(&folder)? {
                let why = match named(&name) {
                    Named::Photo(digest) | Named::Original(digest, _) => {
                        if entered.contains(digest) {
                            continue;
                        }
                        StrayWhy::NotEntered
                    }
                    Named::Coming => StrayWhy::Unfinished,
                    Named::Other => StrayWhy::NotOurs,
                };
                let bytes = std::fs::metadata(&path).map_or(0, |data| data.len());
                strays.push(Stray { path, bytes, why });
            }
        }
        Ok(strays)
    }

    /// Removes the files that no entry names and that are ours; gives what was removed.
    pub(crate) fn remove_strays(&self) -> Result<Vec<Stray>, StoreFault> {
        let mut strays = self.strays(&self.photos_entered()?)?;
        strays.retain(|stray| stray.why != StrayWhy::NotOurs);
        for stray in &strays {
            std::fs::remove_file(&stray.path)
                .map_err(|error| StoreFault::file(&stray.path, &error))?;
        }
        sync(&self.photos())?;
        Ok(strays)
    }
}

/// The digest of the photo that an entry names.
fn digest_in(numbered: &ledger::Numbered) -> Option<String> {
    match &numbered.entry.act {
        Act::Photo { digest, .. } => Some(digest.clone()),
        _ => None,
    }
}

/// What is so with the file of a photo; `None` where it is there as it was.
fn fault_of(photos: &Path, digest: &str) -> Option<MissingWhy> {
    let Some(path) = files::find(photos, digest) else {
        return Some(MissingWhy::Gone);
    };
    match is_of(&path, digest) {
        Ok(true) => None,
        Ok(false) => Some(MissingWhy::Changed),
        Err(_) => Some(MissingWhy::Unreadable),
    }
}

/// The master of a picture as it came that has other bytes than were kept.
fn changed_original(kept: &KeptPhoto) -> Option<String> {
    match named(kept.name.strip_prefix(ORIGINALS)?.strip_prefix('/')?) {
        Named::Original(master, own) if !is_of(&kept.path, own).unwrap_or(false) => {
            Some(master.to_owned())
        }
        _ => None,
    }
}

/// Whether the bytes of a file have a digest.
fn is_of(path: &Path, digest: &str) -> std::io::Result<bool> {
    Ok(Digest::of(&std::fs::read(path)?).to_string() == digest)
}
