//! What can be put on paper on a phone: one key each, whose file the core names and writes.

use super::{PhotoSize, Wanted, labels, last_walk, write, write_follow_up};
use crate::card::Key;
use crate::findings::findings;
use crate::{Core, Problem};
use baywalk_domain::ids::RigId;
use std::path::{Path, PathBuf};

/// The reports: the code of the key, its word, its note.
const REPORTS: [(&str, &str, &str); 3] = [
    ("report mail", "report-key-mail", "report-key-mail-note"),
    (
        "report stored",
        "report-key-stored",
        "report-key-stored-note",
    ),
    ("report page", "report-key-page", "report-key-page-note"),
];

/// What can be put on paper of a rig: its newest walk's report, labels, a sheet for each open finding.
///
/// # Errors
/// [`Problem`] where there is no such rig or the logbook can't be read.
pub fn papers(core: &Core, rig: RigId) -> Result<Vec<Key>, Problem> {
    let words = &core.words;
    let mut keys = Vec::new();
    if last_walk(core, rig).is_ok() {
        keys.extend(
            REPORTS
                .iter()
                .map(|(code, word, note)| Key::plain(code, words.say(word)).noted(words.say(note))),
        );
    }
    let labels = Key::plain("labels", words.say("report-key-labels"));
    keys.push(labels.noted(words.say("report-key-labels-note")));
    let open = findings(core, rig)?.into_iter();
    keys.extend(open.filter(|finding| finding.open).map(|finding| {
        let code = format!("sheet {}", finding.number);
        Key::plain(&code, words.say("report-key-sheet")).noted(finding.words)
    }));
    Ok(keys)
}

/// Writes the paper of a key into a folder and gives its file. `country` decides what paper is usual.
///
/// # Errors
/// [`Problem`] where there is no such key, the logbook can't be read, or the file can't be written.
pub fn write_by_key(
    core: &Core,
    rig: RigId,
    key: &str,
    country: &str,
    folder: &Path,
) -> Result<PathBuf, Problem> {
    let paper = Wanted::usual_paper(country);
    let (verb, which) = key.split_once(' ').unwrap_or((key, ""));
    let ending = if which == "page" { "html" } else { "pdf" };
    let path = folder.join(file_name(core, rig, verb, ending)?);
    let photos = if which == "mail" {
        PhotoSize::Mail
    } else {
        PhotoSize::Stored
    };
    let wanted = Wanted::by_name(core, &path, paper, photos)?;
    match (verb, which.parse()) {
        ("report", _) => write(core, last_walk(core, rig)?, &wanted, &path)?,
        ("sheet", Ok(number)) => write_follow_up(core, rig, number, &wanted, &path)?,
        ("labels", _) => {
            labels(core, rig, &[], paper, &path)?;
        }
        _ => return Err(core.no_key(key)),
    }
    Ok(path)
}

/// What it is, of which rig, and the day: plain letters only, so that any system takes it.
fn file_name(core: &Core, rig: RigId, verb: &str, ending: &str) -> Result<String, Problem> {
    let glance = core.logbook.glance(rig)?;
    let plain = |letter: char| letter.is_ascii_alphanumeric();
    let name = glance.rig.name.to_lowercase();
    let words = name
        .split(|letter| !plain(letter))
        .filter(|word| !word.is_empty());
    let rig: Vec<&str> = words.take(4).collect();
    let day = core.logbook.now().date();
    let parts = [verb.to_owned(), rig.join("-"), day.to_string()];
    let parts: Vec<String> = parts.into_iter().filter(|part| !part.is_empty()).collect();
    Ok(format!("{}.{ending}", parts.join("-")))
}
