//! A key pressed on a card that is shown: taken once, and only where the card still stands.

use super::{always, card, press_as};
use crate::card::Card;
use crate::here::Here;
use crate::{Core, Problem, Told};
use baywalk_domain::ids::{ActId, RigId};
use serde::Serialize;

/// A key pressed on a card, with what the card said of itself.
#[derive(Debug, Clone)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct Press {
    /// The card's `act`.
    pub act: String,
    /// The card's `seq`.
    pub seq: u64,
    /// The card's `point`.
    pub point: Option<String>,
    /// The code of the key.
    pub key: String,
    /// What was typed for what the key asks, in order.
    pub typed: Vec<String>,
}

/// What became of a pressed key.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Enum))]
#[serde(rename_all = "snake_case")]
pub enum How {
    /// It is recorded now.
    Recorded,
    /// A key of the same card was recorded before: this is what came of it, nothing is added.
    Before,
    /// The card no longer stands: nothing is recorded.
    Passed,
}

/// What became of a pressed key, and the card that stands now.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct Pressed {
    /// What became of it.
    pub how: How,
    /// What is told of it; nothing where the card had passed.
    pub told: Option<Told>,
    /// The card that stands now; none where the walk has ended.
    pub card: Option<Card>,
}

/// Takes a key that was pressed on a card: a second press on the same card gives what came of the
/// first, a press on a card that has passed records nothing, so that a double tap never answers for
/// the next point.
///
/// # Errors
/// [`Problem`] as [`press`](super::press), and where the card's act is no name.
pub fn press_card(core: &mut Core, rig: RigId, press: &Press) -> Result<Pressed, Problem> {
    let act: ActId = press.act.parse().map_err(|_| {
        let args = [("key", press.act.as_str().into())];
        Problem::input(core.words.fill("step-no-key", &args))
    })?;
    if let Some(told) = core.told_before(act)? {
        return pressed(core, rig, How::Before, Some(told));
    }
    if !stands(core, rig, press)? {
        return pressed(core, rig, How::Passed, None);
    }
    let told = press_as(core, rig, act, (&press.key, &press.typed))?;
    pressed(core, rig, How::Recorded, Some(told))
}

fn pressed(core: &Core, rig: RigId, how: How, told: Option<Told>) -> Result<Pressed, Problem> {
    let card = standing(core, rig)?;
    Ok(Pressed { how, told, card })
}

/// Whether the card that was pressed still stands: no entry came since, and its point is the next.
fn stands(core: &Core, rig: RigId, press: &Press) -> Result<bool, Problem> {
    if core.logbook.digest().seq != press.seq || core.logbook.shared_walk(rig)?.is_none() {
        return Ok(false);
    }
    let point = always::about(&Here::read(core, rig)?).map(|point| point.to_string());
    Ok(point == press.point)
}

/// The card that stands now, where a walk is open.
fn standing(core: &Core, rig: RigId) -> Result<Option<Card>, Problem> {
    match core.logbook.shared_walk(rig)? {
        Some(_) => card(core, rig).map(Some),
        None => Ok(None),
    }
}
