//! What is due as a calendar file.

use crate::{Core, Problem};
use baywalk_domain::due::Due;
use baywalk_domain::ids::RigId;
use baywalk_domain::rig::Book;
use baywalk_logbook::RigGlance;
use baywalk_paper::calendar::{Entry, ics};

/// What is due of a rig as a calendar file (RFC 5545): the second channel, since a phone drops the
/// reminders of an app that was not used for months.
///
/// # Errors
/// [`Problem`] where there is no such rig or the logbook can't be read.
pub fn file(core: &Core, rig: RigId) -> Result<String, Problem> {
    let glance = core.logbook.glance(rig)?;
    let book = core.logbook.book(rig)?;
    let entries: Vec<Entry> = glance
        .due
        .iter()
        .map(|due| entry(core, &glance, &book, due))
        .collect();
    let name = core
        .words
        .fill("timing-calendar", &[("rig", (&glance.rig.name).into())]);
    Ok(ics(&name, &entries, core.logbook.now().wall.to_utc()))
}

fn entry(core: &Core, glance: &RigGlance, book: &Book, due: &Due) -> Entry {
    let words = &core.words;
    let item = words.due_item(due, book);
    Entry {
        uid: due.name(glance.rig.id).to_string(),
        on: due.on,
        summary: words.fill("timing-event", &[("rig", (&glance.rig.name).into())]),
        description: words.fill("timing-event-note", &[("items", item.into())]),
        sequence: u32::try_from(glance.due_since).unwrap_or(u32::MAX),
    }
}
