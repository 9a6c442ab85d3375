//! When the next walk is due, and why.

use crate::{Core, Problem};
use baywalk_domain::coded::Coded;
use baywalk_domain::due::{due as next_due, settle};
use baywalk_domain::ids::RigId;
use serde::Serialize;

/// When the next walk is due.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct DueScreen {
    /// What its owner calls the rig.
    pub rig: String,
    /// The day, as `2028-03-20`.
    pub on: String,
    /// Which limit comes first, by its code.
    pub reason: String,
    /// The day and the reason in words.
    pub words: String,
    /// The second look at what was disturbed, where one waits.
    pub second_look: Option<SecondLook>,
    /// What no backup has yet, in words.
    pub backup: Option<String>,
}

/// The second look at what was disturbed.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct SecondLook {
    /// The day.
    pub on: String,
    /// The points, by their codes.
    pub points: Vec<String>,
    /// In words.
    pub words: String,
}

/// When the next walk of a rig is due.
///
/// # Errors
/// [`Problem`] where there is no such rig or the logbook can't be read.
pub fn due(core: &Core, rig: RigId) -> Result<DueScreen, Problem> {
    let log = &core.logbook;
    let book = log.book(rig)?;
    let notes = log.odometer(rig)?;
    let last = log.last_walk(rig)?;
    let noted = |day| {
        let up_to = notes.iter().filter(|note| note.on <= day);
        up_to.max_by_key(|note| note.on).map(|note| &note.reading)
    };
    let today = log.now().date();
    let next = next_due(
        &book.rig.rule,
        last.map(|day| (day, noted(day))),
        &notes,
        today,
    );
    let at = next.at_in(&book.rig.rule);
    let unsettled = log.unsettled(rig)?;
    let second_look = last_of(core, rig)?
        .filter(|_| !unsettled.is_empty())
        .map(|day| {
            let settle = settle(day, noted(day));
            let points: Vec<String> = unsettled
                .iter()
                .filter_map(|id| book.point(*id))
                .map(|point| point.code.to_string())
                .collect();
            SecondLook {
                on: settle.on.to_string(),
                words: core.words.fill(
                    "due-second-look",
                    &[
                        ("date", core.words.date(settle.on).into()),
                        ("points", points.join(", ").into()),
                    ],
                ),
                points,
            }
        });
    Ok(DueScreen {
        rig: book.rig.name.clone(),
        on: next.on.to_string(),
        reason: next.reason.code().to_owned(),
        words: core.words.due(next.on, next.reason, at.as_ref()),
        second_look,
        backup: crate::backup::reminder(core)?,
    })
}

/// The day of the last walk of any scope that ended.
fn last_of(core: &Core, rig: RigId) -> Result<Option<chrono::NaiveDate>, Problem> {
    let walks = core.logbook.walks(rig)?;
    let ended = walks.iter().filter_map(|walk| walk.ended.as_ref());
    Ok(ended.map(|(at, _)| at.date()).max())
}
