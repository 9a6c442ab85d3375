//! Recovering.

use super::RecoverFault;
use super::joined::{Joined, join};
use super::salvage::{Row, damage, salvage};
use crate::backup::{Passphrase, Photos, Taking, Watch, check, photo};
use crate::logbook::{Clock, Logbook};
use crate::store::{self, DATABASE, PHOTOS, StoreFault, Swap};
use baywalk_domain::walk::{Act, Recovery};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

/// What is to be recovered, and from what.
#[derive(Debug, Clone, Copy)]
pub struct Wish<'a> {
    /// The folder of the damaged store; no logbook may have it open.
    pub folder: &'a Path,
    /// A backup to fill it up from.
    pub backup: Option<&'a Path>,
    /// Its passphrase, where it has one.
    pub passphrase: Option<&'a Passphrase>,
}

/// What was recovered.
#[derive(Debug)]
pub struct Recovered {
    /// The new logbook, open.
    pub logbook: Logbook,
    /// How the old one was damaged.
    pub damage: StoreFault,
    /// What is whole, what was sealed anew, what is missing.
    pub recovery: Recovery,
    /// The digests of photos that entries name and that are not there, or damaged.
    pub photos_missing: Vec<String>,
    /// Where the damaged one is kept.
    pub kept: Option<PathBuf>,
}

/// Recovers what can be read of a damaged logbook into a new one, which takes its place; the
/// damaged one is renamed and kept.
///
/// # Errors
/// [`RecoverFault`] where nothing is damaged, nothing can be read, the backup does not fit or the
/// new one can't be written; the damaged one is as it was then.
pub fn recover(
    wish: &Wish<'_>,
    clock: Box<dyn Clock>,
    watch: &mut Watch<'_>,
) -> Result<Recovered, RecoverFault> {
    if !wish.folder.join(DATABASE).exists() {
        return Err(RecoverFault::None);
    }
    let now = clock.now();
    let held = store::lock(wish.folder, &now)?;
    let damage = damage(wish.folder)?.ok_or(RecoverFault::Whole)?;
    let mut taking = match wish.backup {
        Some(path) => {
            check(path, wish.passphrase, watch)?;
            Some(Taking::open(path, wish.passphrase)?)
        }
        None => None,
    };
    let joined = join(&salvage(wish.folder), &rows(taking.as_mut())?);
    if joined.whole.is_empty() && joined.rest.is_empty() {
        return Err(RecoverFault::Nothing);
    }
    let swap = Swap::of(wish.folder);
    swap.clear()?;
    let coming = swap.coming();
    let made = make(wish.folder, &coming, &joined, taking.as_mut(), clock);
    let (clock, photos_missing) = made.inspect_err(|_| {
        // What was begun takes room; where it can't be removed the next recovery does.
        let _left = std::fs::remove_dir_all(&coming);
    })?;
    let kept = swap.swap(&now.wall)?;
    drop(held);
    Ok(Recovered {
        logbook: Logbook::open(wish.folder, clock)?,
        damage,
        recovery: joined.recovery,
        photos_missing,
        kept,
    })
}

/// The rows of a backup.
fn rows(taking: Option<&mut Taking>) -> Result<BTreeMap<u64, Row>, RecoverFault> {
    let mut rows = BTreeMap::new();
    if let Some(taking) = taking {
        for line in taking.lines()? {
            let line = line.map_err(crate::backup::ArchiveFault::from)?;
            let digest = line.head.digest;
            let body = line.body;
            rows.insert(line.head.seq, Row { body, digest });
        }
    }
    Ok(rows)
}

/// Makes the new store; gives the photos that are missing.
fn make(
    folder: &Path,
    coming: &Path,
    joined: &Joined,
    taking: Option<&mut Taking>,
    clock: Box<dyn Clock>,
) -> Result<(Box<dyn Clock>, Vec<String>), RecoverFault> {
    let mut logbook = Logbook::open(coming, clock)?;
    let told = Act::Recovered(joined.recovery.clone());
    logbook.take_recovered(&joined.whole, &told, &joined.rest)?;
    let missing = photos(&logbook, folder, coming, taking)?;
    let verified = logbook.verify()?;
    if let Some(misfit) = verified.broken {
        return Err(StoreFault::Unexpected(misfit.to_string()).into());
    }
    Ok((logbook.close(), missing))
}

/// Brings the photos that entries name, from the old store or the backup.
fn photos(
    logbook: &Logbook,
    folder: &Path,
    coming: &Path,
    mut taking: Option<&mut Taking>,
) -> Result<Vec<String>, RecoverFault> {
    let there = Photos::list(&folder.join(PHOTOS))?;
    let to = coming.join(PHOTOS);
    let (mut bytes, mut missing) = (Vec::new(), Vec::new());
    for digest in logbook.photos_named()? {
        let found = there.read(&digest, &mut bytes).map(str::to_owned);
        let found = found.or_else(|| taking.as_mut()?.find_photo(&digest, &mut bytes));
        match found {
            Some(file) => photo(&to, &file, &bytes)?,
            None => missing.push(digest),
        }
    }
    Ok(missing)
}
