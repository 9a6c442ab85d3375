//! Findings, and what was decided about them.

use crate::card::{Ask, Key};
use crate::named::count;
use crate::when::days_to_come;
use crate::{Core, Named, Problem, Told};
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

/// The findings of a rig with the keys by which is decided about those that wait.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct FindingsScreen {
    /// The findings, the open ones first, the most urgent first.
    pub findings: Vec<FindingLine>,
    /// What to mind.
    pub cautions: Vec<String>,
    /// One key an open finding, with what it asks.
    pub keys: Vec<Key>,
}

/// The findings with their keys.
///
/// # Errors
/// [`Problem`] where there is no such rig or the logbook can't be read.
pub fn screen(core: &Core, rig: RigId) -> Result<FindingsScreen, Problem> {
    let lines = findings(core, rig)?;
    let words = &core.words;
    let open = lines.iter().filter(|line| line.open);
    let keys = open.map(|line| {
        Key::plain(
            &format!("decide {}", line.number),
            words.say("findings-key-decide"),
        )
        .noted(note(line))
        .asking(Ask::Choice {
            question: words.say("findings-ask-decision"),
            options: Decision::ALL
                .iter()
                .map(|one| Named::of(words, *one))
                .collect(),
        })
        .asking(by_when(core))
        .asking(Ask::Words {
            question: words.say("findings-ask-note"),
        })
    });
    Ok(FindingsScreen {
        keys: keys.collect(),
        cautions: ["caution-label-first", "caution-qualified"]
            .map(|key| words.say(key))
            .to_vec(),
        findings: lines,
    })
}

/// How soon, what it is, and what was decided so far.
fn note(line: &FindingLine) -> String {
    let parts = [&line.urgency, &line.words, &line.follow_up].into_iter();
    let parts: Vec<&str> = parts
        .map(|part| part.trim_end_matches('.'))
        .filter(|part| !part.is_empty())
        .collect();
    format!("{}.", parts.join(". "))
}

fn by_when(core: &Core) -> Ask {
    let none = Named {
        code: String::new(),
        word: core.words.say("findings-no-date"),
    };
    Ask::Choice {
        question: core.words.say("findings-ask-by"),
        options: std::iter::once(none).chain(days_to_come(core)).collect(),
    }
}

/// Takes a key of the screen, with what was answered, in order.
///
/// # Errors
/// [`Problem`] where there is no such key or finding, or the rules refuse it; nothing is changed then.
pub fn press(core: &mut Core, rig: RigId, key: &str, typed: &[String]) -> Result<Told, Problem> {
    let text = |place: usize| typed.get(place).map_or("", |text| text.trim());
    let number = key
        .strip_prefix("decide ")
        .and_then(|number| number.parse().ok());
    let Some(number) = number else {
        return Err(core.no_key(key));
    };
    let by = Some(text(1)).filter(|day| !day.is_empty());
    decide(core, rig, number, (text(0), by, text(2)))
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
    let finding: FindingId = numbered(core, rig, number)?.raised.id;
    let follow_up = FollowUp {
        decision,
        by,
        note: note.to_owned(),
    };
    core.act(rig, Act::Decide { finding, follow_up })
}

/// The finding of a number in the list.
pub(crate) fn numbered(core: &Core, rig: RigId, number: u32) -> Result<Finding, Problem> {
    let sorted = sorted(core, rig)?;
    let place = number
        .checked_sub(1)
        .and_then(|place| usize::try_from(place).ok());
    let finding = place.and_then(|place| sorted.into_iter().nth(place));
    finding.ok_or_else(|| {
        let args = [("number", number.into())];
        Problem::not_found(core.words.fill("findings-no-such", &args))
    })
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
