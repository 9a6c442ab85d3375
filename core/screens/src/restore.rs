//! Getting the logbook back from a backup.

use crate::{Core, Problem, safe};
use baywalk_logbook::SystemClock;
use baywalk_logbook::backup::{self, Archive, Watch, Wish};
use baywalk_words::Words;
use serde::Serialize;

/// What was restored, or would be.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct RestoreScreen {
    /// Whether it was restored.
    pub done: bool,
    /// The number of entries of the backup.
    pub entries: u64,
    /// The digest of its last entry, in hexadecimal.
    pub digest: String,
    /// In words.
    pub words: Vec<String>,
}

/// Checks a backup and tells what a restore would do; touches nothing.
///
/// # Errors
/// [`Problem`] where the backup can't be restored.
pub fn plan(
    words: &Words,
    wish: &Wish<'_>,
    watch: &mut Watch<'_>,
) -> Result<RestoreScreen, Problem> {
    let (archive, present) =
        backup::plan(wish, watch).map_err(|fault| safe::archive_fault(words, &fault))?;
    let mut screen = screen(words, &archive);
    if let Some(present) = present {
        screen.words.extend(safe::present(words, &present));
    }
    Ok(screen)
}

/// Restores a backup; what was there is kept beside it.
///
/// # Errors
/// [`Problem`] where it was stopped, the backup can't be restored, or a logbook is there and nobody
/// said that it may be replaced; nothing is changed then.
pub fn restore(
    words: &Words,
    wish: &Wish<'_>,
    watch: &mut Watch<'_>,
) -> Result<(Core, RestoreScreen), Problem> {
    let restored = backup::restore(wish, Box::new(SystemClock::new()), watch)
        .map_err(|fault| safe::restore_fault(words, &fault))?;
    let mut screen = screen(words, &restored.archive);
    screen.done = true;
    screen.words.push(words.say("restore-done"));
    if let Some(kept) = &restored.kept {
        let path = kept.display().to_string();
        screen
            .words
            .push(words.fill("restore-kept", &[("path", path.into())]));
    }
    if restored.archive.contents.open_walks > 0 {
        screen.words.push(words.say("restore-new-proof"));
    }
    let (logbook, words) = (restored.logbook, *words);
    Ok((Core { logbook, words }, screen))
}

fn screen(words: &Words, archive: &Archive) -> RestoreScreen {
    let manifest = &archive.manifest;
    let made = safe::when(words, &manifest.made);
    let mut told = vec![words.fill(
        "restore-holds",
        &[
            ("made", made.into()),
            ("entries", manifest.entries.into()),
            ("rigs", archive.contents.rigs.into()),
            ("walks", archive.contents.walks.into()),
        ],
    )];
    if !manifest.missing.is_empty() {
        let count = manifest.missing.len();
        told.push(words.fill("backup-photos-missing", &[("count", count.into())]));
    }
    RestoreScreen {
        done: false,
        entries: manifest.entries,
        digest: manifest.head.clone(),
        words: told,
    }
}
