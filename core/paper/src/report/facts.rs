//! What a report is made of.

use baywalk_domain::finding::Finding;
use baywalk_domain::ids::PointId;
use baywalk_domain::rig::Book;
use baywalk_domain::walk::{DueShown, Entry, Summary, WalkState};
use chrono::{DateTime, FixedOffset};

/// All that the report of one walk says, borrowed from whoever keeps it.
#[derive(Debug, Clone, Copy)]
pub struct Facts<'a> {
    /// The rig as it is known now.
    pub book: &'a Book,
    /// The walk.
    pub walk: &'a WalkState,
    /// The walk's own entries, oldest first, struck ones too. They tell when a source was taken
    /// away, why a note was corrected, and the proofs and exceptions that no longer hold. May be
    /// empty: then that is left out.
    pub entries: &'a [Entry],
    /// What the walk says of itself.
    pub summary: &'a Summary,
    /// The findings of the rig that are to be told, with what was decided about each.
    pub findings: &'a [Finding],
    /// Points that had moved in earlier walks.
    pub moved_before: &'a [PointId],
    /// When the next walk is due, where it was worked out.
    pub due: Option<&'a DueShown>,
    /// What is asked of the rig as the ledger stands, the first first.
    pub asked: &'a [Asked],
    /// Where the ledger stood when the report was made.
    pub ledger: LedgerHead<'a>,
    /// The edition of the software.
    pub edition: &'a str,
    /// When the report was made.
    pub printed: DateTime<FixedOffset>,
}

/// One thing that is asked of a rig, in words.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Asked {
    /// The day.
    pub when: String,
    /// The rule by which it is asked.
    pub rule: String,
    /// Which limit came first.
    pub first: String,
    /// What each limit comes to, and whether it was put off.
    pub lines: Vec<String>,
}

/// The newest entry of the ledger.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct LedgerHead<'a> {
    /// Its digest, SHA-256 in lower-case hexadecimal.
    pub digest: &'a str,
    /// Its sequence number.
    pub sequence: u64,
}
