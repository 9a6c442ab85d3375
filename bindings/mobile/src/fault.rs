//! What a call says where it can't do what was asked.

use baywalk_screens::{Problem, ProblemKind};

/// What went wrong: a kind to act on, and a whole sentence for people.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error, uniffi::Error)]
pub enum Fault {
    /// The core says so; nothing was changed.
    #[error("{sentence}")]
    Told {
        /// The kind.
        kind: ProblemKind,
        /// The sentence.
        sentence: String,
    },
    /// The core met something it did not expect and has closed the logbook; what was recorded is kept.
    #[error("{sentence}")]
    Closed {
        /// The sentence.
        sentence: String,
    },
}

impl From<Problem> for Fault {
    fn from(problem: Problem) -> Self {
        Self::Told {
            kind: problem.kind,
            sentence: problem.sentence,
        }
    }
}
