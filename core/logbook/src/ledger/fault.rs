//! Why a stored entry can't be read.

use crate::stored::ShapeFault;

/// Why a stored entry can't be read.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum EntryFault {
    /// It is no JSON, or not of the form of its kind and version.
    #[error("not of the form: {0}")]
    Form(String),
    /// A value in it can't be.
    #[error(transparent)]
    Shape(#[from] ShapeFault),
    /// It says of itself to be another kind than its act is.
    #[error("said to be a {said:?}; the act is a {found:?}")]
    Kind {
        /// What it says.
        said: String,
        /// What the act is.
        found: String,
    },
    /// Its kind, or that version of it, is of a newer program.
    #[error("a {kind:?} of version {version} is of a newer program")]
    TooNew {
        /// The kind.
        kind: String,
        /// The version.
        version: u64,
    },
}
