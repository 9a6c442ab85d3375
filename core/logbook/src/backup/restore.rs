//! Restoring: checked first, made anew beside what is there, put in its place at the end.

use super::check::{Archive, check};
use super::compare::{Present, present};
use super::read::Taking;
use super::watch::{Count, Step};
use super::{ArchiveFault, Passphrase, RestoreFault, Watch};
use crate::ledger::Head;
use crate::lines;
use crate::logbook::{Clock, Logbook};
use crate::store::{self, PHOTOS, Swap};
use baywalk_domain::walk::Act;
use std::path::{Path, PathBuf};

/// What is to be restored, and where.
#[derive(Debug, Clone, Copy)]
pub struct Wish<'a> {
    /// The folder of the store; no logbook may have it open.
    pub folder: &'a Path,
    /// The backup.
    pub from: &'a Path,
    /// Its passphrase, where it has one.
    pub passphrase: Option<&'a Passphrase>,
    /// Whether a logbook that is there may be replaced.
    pub replace: bool,
}

/// What was restored.
#[derive(Debug)]
pub struct Restored {
    /// The logbook, open.
    pub logbook: Logbook,
    /// The backup it came from.
    pub archive: Archive,
    /// What was there before.
    pub replaced: Option<Present>,
    /// Where that is kept now.
    pub kept: Option<PathBuf>,
}

/// Checks a backup and tells what a restore would replace; touches nothing.
///
/// # Errors
/// [`ArchiveFault`] where the backup can't be restored.
pub fn plan(
    wish: &Wish<'_>,
    watch: &mut Watch<'_>,
) -> Result<(Archive, Option<Present>), ArchiveFault> {
    let archive = check(wish.from, wish.passphrase, watch)?;
    let present = present(wish.folder, &archive);
    Ok((archive, present))
}

/// Restores a backup. Until the new store is whole and lasting, what is there is not touched; then
/// it is renamed and kept. The first new entry names the backup's last entry and the one replaced;
/// an open walk needs a new proof.
///
/// # Errors
/// [`RestoreFault`] with why not; the store is as it was then.
pub fn restore(
    wish: &Wish<'_>,
    clock: Box<dyn Clock>,
    watch: &mut Watch<'_>,
) -> Result<Restored, RestoreFault> {
    let (archive, present) = plan(wish, watch)?;
    if let Some(present) = present.as_ref().filter(|_| !wish.replace) {
        return Err(RestoreFault::WouldReplace(Box::new(present.clone())));
    }
    let now = clock.now();
    let held = wish.folder.is_dir().then(|| store::lock(wish.folder, &now));
    let held = held.transpose()?;
    let swap = Swap::of(wish.folder);
    swap.clear()?;
    let coming = swap.coming();
    let was = present.as_ref().and_then(|present| present.head);
    let made = make(wish, &coming, was, clock, watch);
    let clock = made.inspect_err(|_| {
        // What was begun takes room; where it can't be removed the next restore does.
        let _left = std::fs::remove_dir_all(&coming);
    })?;
    let kept = swap.swap(&now.wall)?;
    drop(held);
    let mut logbook = Logbook::open(wish.folder, clock)?;
    if let Some(head) = archive.manifest.head() {
        logbook.note_backup(head)?;
    }
    Ok(Restored {
        logbook,
        archive,
        replaced: present,
        kept,
    })
}

/// Makes the new store in a folder of its own.
fn make(
    wish: &Wish<'_>,
    coming: &Path,
    was: Option<Head>,
    clock: Box<dyn Clock>,
    watch: &mut Watch<'_>,
) -> Result<Box<dyn Clock>, RestoreFault> {
    let mut taking = Taking::open(wish.from, wish.passphrase)?;
    let needed = taking.size().saturating_mul(2);
    let free = store::room(coming)?;
    if free < needed {
        return Err(RestoreFault::NoRoom { needed, free });
    }
    let mut logbook = Logbook::open(coming, clock)?;
    let mut count = Count::new(watch, Step::Making, taking.size());
    taking.photos(&coming.join(PHOTOS), &mut count)?;
    let head = logbook.take_lines::<RestoreFault>(taking.lines()?)?;
    let verified = logbook.verify()?;
    if verified.broken.is_some() || verified.digest != head.digest {
        return Err(ArchiveFault::Head.into());
    }
    logbook.tell_origin(&Act::FromBackup {
        backup: head.mark(),
        replaced: was.map(Head::mark),
    })?;
    count.add(0)?;
    Ok(logbook.close())
}

/// Takes exported lines into a store that has no entry yet; an open walk needs a new proof.
pub(crate) fn import(
    logbook: &mut Logbook,
    from: impl std::io::BufRead,
) -> Result<Head, RestoreFault> {
    if logbook.digest() != Head::START {
        let held = Present::of(logbook)?;
        return Err(RestoreFault::WouldReplace(Box::new(held)));
    }
    let head = logbook.take_lines::<RestoreFault>(lines::Lines::new(from))?;
    logbook.tell_open_walks(&Act::FromBackup {
        backup: head.mark(),
        replaced: None,
    })?;
    Ok(head)
}
