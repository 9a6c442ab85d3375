//! Where a logbook comes from.

use super::shape::record;
use baywalk_domain::walk;

record! {
    /// A place in a ledger.
    Mark = walk::Mark {
        seq: u64,
        digest: String,
    }
}

record! {
    /// Entries side by side.
    EntrySpan = walk::Span {
        from: u64,
        to: u64,
    }
}

record! {
    /// What came of a damaged ledger.
    Recovery = walk::Recovery {
        whole_to: Mark,
        reached: u64,
        missing: Vec<EntrySpan>,
        sealed_anew: u64,
    }
}
