//! The entries as JSON Lines.

use crate::{Core, Problem, ProblemKind, safe};
use baywalk_logbook::ledger::Head;
use serde::Serialize;
use std::io::{BufRead, Write};

/// Entries that were written or taken in.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct LinesScreen {
    /// The number of entries.
    pub entries: u64,
    /// The digest of the last one, in hexadecimal.
    pub digest: String,
    /// In words.
    pub words: String,
}

/// Writes all entries.
///
/// # Errors
/// [`Problem`] where the logbook can't be read or the lines can't be written.
pub fn export(core: &Core, out: impl Write) -> Result<LinesScreen, Problem> {
    let head = core
        .logbook
        .export(out)
        .map_err(|fault| core.storage(&fault))?;
    told(core, "backup-exported", head)
}

/// Takes exported entries into a logbook that has none yet.
///
/// # Errors
/// [`Problem`] where a line does not fit or the logbook has entries; nothing is changed then.
pub fn import(core: &mut Core, from: impl BufRead) -> Result<LinesScreen, Problem> {
    let taken = core.logbook.import(from);
    let head = taken.map_err(|fault| match fault {
        baywalk_logbook::backup::RestoreFault::WouldReplace(_) => Problem::new(
            ProblemKind::Refused,
            core.words.say("backup-import-into-empty"),
        ),
        fault => safe::restore_fault(&core.words, &fault),
    })?;
    told(core, "backup-imported", head)
}

/// How many entries there are, the newest digest, and that photos go another way.
fn told(core: &Core, key: &str, head: Head) -> Result<LinesScreen, Problem> {
    let (entries, digest) = (head.seq, head.digest.to_string());
    let args = [
        ("entries", entries.into()),
        ("digest", digest.as_str().into()),
    ];
    let named = core.logbook.photos_named()?.len();
    let photos = core
        .words
        .fill("past-photos-apart", &[("count", named.into())]);
    let words = format!("{} {photos}", core.words.fill(key, &args));
    Ok(LinesScreen {
        entries,
        digest,
        words,
    })
}
