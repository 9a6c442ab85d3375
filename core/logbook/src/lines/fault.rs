//! Why lines are no ledger.

use crate::ledger::{Digest, EntryFault};

/// The first line that does not fit, and why.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("line {line}: {why}")]
pub struct LinesFault {
    /// The number of the line; the first is 1.
    pub line: u64,
    /// Why.
    pub why: LineFault,
}

/// Why a line does not fit.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum LineFault {
    /// It can't be read from the file.
    #[error("it can't be read: {0}")]
    Unread(String),
    /// It is longer than any entry.
    #[error("it is longer than {most} bytes")]
    TooLong {
        /// The most bytes of a line.
        most: usize,
    },
    /// It is neither an entry with its digest nor the end.
    #[error("it is neither an entry with its digest nor the end")]
    Form,
    /// Its bytes and its digest do not belong together, or a line before it is missing.
    #[error("its digest is {found}; its bytes behind the line before have {expected}")]
    Digest {
        /// The digest it says.
        found: Digest,
        /// The digest of its bytes behind the line before.
        expected: Digest,
    },
    /// It has another number than the place where it stands.
    #[error("it calls itself entry {found}; expected {expected}")]
    Number {
        /// The number it has.
        found: u64,
        /// The number of its place.
        expected: u64,
    },
    /// It is not in the one form in which an entry is written.
    #[error("it is not in canonical form")]
    NotCanonical,
    /// It can't be read as an entry.
    #[error(transparent)]
    Entry(#[from] EntryFault),
    /// An entry before it has the same name.
    #[error("an entry before it has the same name")]
    Twice,
    /// The end names another number or digest.
    #[error("the end names another entry as the last")]
    End,
    /// The end is missing: the file was cut off.
    #[error("the end is missing")]
    Cut,
    /// Something stands behind the end.
    #[error("something stands behind the end")]
    Behind,
}
