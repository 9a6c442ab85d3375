//! What is due of a rig, and why.

use crate::named::count;
use crate::{Core, Problem, Told};
use baywalk_domain::coded::Coded;
use baywalk_domain::due::{Asked, Due};
use baywalk_domain::ids::RigId;
use baywalk_domain::rig::{Book, Code};
use baywalk_domain::walk::Act;
use baywalk_logbook::RigGlance;
use serde::Serialize;

/// When the next walk is due, and all else that is.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct DueScreen {
    /// What its owner calls the rig.
    pub rig: String,
    /// The day of the next walk, as `2028-03-20`.
    pub on: String,
    /// Which limit comes first, by its code.
    pub reason: String,
    /// The day and the reason in words.
    pub words: String,
    /// The second look at what was disturbed, where one waits.
    pub second_look: Option<SecondLook>,
    /// All that is due, the first first; the walk and the second look are among them.
    pub items: Vec<DueLine>,
    /// What no backup has yet, in words.
    pub backup: Option<String>,
    /// That label and local code come first, and live parts are for a qualified person.
    pub cautions: Vec<String>,
}

/// Something that is due.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct DueLine {
    /// Its number in the list, from 1, by which a person calls it.
    pub number: u32,
    /// The day.
    pub on: String,
    /// Which limit comes first, by its code.
    pub reason: String,
    /// What it is, the day and the reason in words.
    pub words: String,
    /// What each limit comes to, in words.
    pub limits: Vec<String>,
    /// That it was put off and why, in words.
    pub put_off: Option<String>,
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

/// What is due of a rig.
///
/// # Errors
/// [`Problem`] where there is no such rig or the logbook can't be read.
pub fn due(core: &Core, rig: RigId) -> Result<DueScreen, Problem> {
    let outline = core.logbook.outline(rig)?;
    told(core, &core.logbook.glance(rig)?, &outline.second_look)
}

/// Puts off something that is due, called by its number in the list, until a day and for a reason.
///
/// # Errors
/// [`Problem`] where there is no such thing, the day can't be read, or the rules refuse it.
pub fn put_off(
    core: &mut Core,
    rig: RigId,
    number: u32,
    (until, why): (&str, &str),
) -> Result<Told, Problem> {
    let asked = called(core, rig, number)?;
    let until = until.parse().map_err(|_| {
        let args = [("found", until.into())];
        Problem::input(core.words.fill("findings-no-day", &args))
    })?;
    let why = why.to_owned();
    core.act(rig, Act::PutOff { asked, until, why })
}

/// What a number in the list of what is due calls.
///
/// # Errors
/// [`Problem`] where there is no such thing.
pub fn called(core: &Core, rig: RigId, number: u32) -> Result<Asked, Problem> {
    let glance = core.logbook.glance(rig)?;
    let place = number
        .checked_sub(1)
        .and_then(|place| usize::try_from(place).ok());
    let found = place.and_then(|place| glance.due.get(place));
    found.map(|due| due.asked).ok_or_else(|| {
        let args = [("number", number.into())];
        Problem::not_found(core.words.fill("timing-no-due", &args))
    })
}

/// The day and the reason of the next walk in words.
pub(crate) fn next_walk(core: &Core, glance: &RigGlance) -> String {
    walk(glance).map_or_else(String::new, |due| core.words.due_item(due, None))
}

fn walk(glance: &RigGlance) -> Option<&Due> {
    glance.due.iter().find(|due| due.asked == Asked::Walk)
}

/// What is due of a rig, beside the points that wait for their second look.
pub(crate) fn told(
    core: &Core,
    glance: &RigGlance,
    waiting: &[Code],
) -> Result<DueScreen, Problem> {
    let next = walk(glance);
    let asked_of_parts = glance
        .due
        .iter()
        .any(|due| !matches!(due.asked, Asked::Walk | Asked::SecondLook));
    // The book is read only where something of it is to be named.
    let book = if asked_of_parts {
        core.logbook.shared_book(glance.rig.id).ok()
    } else {
        None
    };
    let second = glance.due.iter().find(|due| due.asked == Asked::SecondLook);
    let items = glance.due.iter().enumerate();
    Ok(DueScreen {
        rig: glance.rig.name.clone(),
        on: next.map(|due| due.on.to_string()).unwrap_or_default(),
        reason: next
            .map(|due| due.reason.code().to_owned())
            .unwrap_or_default(),
        words: next_walk(core, glance),
        second_look: second.map(|due| second_look(core, due, waiting)),
        items: items
            .map(|(place, due)| line(core, book.as_deref(), count(place + 1), due))
            .collect(),
        backup: crate::backup::reminder(core)?,
        cautions: vec![
            core.words.say("caution-label-first"),
            core.words.say("caution-qualified"),
        ],
    })
}

fn line(core: &Core, book: Option<&Book>, number: u32, due: &Due) -> DueLine {
    DueLine {
        number,
        on: due.on.to_string(),
        reason: due.reason.code().to_owned(),
        words: core.words.due_item(due, book),
        limits: due
            .bounds
            .iter()
            .map(|bound| core.words.bound(bound))
            .collect(),
        put_off: core.words.put_off(due),
    }
}

fn second_look(core: &Core, due: &Due, waiting: &[Code]) -> SecondLook {
    let points: Vec<String> = waiting.iter().map(ToString::to_string).collect();
    let args = [
        ("date", core.words.date(due.on).into()),
        ("points", points.join(", ").into()),
    ];
    SecondLook {
        on: due.on.to_string(),
        words: core.words.fill("due-second-look", &args),
        points,
    }
}
