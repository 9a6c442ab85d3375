//! Why nothing was recovered.

use crate::backup::{ArchiveFault, RestoreFault};
use crate::store::StoreFault;

/// Why nothing was recovered. The damaged logbook is as it was then.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum RecoverFault {
    /// Nothing is damaged.
    #[error("nothing is damaged")]
    Whole,
    /// There is no logbook.
    #[error("there is no logbook")]
    None,
    /// Not one entry can be read.
    #[error("not one entry can be read")]
    Nothing,
    /// The backup can't be used.
    #[error(transparent)]
    Archive(#[from] ArchiveFault),
    /// The store can't be read or written.
    #[error(transparent)]
    Store(#[from] StoreFault),
}

impl From<RestoreFault> for RecoverFault {
    fn from(fault: RestoreFault) -> Self {
        match fault {
            RestoreFault::Archive(fault) => Self::Archive(fault),
            RestoreFault::Store(fault) => Self::Store(fault),
            other => Self::Store(StoreFault::Unexpected(other.to_string())),
        }
    }
}
