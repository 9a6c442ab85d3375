//! Noting what happens between walks: odometer, hours, trips, events.

use crate::rule::reach;
use crate::{Core, Problem, Told};
use baywalk_domain::coded::Coded;
use baywalk_domain::due::{EventKind, Restart, Usage};
use baywalk_domain::ids::RigId;
use baywalk_domain::units::{Stated, Unit};
use baywalk_domain::walk::Act;

/// Notes the odometer, written as `41230 mi`.
///
/// # Errors
/// [`Problem`] where it can't be read, or is below an earlier note.
pub fn odometer(core: &mut Core, rig: RigId, text: &str) -> Result<Told, Problem> {
    let reading = stated(core, text)?;
    core.act(rig, Act::Odometer(reading))
}

/// Notes that the odometer goes on from a reading, since it was replaced or earlier notes were wrong.
///
/// # Errors
/// [`Problem`] where the reading or the reason can't be read, or no note stands that could be wrong.
pub fn restart(core: &mut Core, rig: RigId, text: &str, why: &str) -> Result<Told, Problem> {
    let usage = of_restart(core, text, why)?;
    core.act(rig, Act::Usage(usage))
}

/// Notes the hour meter of the engine, written as `812 h`.
///
/// # Errors
/// [`Problem`] where it can't be read.
pub fn hours(core: &mut Core, rig: RigId, text: &str) -> Result<Told, Problem> {
    let reading = stated(core, text)?;
    core.act(rig, Act::Usage(Usage::Hours(reading)))
}

/// Notes a trip of a rig that has no odometer, written as `320 mi`.
///
/// # Errors
/// [`Problem`] where it can't be read.
pub fn trip(core: &mut Core, rig: RigId, text: &str) -> Result<Told, Problem> {
    let far = stated(core, text)?;
    core.act(rig, Act::Usage(Usage::Trip(far)))
}

/// Notes an event: its kind, what it is about (a code, or nothing for the rig), how far where it is a
/// bad road, and words.
///
/// # Errors
/// [`Problem`] where a part can't be read or names nothing.
pub fn event(
    core: &mut Core,
    rig: RigId,
    kind: &str,
    parts: (&str, &str, &str),
) -> Result<Told, Problem> {
    let usage = of_event(core, rig, kind, parts)?;
    core.act(rig, Act::Usage(usage))
}

/// The note that an odometer goes on from a reading, and why; nothing is changed.
///
/// # Errors
/// [`Problem`] where the reading or the reason can't be read.
pub fn of_restart(core: &Core, text: &str, why: &str) -> Result<Usage, Problem> {
    Ok(Usage::Restart {
        reading: stated(core, text)?,
        why: code::<Restart>(core, why)?,
    })
}

/// The note of an event, by the parts of [`event`]; nothing is changed.
///
/// # Errors
/// [`Problem`] where a part can't be read or names nothing.
pub fn of_event(
    core: &Core,
    rig: RigId,
    kind: &str,
    (about, distance, note): (&str, &str, &str),
) -> Result<Usage, Problem> {
    let book = core.logbook.shared_book(rig)?;
    let distance = match distance.trim() {
        "" => None,
        text => Some(stated(core, text)?),
    };
    Ok(Usage::Event {
        event: code::<EventKind>(core, kind)?,
        reach: reach(core, &book, about)?,
        distance,
        note: note.to_owned(),
    })
}

/// A quantity as it is noted, such as `41230 mi`.
///
/// # Errors
/// [`Problem`] where it can't be read.
pub fn stated<U: Unit>(core: &Core, text: &str) -> Result<Stated<U>, Problem> {
    Stated::parse_pair(text).map_err(|fault| Problem::input(core.words.stated_fault(&fault)))
}

fn code<C: Coded>(core: &Core, text: &str) -> Result<C, Problem> {
    C::from_code(text).map_err(|fault| Problem::input(core.words.unknown_code(&fault)))
}
