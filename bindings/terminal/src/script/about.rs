//! What a code is about, and which finding is meant.

use super::ScriptFault;
use baywalk_domain::coded::Coded;
use baywalk_domain::finding::{About, Finding, FindingKind};
use baywalk_domain::ids::FindingId;
use baywalk_domain::rig::Book;

/// What a code is about: a bay, point or source; a reading by its code; the rig by its name.
pub(super) fn about(book: &Book, text: &str) -> Result<About, ScriptFault> {
    let meant = baywalk_screens::about::about(book, text)?;
    meant.ok_or_else(|| ScriptFault::NoCode {
        what: "record",
        code: text.to_owned(),
    })
}

/// The newest open finding of a kind about something.
pub(super) fn finding(
    (book, findings): (&Book, &[Finding]),
    kind: &str,
    code: &str,
) -> Result<FindingId, ScriptFault> {
    let kind = FindingKind::from_code(kind)?;
    let about = about(book, code)?;
    let fits = |finding: &&Finding| finding.raised.kind == kind && finding.raised.about == about;
    let found = findings
        .iter()
        .filter(|finding| finding.is_open())
        .rfind(fits);
    let missing = || ScriptFault::NoCode {
        what: "finding",
        code: code.to_owned(),
    };
    found.map(|finding| finding.raised.id).ok_or_else(missing)
}
