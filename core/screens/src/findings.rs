//! Findings, and what was decided about them.

use crate::named::count;
use crate::{Core, Problem, Told};
use baywalk_domain::coded::Coded;
use baywalk_domain::finding::{Decision, Finding, FollowUp};
use baywalk_domain::ids::{FindingId, RigId};
use baywalk_domain::rig::Book;
use baywalk_domain::walk::Act;
use chrono::NaiveDate;
use serde::Serialize;

/// One finding.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct FindingLine {
    /// Its name for the machine.
    pub id: String,
    /// Its number in the list, from 1, by which a person calls it.
    pub number: u32,
    /// Its kind, by its code.
    pub kind: String,
    /// What it is about: code and name.
    pub about: String,
    /// What it is and what to do.
    pub words: String,
    /// How soon, in words.
    pub urgency: String,
    /// The day it was raised.
    pub on: String,
    /// Whether it waits.
    pub open: bool,
    /// What was decided, in words.
    pub follow_up: String,
}

/// The findings of a rig, the open ones first, the most urgent first.
///
/// # Errors
/// [`Problem`] where there is no such rig or the logbook can't be read.
pub fn findings(core: &Core, rig: RigId) -> Result<Vec<FindingLine>, Problem> {
    let book = core.logbook.shared_book(rig)?;
    let sorted = sorted(core, rig)?;
    let lines = sorted.iter().enumerate();
    Ok(lines
        .map(|(place, finding)| line(core, &book, count(place + 1), finding))
        .collect())
}

/// Decides about a finding, called by its number in the list.
///
/// # Errors
/// [`Problem`] where there is no such finding, the day can't be read, or the rules refuse it.
pub fn decide(
    core: &mut Core,
    rig: RigId,
    number: u32,
    (decision, by, note): (&str, Option<&str>, &str),
) -> Result<Told, Problem> {
    let decision = Decision::from_code(decision)
        .map_err(|fault| Problem::input(core.words.unknown_code(&fault)))?;
    let by = match by {
        Some(text) => Some(text.parse::<NaiveDate>().map_err(|_| {
            Problem::input(
                core.words
                    .fill("findings-no-day", &[("found", text.into())]),
            )
        })?),
        None => None,
    };
    let sorted = sorted(core, rig)?;
    let place = number
        .checked_sub(1)
        .and_then(|place| usize::try_from(place).ok());
    let finding = place.and_then(|place| sorted.get(place));
    let finding: FindingId = finding.map(|finding| finding.raised.id).ok_or_else(|| {
        Problem::not_found(
            core.words
                .fill("findings-no-such", &[("number", number.into())]),
        )
    })?;
    let follow_up = FollowUp {
        decision,
        by,
        note: note.to_owned(),
    };
    core.act(rig, Act::Decide { finding, follow_up })
}

fn sorted(core: &Core, rig: RigId) -> Result<Vec<Finding>, Problem> {
    let mut findings = core.logbook.findings(rig)?;
    findings.sort_by_key(|finding| (!finding.is_open(), finding.raised.kind.urgency()));
    Ok(findings)
}

fn line(core: &Core, book: &Book, number: u32, finding: &Finding) -> FindingLine {
    let words = &core.words;
    let kind = finding.raised.kind;
    FindingLine {
        id: finding.raised.id.to_string(),
        number,
        kind: kind.code().to_owned(),
        about: words.about(finding.raised.about, book),
        words: words.finding(&finding.raised, book),
        urgency: words.code(kind.urgency()),
        on: finding.on.to_string(),
        open: finding.is_open(),
        follow_up: finding
            .follow_up
            .as_ref()
            .map(|follow_up| words.follow_up(follow_up))
            .unwrap_or_default(),
    }
}
