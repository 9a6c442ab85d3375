//! Where a logbook comes from, when it is not only what was noted in it: a backup, or a recovery.

/// A place in a ledger: the number of an entry and its digest.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Mark {
    /// The number; 0 stands before the first entry.
    pub seq: u64,
    /// SHA-256 in lower-case hexadecimal.
    pub digest: String,
}

/// Entries that stand side by side, by the numbers of the first and the last.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Span {
    /// The first.
    pub from: u64,
    /// The last.
    pub to: u64,
}

/// What came of a damaged ledger.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Recovery {
    /// The last entry up to which the old ledger is whole; those up to it are kept byte for byte.
    pub whole_to: Mark,
    /// The newest entry that the old ledger is known to have reached.
    pub reached: u64,
    /// The entries that could not be read, or had lost what they rest on, by their old numbers.
    pub missing: Vec<Span>,
    /// How many entries behind the gap were read and are sealed anew, with new numbers.
    pub sealed_anew: u64,
}
