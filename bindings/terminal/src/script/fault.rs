//! What is wrong with a script.

use baywalk_domain::coded::UnknownCode;
use baywalk_domain::rig::CodeFault;
use baywalk_domain::units::StatedFault;

/// What is wrong at a line of a script.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub(crate) enum ScriptFault {
    /// The head is no head of a script.
    #[error("no head")]
    Head(String),
    /// The head asks for a newer version.
    #[error("version {found}")]
    Newer {
        /// The version found.
        found: u32,
    },
    /// The act came with a later version than the head says.
    #[error("of version {since}")]
    Since {
        /// The version it came with.
        since: u32,
    },
    /// The line is no act.
    #[error("no act: {0}")]
    Line(String),
    /// The time of the line is before that of an earlier one.
    #[error("out of order")]
    Order,
    /// A code names nothing of the kind.
    #[error("no {what} {code}")]
    NoCode {
        /// The kind of record, as in message keys.
        what: &'static str,
        /// The code.
        code: String,
    },
    /// A field that this act needs is not there.
    #[error("{0} is missing")]
    Missing(&'static str),
    /// A word is not in its list.
    #[error(transparent)]
    Unknown(#[from] UnknownCode),
    /// A text is no code.
    #[error(transparent)]
    Code(#[from] CodeFault),
    /// A quantity can't be taken.
    #[error(transparent)]
    Quantity(#[from] StatedFault),
    /// A file can't be read.
    #[error("{0}")]
    File(String),
    /// The line was expected to be refused and was not.
    #[error("was not refused")]
    NotRefused,
}
