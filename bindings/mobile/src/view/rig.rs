//! A rig: its screen and its strip.

use crate::Picture;
use baywalk_domain::ids::{BayId, RigId};
use baywalk_domain::rig::Book;
use baywalk_screens::rig::{RigScreen, rig as screen};
use baywalk_screens::{Core, Problem};
use baywalk_shapes::strip::{Standing, strip};
use std::collections::BTreeMap;

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
    let book = core.logbook.shared_book(rig)?;
    let walk = core.logbook.shared_walk(rig)?;
    let standings = walk
        .as_ref()
        .map(|walk| Standing::of_walk(walk, &book))
        .unwrap_or_default();
    Ok(RigView {
        screen: screen(core, rig)?,
        strip: drawn(core, &book, standings, width),
        walking: walk.is_some(),
    })
}

/// The strip of a rig, the side at each bay.
pub(super) fn drawn(
    core: &Core,
    book: &Book,
    mut standings: BTreeMap<BayId, Standing>,
    width: f64,
) -> Picture {
    for bay in book.bays.iter().filter(|bay| !bay.retired) {
        let standing = standings.entry(bay.id).or_default();
        standing.word = core.words.code(bay.side);
    }
    strip(book, &standings, width).into()
}
