//! What is due as a calendar file.

use crate::{Core, Problem};
use baywalk_domain::due::Due;
use baywalk_domain::ids::RigId;
use baywalk_domain::rig::Book;
use baywalk_logbook::{Gone, RigGlance};
use baywalk_paper::calendar::{Entry, ics};

/// What is due of a rig as a calendar file (RFC 5545): the second channel, since a phone drops the
/// reminders of an app that was not used for months. What was due and is asked no longer stands in it
/// as called off, so that a calendar that shows it takes it out.
///
/// # Errors
/// [`Problem`] where there is no such rig or the logbook can't be read.
pub fn file(core: &Core, rig: RigId) -> Result<String, Problem> {
    let glance = core.logbook.glance(rig)?;
    let book = core.logbook.shared_book(rig)?;
    let now = core.logbook.now();
    let due = glance
        .due
        .iter()
        .map(|due| entry(core, &glance, &book, due));
    let gone = glance.gone.iter().filter(|gone| gone.tells(now.date()));
    let gone = gone.map(|gone| called_off(core, &glance, gone));
    let entries: Vec<Entry> = due.chain(gone).collect();
    let name = core
        .words
        .fill("timing-calendar", &[("rig", (&glance.rig.name).into())]);
    Ok(ics(&name, &entries, now.wall.to_utc()))
}

fn entry(core: &Core, glance: &RigGlance, book: &Book, due: &Due) -> Entry {
    let item = core.words.due_item(due, book);
    Entry {
        uid: due.asked.name(glance.rig.id).to_string(),
        on: due.on,
        summary: summary(core, glance),
        description: core
            .words
            .fill("timing-event-note", &[("items", item.into())]),
        sequence: sequence(glance.due_since),
        called_off: false,
    }
}

fn called_off(core: &Core, glance: &RigGlance, gone: &Gone) -> Entry {
    Entry {
        uid: gone.asked.name(glance.rig.id).to_string(),
        on: gone.on,
        summary: summary(core, glance),
        description: core.words.say("timing-event-gone"),
        sequence: sequence(gone.by),
        called_off: true,
    }
}

fn summary(core: &Core, glance: &RigGlance) -> String {
    let args = [("rig", (&glance.rig.name).into())];
    core.words.fill("timing-event", &args)
}

/// The number of the entry by which an event came to be as it is.
fn sequence(entry: u64) -> u32 {
    u32::try_from(entry).unwrap_or(u32::MAX)
}
