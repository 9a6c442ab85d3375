//! What can go wrong with a backup.

use super::compare::Present;
use super::watch::Stopped;
use crate::lines::LinesFault;
use crate::store::StoreFault;
use std::path::{Path, PathBuf};

/// Why no backup was made. Nothing is left of it then.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum BackupFault {
    /// It was stopped.
    #[error("stopped")]
    Stopped,
    /// A file of that name is there already.
    #[error("{} is there already", .0.display())]
    Exists(PathBuf),
    /// The store can't be read, or the target can't be written.
    #[error(transparent)]
    Store(#[from] StoreFault),
    /// What was written does not read back as it should.
    #[error("it does not read back: {0}")]
    ReadBack(ArchiveFault),
}

/// Why a file is no backup that can be restored.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum ArchiveFault {
    /// It was stopped.
    #[error("stopped")]
    Stopped,
    /// The file can't be read.
    #[error("it can't be read: {0}")]
    Unread(String),
    /// It is no archive, or one that was cut off.
    #[error("it is no archive, or was cut off: {0}")]
    NotAnArchive(String),
    /// It has a passphrase.
    #[error("it has a passphrase")]
    NeedsPassphrase,
    /// The passphrase is not the one it was made with.
    #[error("the passphrase does not open it")]
    WrongPassphrase,
    /// It takes more work to open than a phone can do.
    #[error("its passphrase takes too much work: {found}, at most {most}")]
    TooMuchWork {
        /// The work factor, as a power of two.
        found: u8,
        /// The most that is accepted.
        most: u8,
    },
    /// It is of a newer version.
    #[error("it has version {found}; this program reads up to {known}")]
    TooNew {
        /// Its version.
        found: u64,
        /// The newest version that is read.
        known: u32,
    },
    /// A member can't be.
    #[error("{name}: {why}")]
    Member {
        /// Its name.
        name: String,
        /// Why.
        why: MemberFault,
    },
    /// A byte outside of the photos was changed, or something was added or cut off.
    #[error("its seal does not fit")]
    Seal,
    /// The manifest can't be read.
    #[error("its manifest can't be read: {0}")]
    Manifest(String),
    /// The ledger in it does not fit.
    #[error(transparent)]
    Lines(#[from] LinesFault),
    /// The ledger ends at another entry than the manifest says.
    #[error("its ledger ends at another entry than its manifest says")]
    Head,
}

/// Why a member of an archive can't be.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum MemberFault {
    /// It has a name that no backup has.
    #[error("no backup has a member of this name")]
    Name,
    /// The name stands twice.
    #[error("it stands twice")]
    Twice,
    /// It is a link or a folder.
    #[error("it is a link or a folder")]
    NoFile,
    /// It is compressed or encrypted by itself; nothing in a backup is.
    #[error("it is compressed or encrypted")]
    Packed,
    /// It is too large.
    #[error("it is too large")]
    TooLarge,
    /// It lies over another one or outside of the file.
    #[error("it lies over another one or outside of the file")]
    Place,
    /// It has not the size or the digest that it should.
    #[error("its bytes are not those that it should have")]
    Bytes,
    /// It is missing.
    #[error("it is missing")]
    Missing,
    /// No entry names it.
    #[error("no entry names it")]
    NotNamed,
}

/// Why a backup was not restored, or lines were not imported. The store is as it was then.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum RestoreFault {
    /// The backup can't be restored.
    #[error(transparent)]
    Archive(#[from] ArchiveFault),
    /// Something is there that would be replaced, and nobody said that it may.
    #[error("a logbook is there already")]
    WouldReplace(Box<Present>),
    /// There is not enough room.
    #[error("{free} bytes are free, {needed} are needed")]
    NoRoom {
        /// The bytes that are needed.
        needed: u64,
        /// The bytes that are free.
        free: u64,
    },
    /// The store can't be read or written.
    #[error(transparent)]
    Store(#[from] StoreFault),
}

impl From<Stopped> for BackupFault {
    fn from(_: Stopped) -> Self {
        Self::Stopped
    }
}

impl From<Stopped> for ArchiveFault {
    fn from(_: Stopped) -> Self {
        Self::Stopped
    }
}

impl From<Stopped> for RestoreFault {
    fn from(_: Stopped) -> Self {
        Self::Archive(ArchiveFault::Stopped)
    }
}

impl From<LinesFault> for RestoreFault {
    fn from(fault: LinesFault) -> Self {
        Self::Archive(fault.into())
    }
}

impl BackupFault {
    /// The target can't be written.
    pub(super) fn target(path: &Path, error: &std::io::Error) -> Self {
        Self::Store(StoreFault::file(path, error))
    }
}

impl ArchiveFault {
    /// A member can't be.
    pub(super) fn member(name: &str, why: MemberFault) -> Self {
        Self::Member {
            name: name.chars().take(120).collect(),
            why,
        }
    }
}

impl From<std::io::Error> for ArchiveFault {
    fn from(error: std::io::Error) -> Self {
        Self::Unread(error.to_string())
    }
}
