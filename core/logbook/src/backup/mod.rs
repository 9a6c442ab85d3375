//! Backup: the whole logbook in one file, and back from it.
//!
//! A backup is a ZIP archive in which nothing is compressed: the ledger as JSON Lines, the photos
//! that entries name, and a manifest with the sizes and digests of all of it. With a passphrase the
//! whole archive is wrapped by `age`. docs/backup.md tells the format.

mod check;
mod compare;
mod directory;
mod fault;
mod input;
mod job;
mod manifest;
mod member;
mod output;
mod passphrase;
mod photos;
mod read;
mod restore;
mod seal;
mod steady;
mod watch;
mod write;

pub use check::{Archive, Contents, check};
pub use compare::{Present, Relation};
pub use fault::{ArchiveFault, BackupFault, MemberFault, RestoreFault};
pub use job::{Job, Made};
pub use manifest::{Listed, Manifest};
pub use passphrase::Passphrase;
pub use restore::{Restored, Wish, plan, restore};
pub use watch::{Go, Progress, Step, Watch};

pub(crate) use photos::Photos;
pub(crate) use read::{Taking, photo};
pub(crate) use restore::import;

/// The version of the format; a backup of a newer one is refused.
pub const FORMAT: u32 = 1;

/// The most members that an archive may have.
pub const MOST_MEMBERS: usize = 200_000;
