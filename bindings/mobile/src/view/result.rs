//! How a walk ended: its screen and its strip.

use crate::Picture;
use crate::view::rig::drawn;
use baywalk_domain::ids::RigId;
use baywalk_screens::result::{ResultScreen, result as screen};
use baywalk_screens::{Core, Problem, paper};
use baywalk_shapes::strip::Standing;

/// The result of a walk as it is shown.
#[derive(Debug, Clone, uniffi::Record)]
pub struct ResultView {
    /// What it says.
    pub screen: ResultScreen,
    /// The strip: the rig from the side, with what was found in each bay.
    pub strip: Picture,
}

pub(crate) fn result(core: &Core, rig: RigId, width: f64) -> Result<ResultView, Problem> {
    let walk = paper::last_walk(core, rig)?;
    let (state, book) = core.logbook.walk_and_book(walk)?;
    let standings = Standing::of_walk(&state, &book);
    Ok(ResultView {
        screen: screen(core, rig, walk)?,
        strip: drawn(core, &book, standings, width),
    })
}
