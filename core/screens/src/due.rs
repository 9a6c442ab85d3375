//! When the next walk is due, and why.

use crate::{Core, Problem};
use baywalk_domain::coded::Coded;
use baywalk_domain::due::{Due, due as next_due, settle};
use baywalk_domain::ids::RigId;
use baywalk_domain::rig::Code;
use baywalk_domain::units::{DistanceUnit, Stated};
use baywalk_logbook::RigGlance;
use chrono::NaiveDate;
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

/// The next walk of a rig.
pub(crate) struct Next {
    pub(crate) due: Due,
    /// The day and the reason in words.
    pub(crate) words: String,
}

impl Next {
    pub(crate) fn of(core: &Core, glance: &RigGlance, today: NaiveDate) -> Self {
        let rule = &glance.rig.rule;
        let last = glance.last_walk.map(|day| (day, noted(glance, day)));
        let due = next_due(rule, last, &glance.odometer, today);
        let at = due.at_in(rule);
        let words = core.words.due(due.on, due.reason, at.as_ref());
        Self { due, words }
    }
}

/// When the next walk of a rig is due.
///
/// # Errors
/// [`Problem`] where there is no such rig or the logbook can't be read.
pub fn due(core: &Core, rig: RigId) -> Result<DueScreen, Problem> {
    let outline = core.logbook.outline(rig)?;
    told(core, &core.logbook.glance(rig)?, &outline.second_look)
}

/// When the next walk of a rig is due, beside the points that wait for their second look.
pub(crate) fn told(
    core: &Core,
    glance: &RigGlance,
    waiting: &[Code],
) -> Result<DueScreen, Problem> {
    let next = Next::of(core, glance, core.logbook.now().date());
    let second_look = glance
        .last_end
        .filter(|_| !waiting.is_empty())
        .map(|day| second_look(core, glance, day, waiting));
    Ok(DueScreen {
        rig: glance.rig.name.clone(),
        on: next.due.on.to_string(),
        reason: next.due.reason.code().to_owned(),
        words: next.words,
        second_look,
        backup: crate::backup::reminder(core)?,
    })
}

fn second_look(core: &Core, glance: &RigGlance, ended: NaiveDate, waiting: &[Code]) -> SecondLook {
    let settle = settle(ended, noted(glance, ended));
    let points: Vec<String> = waiting.iter().map(ToString::to_string).collect();
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
}

/// The odometer as it was last noted up to a day.
fn noted(glance: &RigGlance, day: NaiveDate) -> Option<&Stated<DistanceUnit>> {
    let up_to = glance.odometer.iter().filter(|note| note.on <= day);
    up_to.max_by_key(|note| note.on).map(|note| &note.reading)
}
