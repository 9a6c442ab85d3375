//! What was done to the files of a watched folder.

use std::path::PathBuf;
use std::sync::Arc;

/// A file, whatever its name is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct FileId(pub usize);

/// One change, in the order in which they were made. Paths start from the watched folder.
#[derive(Debug, Clone)]
pub enum Op {
    /// A new file got a name.
    Create {
        /// Its name.
        path: PathBuf,
        /// The file.
        file: FileId,
    },
    /// Bytes were written.
    Write {
        /// The file.
        file: FileId,
        /// Where.
        at: usize,
        /// What.
        bytes: Arc<[u8]>,
    },
    /// A length was set.
    Length {
        /// The file.
        file: FileId,
        /// The length.
        length: usize,
    },
    /// A file was synced.
    Sync {
        /// The file.
        file: FileId,
    },
    /// The names in a folder were synced.
    SyncFolder {
        /// The folder.
        path: PathBuf,
    },
    /// A name was taken away.
    Unlink {
        /// The name.
        path: PathBuf,
    },
    /// A file or folder got another name.
    Rename {
        /// The name before.
        from: PathBuf,
        /// The name after.
        to: PathBuf,
    },
    /// A folder was made.
    Folder {
        /// Its name.
        path: PathBuf,
    },
    /// So many acts are acknowledged from here on.
    Mark(usize),
}
