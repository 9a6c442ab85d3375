//! A backup as a job: it holds the logbook as it stood, and can be done beside it.

use super::{BackupFault, Passphrase, Watch, write};
use crate::ledger::Head;
use crate::store::Reader;
use baywalk_domain::moment::Moment;
use std::path::{Path, PathBuf};

/// A backup to be written: the logbook as it stood when this was made. What is entered meanwhile is
/// not in it.
#[derive(Debug)]
pub struct Job {
    pub(super) reader: Reader,
    pub(super) now: Moment,
}

/// A backup that was made and read back.
#[derive(Debug, Clone, PartialEq)]
pub struct Made {
    /// Where it is.
    pub path: PathBuf,
    /// The last entry in it.
    pub head: Head,
    /// The number of photos in it.
    pub photos: usize,
    /// Its bytes.
    pub bytes: u64,
    /// The digests of photos that entries name and that were not there, or damaged.
    pub missing: Vec<String>,
}

impl Job {
    pub(crate) const fn new(reader: Reader, now: Moment) -> Self {
        Self { reader, now }
    }

    /// Writes the backup: under a temporary name beside the target, synced, read back and checked,
    /// and only then under its name.
    ///
    /// # Errors
    /// [`BackupFault`] where it was stopped, a file of that name is there, the store can't be read,
    /// the target can't be written or does not read back; nothing is left of it then.
    pub fn write(
        self,
        to: &Path,
        passphrase: Option<&Passphrase>,
        watch: &mut Watch<'_>,
    ) -> Result<Made, BackupFault> {
        write::write(&self, to, passphrase, watch)
    }
}
