//! What a look into the ledger finds.

use super::{Digest, EntryFault};

/// How far the ledger is sound.
#[derive(Debug, Clone, PartialEq)]
pub struct Verified {
    /// How many entries fit, from the first on.
    pub entries: u64,
    /// The digest of the last of them.
    pub digest: Digest,
    /// The first that does not fit; `None` where all do.
    pub broken: Option<Misfit>,
}

/// An entry that does not fit.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("entry {seq} does not fit: {why}")]
pub struct Misfit {
    /// Its number, as expected.
    pub seq: u64,
    /// Why.
    pub why: MisfitWhy,
}

/// Why an entry does not fit.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum MisfitWhy {
    /// Another number stands there: entries are missing before it.
    #[error("the next entry is {found}")]
    Number {
        /// The number found.
        found: i64,
    },
    /// Its stored bytes, or those of the digest, are not what was written.
    #[error("its bytes and its digest do not belong together")]
    Digest,
    /// A column says something else than the entry itself.
    #[error("its column {0} says something else")]
    Column(&'static str),
    /// It can't be read.
    #[error(transparent)]
    Entry(#[from] EntryFault),
    /// It was the newest once, and is gone.
    #[error("it is gone, with all behind it up to {until}")]
    Gone {
        /// The last entry there was.
        until: u64,
    },
}
