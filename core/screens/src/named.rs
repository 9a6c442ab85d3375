//! What stands on screens in many places: a member of a closed list with its word, and counts.

use baywalk_domain::coded::Coded;
use baywalk_domain::walk::Grade;
use baywalk_words::Words;
use serde::Serialize;

/// A member of a closed list.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct Named {
    /// Its stable code.
    pub code: String,
    /// Its word.
    pub word: String,
}

impl Named {
    pub(crate) fn new(code: &str, word: String) -> Self {
        Self {
            code: code.to_owned(),
            word,
        }
    }

    /// A member of a closed list, in a language.
    #[must_use]
    pub fn of<T: Coded>(words: &Words, member: T) -> Self {
        Self::new(member.code(), words.code(member))
    }
}

/// How many of one grade.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct GradeCount {
    /// The grade's stable code.
    pub code: String,
    /// The grade's word.
    pub word: String,
    /// How many.
    pub count: u32,
}

impl GradeCount {
    pub(crate) fn of(words: &Words, grade: Grade, many: usize) -> Self {
        Self {
            code: grade.code().to_owned(),
            word: words.code(grade),
            count: count(many),
        }
    }
}

/// A number of things as it crosses to a shell.
pub(crate) fn count(many: usize) -> u32 {
    u32::try_from(many).unwrap_or(u32::MAX)
}
