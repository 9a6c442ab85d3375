//! Getting what can be read of a damaged logbook into a new one.

use crate::core::storage;
use crate::{Core, Problem, ProblemKind, safe};
use baywalk_domain::walk::Recovery;
use baywalk_logbook::SystemClock;
use baywalk_logbook::backup::Watch;
use baywalk_logbook::recover::{self, RecoverFault, Wish};
use baywalk_words::Words;
use serde::Serialize;

/// What was recovered.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct RecoverScreen {
    /// How many entries are kept as they were, from the first on.
    pub whole: u64,
    /// How many entries behind the gap were sealed anew.
    pub sealed_anew: u64,
    /// The entries that are missing, gap by gap.
    pub missing: Vec<GapLine>,
    /// The digests of photos that are missing.
    pub photos_missing: Vec<String>,
    /// In words.
    pub words: Vec<String>,
}

/// Entries that are missing, by their old numbers.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct GapLine {
    /// The first.
    pub from: u64,
    /// The last.
    pub to: u64,
}

/// Recovers a damaged logbook; the damaged one is kept beside the new one.
///
/// # Errors
/// [`Problem`] where nothing is damaged or nothing can be read; nothing is changed then.
pub fn recover(
    words: &Words,
    wish: &Wish<'_>,
    watch: &mut Watch<'_>,
) -> Result<(Core, RecoverScreen), Problem> {
    let recovered = recover::recover(wish, Box::new(SystemClock::new()), watch)
        .map_err(|fault| problem(words, &fault))?;
    let recovery = &recovered.recovery;
    let mut told = vec![self::told(words, recovery)];
    told.extend(gaps(words, recovery));
    if !recovered.photos_missing.is_empty() {
        let count = recovered.photos_missing.len();
        told.push(words.fill("recover-photos-missing", &[("count", count.into())]));
    }
    if let Some(kept) = &recovered.kept {
        let path = kept.display().to_string();
        told.push(words.fill("recover-kept", &[("path", path.into())]));
    }
    told.push(words.say("recover-new-proof"));
    let screen = RecoverScreen {
        whole: recovery.whole_to.seq,
        sealed_anew: recovery.sealed_anew,
        missing: recovery
            .missing
            .iter()
            .map(|gap| GapLine {
                from: gap.from,
                to: gap.to,
            })
            .collect(),
        photos_missing: recovered.photos_missing,
        words: told,
    };
    let (logbook, words) = (recovered.logbook, *words);
    Ok((Core { logbook, words }, screen))
}

/// What came of a recovery, in words.
pub(crate) fn told(words: &Words, recovery: &Recovery) -> String {
    words.fill(
        "recover-told",
        &[
            ("whole", recovery.whole_to.seq.into()),
            ("anew", recovery.sealed_anew.into()),
            ("reached", recovery.reached.into()),
        ],
    )
}

/// What is missing, in words, gap by gap.
pub(crate) fn gaps(words: &Words, recovery: &Recovery) -> Vec<String> {
    let gaps = recovery.missing.iter().map(|gap| {
        let args = [("from", gap.from.into()), ("to", gap.to.into())];
        words.fill("recover-gap", &args)
    });
    let mut gaps: Vec<String> = gaps.collect();
    if gaps.is_empty() {
        gaps.push(words.say("recover-no-gap"));
    }
    gaps
}

fn problem(words: &Words, fault: &RecoverFault) -> Problem {
    match fault {
        RecoverFault::Whole => Problem::refused(words.say("recover-whole")),
        RecoverFault::None => Problem::not_found(words.say("recover-none")),
        RecoverFault::Nothing => Problem::new(ProblemKind::Damaged, words.say("recover-nothing")),
        RecoverFault::Archive(fault) => safe::archive_fault(words, fault),
        RecoverFault::Store(fault) => storage(words, fault),
    }
}
