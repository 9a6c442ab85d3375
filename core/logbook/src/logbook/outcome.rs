//! What came of an act.

use crate::projection::Change;
use baywalk_domain::walk::Entry;

/// What came of an act: the entry it became, and what it moved.
#[derive(Debug, Clone, PartialEq)]
pub struct Outcome {
    /// The number of the entry.
    pub seq: u64,
    /// The entry, with all that was decided and shown.
    pub entry: Entry,
    /// What screens have to read anew.
    pub changes: Vec<Change>,
    /// Whether the act had been recorded before and this is what came of it then.
    pub repeated: bool,
}
