//! The sources of a rig, each had, not had, or not sure: what a first start asks before anything else.

use crate::{Core, Named, Problem};
use baywalk_domain::coded::Coded;
use baywalk_domain::ids::RigId;
use baywalk_domain::rig::Presence;
use serde::Serialize;

/// The sources of a rig, and what can be answered of each.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct SourcesScreen {
    /// Why it is asked.
    pub words: String,
    /// The sources in use.
    pub sources: Vec<SourceAsk>,
    /// The answers.
    pub options: Vec<Named>,
}

/// A source that is asked about.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct SourceAsk {
    /// Its code.
    pub code: String,
    /// What it is.
    pub name: String,
    /// How it is taken away.
    pub how: String,
    /// What was answered.
    pub presence: Named,
}

/// The sources of a rig, each with what was answered of it; an answer is a change of its field
/// `presence`.
///
/// # Errors
/// [`Problem`] where there is no such rig or the logbook can't be read.
pub fn sources(core: &Core, rig: RigId) -> Result<SourcesScreen, Problem> {
    let book = core.logbook.shared_book(rig)?;
    let used = book.sources.iter().filter(|source| !source.retired);
    let words = &core.words;
    Ok(SourcesScreen {
        words: words.say("set-up-sources"),
        sources: used
            .map(|source| SourceAsk {
                code: source.code.to_string(),
                name: source.name.clone(),
                how: source.how.clone(),
                presence: Named::of(words, source.presence),
            })
            .collect(),
        options: Presence::ALL.iter().map(|one| short(core, *one)).collect(),
    })
}

/// An answer in a word or two; why it matters stands above all of them.
fn short(core: &Core, presence: Presence) -> Named {
    let key = match presence {
        Presence::Have => "set-up-have",
        Presence::HaveNot => "set-up-have-not",
        Presence::NotSure => "set-up-not-sure",
    };
    Named {
        code: presence.code().to_owned(),
        word: core.words.say(key),
    }
}
