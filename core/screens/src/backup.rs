//! Keeping a copy: writing a backup, and reminding of one.

use crate::named::count;
use crate::{Core, Problem, safe};
use baywalk_logbook::backup::{Job, Made, Passphrase, Watch};
use baywalk_words::Words;
use serde::Serialize;
use std::path::Path;

/// A backup that was made.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct BackupScreen {
    /// Where it is.
    pub path: String,
    /// The number of entries.
    pub entries: u64,
    /// The newest digest, in hexadecimal.
    pub digest: String,
    /// The number of photos.
    pub photos: u32,
    /// Its bytes.
    pub bytes: u64,
    /// The digests of photos that are missing from it.
    pub missing: Vec<String>,
    /// In words.
    pub words: Vec<String>,
}

/// Writes the whole logbook into one file, reads it back, and notes that it was done.
///
/// # Errors
/// [`Problem`] where it was stopped, the file is there already or can't be written; nothing is left
/// of it then.
pub fn write(
    core: &mut Core,
    to: &Path,
    passphrase: Option<&Passphrase>,
    watch: &mut Watch<'_>,
) -> Result<BackupScreen, Problem> {
    let job = begin(core)?;
    let made = carry_out(&core.words, job, to, passphrase, watch)?;
    finish(core, made, passphrase.is_some())
}

/// Takes the logbook as it stands now for a backup; acts may go on while it is written.
///
/// # Errors
/// [`Problem`] where the logbook can't be read.
pub fn begin(core: &Core) -> Result<Job, Problem> {
    core.logbook.backup().map_err(|fault| core.storage(&fault))
}

/// Writes what was taken into one file and reads it back.
///
/// # Errors
/// [`Problem`] as [`write()`].
pub fn carry_out(
    words: &Words,
    job: Job,
    to: &Path,
    passphrase: Option<&Passphrase>,
    watch: &mut Watch<'_>,
) -> Result<Made, Problem> {
    let made = job.write(to, passphrase, watch);
    made.map_err(|fault| safe::backup_fault(words, &fault))
}

/// Notes that a backup was made and tells of it.
///
/// # Errors
/// [`Problem`] where it can't be noted.
pub fn finish(core: &mut Core, made: Made, sealed: bool) -> Result<BackupScreen, Problem> {
    core.logbook.note_backup(made.head)?;
    let words = &core.words;
    let path = made.path.display().to_string();
    let mut told = vec![words.fill(
        "backup-made",
        &[
            ("path", path.as_str().into()),
            ("entries", made.head.seq.into()),
            ("photos", made.photos.into()),
        ],
    )];
    if !made.missing.is_empty() {
        let count = made.missing.len();
        told.push(words.fill("backup-photos-missing", &[("count", count.into())]));
    }
    told.push(match sealed {
        true => words.say("backup-with-passphrase"),
        false => words.say("backup-without-passphrase"),
    });
    Ok(BackupScreen {
        path,
        entries: made.head.seq,
        digest: made.head.digest.to_string(),
        photos: count(made.photos),
        bytes: made.bytes,
        missing: made.missing,
        words: told,
    })
}

/// What no backup has yet, in words; `None` where all is backed up.
///
/// # Errors
/// [`Problem`] where the logbook can't be read.
pub fn reminder(core: &Core) -> Result<Option<String>, Problem> {
    let since = core.logbook.since_backup()?;
    if since.entries == 0 {
        return Ok(None);
    }
    let (entries, walks) = (since.entries.into(), since.walks.into());
    let words = &core.words;
    Ok(Some(match since.last {
        None => words.fill("backup-never", &[("entries", entries), ("walks", walks)]),
        Some(day) => words.fill(
            "backup-since",
            &[
                ("entries", entries),
                ("walks", walks),
                ("date", words.date(day).into()),
            ],
        ),
    }))
}
