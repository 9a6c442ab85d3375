//! A rig: its screen and its strip.

use crate::Picture;
use baywalk_domain::ids::RigId;
use baywalk_screens::rig::{RigScreen, rig as screen};
use baywalk_screens::{Core, Problem};
use baywalk_shapes::strip::{Standing, strip};

/// A rig as it is shown.
#[derive(Debug, Clone, uniffi::Record)]
pub struct RigView {
    /// What it says.
    pub screen: RigScreen,
    /// The strip: the rig from the side, with what is done.
    pub strip: Picture,
    /// Whether a walk is open.
    pub walking: bool,
}

pub(crate) fn rig(core: &Core, rig: RigId, width: f64) -> Result<RigView, Problem> {
    let book = core.logbook.book(rig)?;
    let walk = core.logbook.open_walk(rig)?;
    let mut standings = walk
        .as_ref()
        .map(|walk| Standing::of_walk(walk, &book))
        .unwrap_or_default();
    for bay in book.bays.iter().filter(|bay| !bay.retired) {
        let standing = standings.entry(bay.id).or_default();
        standing.word = core.words.code(bay.side);
    }
    Ok(RigView {
        screen: screen(core, rig)?,
        strip: strip(&book, &standings, width).into(),
        walking: walk.is_some(),
    })
}
