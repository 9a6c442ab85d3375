//! What went wrong, in the few kinds that a person would act on.

use serde::Serialize;

/// What went wrong, with a whole sentence that says what, what was found, what was expected and
/// what to do.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, thiserror::Error)]
#[error("{sentence}")]
pub struct Problem {
    /// The kind.
    pub kind: ProblemKind,
    /// The sentence, for people.
    pub sentence: String,
}

/// The kinds of problem.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Enum))]
#[serde(rename_all = "snake_case")]
pub enum ProblemKind {
    /// The rules refuse it; nothing was changed.
    Refused,
    /// Something typed or read from a file can't be used.
    Input,
    /// There is no such thing.
    NotFound,
    /// There is no room left.
    StorageFull,
    /// The file is of a newer version.
    TooNew,
    /// The file is damaged.
    Damaged,
    /// Another process has the logbook.
    Held,
    /// Anything else.
    Unexpected,
}

impl Problem {
    /// A problem of a kind.
    #[must_use]
    pub const fn new(kind: ProblemKind, sentence: String) -> Self {
        Self { kind, sentence }
    }

    pub(crate) const fn refused(sentence: String) -> Self {
        Self::new(ProblemKind::Refused, sentence)
    }

    pub(crate) const fn input(sentence: String) -> Self {
        Self::new(ProblemKind::Input, sentence)
    }

    pub(crate) const fn not_found(sentence: String) -> Self {
        Self::new(ProblemKind::NotFound, sentence)
    }
}
