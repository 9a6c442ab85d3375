//! A reading judged while it is typed.

use crate::Picture;
use baywalk_domain::ids::RigId;
use baywalk_screens::step::weigh as weighed;
use baywalk_screens::{Core, Problem};
use baywalk_shapes::Role;
use baywalk_shapes::drift::drift;

/// What a key would bring with what is typed so far.
#[derive(Debug, Clone, uniffi::Record)]
pub struct WeighedView {
    /// What would be told; nothing where what is typed is no whole answer yet.
    pub sentences: Vec<String>,
    /// Whether it would be refused.
    pub refused: bool,
    /// Where the neutral would stand between the lines; none where the other line was not read.
    pub drift: Option<Picture>,
}

pub(crate) fn weigh(
    core: &Core,
    rig: RigId,
    (key, typed): (&str, &[String]),
    width: f64,
) -> Result<WeighedView, Problem> {
    let found = weighed(core, rig, key, typed)?;
    let ends = ["L1", "0", "L2"];
    let scale = |volts| drift(Some(volts), width, ends, Role::Ink).into();
    Ok(WeighedView {
        sentences: found.sentences,
        refused: found.refused,
        drift: found.drift.map(scale),
    })
}
