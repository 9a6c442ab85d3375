//! The notices that are next, of all rigs: what a phone is to tell and when.

use crate::{Core, Problem};
use baywalk_domain::due::{Notice, notices as next_notices};
use baywalk_domain::ids::RigId;
use baywalk_domain::rig::Book;
use serde::Serialize;
use std::collections::BTreeMap;
use std::sync::Arc;

/// A notice.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct NoticeLine {
    /// Its name, the same for as long as the rig has something due that day.
    pub id: String,
    /// The rig's name for the machine.
    pub rig: String,
    /// What its owner calls it.
    pub title: String,
    /// The local day, as `2028-03-20`.
    pub on: String,
    /// The local time, as `09:00`.
    pub at: String,
    /// How many days before they are due its items are told.
    pub early: u16,
    /// What is due and why, in words.
    pub words: String,
}

/// The next notices, one a rig and day, the nearest first and at most 32.
///
/// A shell asks for them anew at each start, after each act that tells when to look again, and when
/// clock or zone have changed; it turns day and time into an instant where it is.
///
/// # Errors
/// [`Problem`] where the logbook can't be read.
pub fn notices(core: &Core) -> Result<Vec<NoticeLine>, Problem> {
    let glances = core.logbook.glances()?;
    let all = glances.iter().flat_map(|glance| {
        let rig = glance.rig.id;
        glance.due.iter().map(move |due| (rig, due))
    });
    let next = next_notices(all, 0);
    let mut books: BTreeMap<RigId, Option<Arc<Book>>> = BTreeMap::new();
    let names: BTreeMap<RigId, &str> = glances
        .iter()
        .map(|glance| (glance.rig.id, glance.rig.name.as_str()))
        .collect();
    Ok(next
        .iter()
        .map(|notice| {
            let read = || core.logbook.shared_book(notice.rig).ok();
            let book = books.entry(notice.rig).or_insert_with(read).as_deref();
            line(
                core,
                notice,
                names.get(&notice.rig).copied().unwrap_or_default(),
                book,
            )
        })
        .collect())
}

fn line(core: &Core, notice: &Notice<'_>, title: &str, book: Option<&Book>) -> NoticeLine {
    let items = notice
        .items
        .iter()
        .map(|due| core.words.due_item(due, book));
    NoticeLine {
        id: notice.name(),
        rig: notice.rig.to_string(),
        title: title.to_owned(),
        on: notice.on.to_string(),
        at: core.words.time(notice.at().time()),
        early: notice.early,
        words: items.collect::<Vec<_>>().join(" "),
    }
}
