//! Why an act or an import is not taken.

use crate::rigfile::Fault;
use crate::store::StoreFault;
use baywalk_domain::moment::Moment;
use baywalk_domain::walk::Refusal;

/// Why an act is not taken. Nothing is changed then.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum ActFault {
    /// The rules refuse it.
    #[error(transparent)]
    Refused(#[from] Refusal),
    /// The store can't take it.
    #[error(transparent)]
    Storage(#[from] StoreFault),
    /// A replayed act is earlier than the newest entry.
    #[error("the act is of {}; the newest entry is of {}", .found.wall, .newest.wall)]
    Earlier {
        /// The moment of the act.
        found: Box<Moment>,
        /// The moment of the newest entry.
        newest: Box<Moment>,
    },
    /// Another act was recorded under this name.
    #[error("entry {seq} has this name, and is another act")]
    NameTaken {
        /// The number of that entry.
        seq: u64,
    },
}

/// Why a rig is not taken from files. Nothing is changed then.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum ImportFault {
    /// The files can't be read; all of their faults.
    #[error("{} faults in the files", .0.len())]
    Files(Vec<Fault>),
    /// The book is not taken.
    #[error(transparent)]
    Act(#[from] ActFault),
}
