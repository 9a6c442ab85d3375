//! Opening, and what stands in the way of storing, in words.

use crate::{Core, Problem, ProblemKind};
use baywalk_logbook::store::{Damage, Newer, StoreFault};
use baywalk_logbook::{Clock, Logbook, SystemClock};
use baywalk_words::Words;
use std::path::Path;

impl Core {
    /// Opens the logbook in a folder, or makes one there, by the clock of this machine.
    ///
    /// # Errors
    /// [`Problem`] where it is held, newer, damaged, or can't be read or written; nothing is
    /// touched then.
    pub fn open(folder: &Path, words: Words) -> Result<Self, Problem> {
        Self::open_by(folder, words, Box::new(SystemClock::new()))
    }

    /// Opens the logbook in a folder as [`open`](Self::open) does, by a clock that gives moments and names.
    ///
    /// # Errors
    /// [`Problem`] as `open`.
    pub fn open_by(folder: &Path, words: Words, clock: Box<dyn Clock>) -> Result<Self, Problem> {
        match Logbook::open(folder, clock) {
            Ok(logbook) => Ok(Self { logbook, words }),
            Err(fault) => Err(storage(&words, &fault)),
        }
    }

    /// That a rig has no record with a code, in words.
    #[must_use]
    pub fn no_code(&self, code: &str) -> Problem {
        let args = [("code", code.into())];
        Problem::not_found(self.words.fill("book-no-code", &args))
    }

    /// That a screen has no key with a code, in words.
    #[must_use]
    pub fn no_key(&self, key: &str) -> Problem {
        Problem::input(self.words.fill("step-no-key", &[("key", key.into())]))
    }

    /// What stands in the way of storing, in words.
    #[must_use]
    pub fn storage(&self, fault: &StoreFault) -> Problem {
        storage(&self.words, fault)
    }

    /// What stands in the way of storing, in words, where no logbook could be opened.
    #[must_use]
    pub fn worded(words: &Words, fault: &StoreFault) -> Problem {
        storage(words, fault)
    }
}

/// A fault of the store, for readers of screens who have no words at hand: worded in English.
impl From<StoreFault> for Problem {
    fn from(fault: StoreFault) -> Self {
        storage(&Words::for_locales(&[]), &fault)
    }
}

pub(crate) fn storage(words: &Words, fault: &StoreFault) -> Problem {
    let (kind, sentence) = match fault {
        StoreFault::Held { pid, since } => (ProblemKind::Held, held(words, *pid, since.as_ref())),
        StoreFault::TooNew(newer) => (ProblemKind::TooNew, too_new(words, newer)),
        StoreFault::NotOurs { path } => {
            let path = path.display().to_string();
            (
                ProblemKind::Damaged,
                words.fill("storage-damaged-file", &[("path", path.into())]),
            )
        }
        StoreFault::Damaged(damage) => (ProblemKind::Damaged, damaged(words, damage)),
        StoreFault::StorageFull => (ProblemKind::StorageFull, words.say("storage-full")),
        StoreFault::NotFound(_) => (ProblemKind::NotFound, words.say("refused-not-in-book")),
        StoreFault::Photo(fault) => (ProblemKind::Input, crate::photo::sentence(words, fault)),
        StoreFault::File { path, .. } => {
            let path = path.display().to_string();
            (
                ProblemKind::Unexpected,
                words.fill("storage-unreadable", &[("path", path.into())]),
            )
        }
        StoreFault::Unexpected(detail) => (
            ProblemKind::Unexpected,
            words.fill("storage-unexpected", &[("detail", detail.into())]),
        ),
    };
    Problem::new(kind, sentence)
}

fn held(
    words: &Words,
    pid: Option<u32>,
    since: Option<&chrono::DateTime<chrono::FixedOffset>>,
) -> String {
    match (pid, since) {
        (Some(pid), Some(since)) => {
            let holder = words.fill(
                "storage-holder",
                &[
                    ("pid", pid.into()),
                    ("time", words.time(since.time()).into()),
                ],
            );
            words.fill("storage-busy", &[("holder", holder.into())])
        }
        _ => words.say("storage-busy-unknown"),
    }
}

fn too_new(words: &Words, newer: &Newer) -> String {
    match newer {
        Newer::Store { found, known } => words.fill(
            "storage-newer",
            &[("found", (*found).into()), ("known", (*known).into())],
        ),
        Newer::Entry { kind, version, .. } => words.fill(
            "storage-newer-entry",
            &[("kind", kind.into()), ("found", version.to_string().into())],
        ),
    }
}

fn damaged(words: &Words, damage: &Damage) -> String {
    match damage {
        Damage::NotADatabase { path } => {
            let path = path.display().to_string();
            words.fill("storage-damaged-file", &[("path", path.into())])
        }
        Damage::Entry { seq, .. } => {
            words.fill("storage-damaged", &[("entry", seq.to_string().into())])
        }
        Damage::TailGone { found, expected } => words.fill(
            "storage-tail-gone",
            &[
                ("found", found.to_string().into()),
                ("expected", expected.to_string().into()),
            ],
        ),
        other => words.fill(
            "storage-damaged-inside",
            &[("why", other.to_string().into())],
        ),
    }
}
