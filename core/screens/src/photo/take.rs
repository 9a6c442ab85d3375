//! Taking a photo in.

use super::pin::adopt;
use super::{meant, storage};
use crate::{Core, Problem, Told};
use baywalk_domain::finding::About;
use baywalk_domain::ids::RigId;
use baywalk_domain::walk::Act;
use std::path::Path;

/// Takes a photo in from a file and notes what it shows; `typed` holds the file and the caption.
///
/// # Errors
/// [`Problem`] where the file is no photo or can't be kept; nothing is noted then.
pub(crate) fn take(
    core: &mut Core,
    rig: RigId,
    about: About,
    typed: &[String],
) -> Result<Told, Problem> {
    let text = |place: usize| typed.get(place).map(|text| text.trim()).unwrap_or_default();
    enter(core, rig, about, (Path::new(text(0)), text(1)))
}

/// Takes a photo in from a file, of what a code or the rig's name says.
///
/// # Errors
/// [`Problem`] where there is no such place, no walk is open, or the file is no photo or can't be
/// kept; nothing is noted then.
pub fn add(
    core: &mut Core,
    rig: RigId,
    place: &str,
    (path, caption): (&Path, &str),
) -> Result<Told, Problem> {
    let about = meant(core, rig, place)?;
    if core.logbook.open_walk(rig)?.is_none() {
        return Err(Problem::refused(core.words.say("refused-no-walk")));
    }
    enter(core, rig, about, (path, caption.trim()))
}

fn enter(
    core: &mut Core,
    rig: RigId,
    about: About,
    (path, caption): (&Path, &str),
) -> Result<Told, Problem> {
    let taken = core.logbook.add_photo(path);
    let digest = taken
        .map_err(|fault| storage(&core.words, path, &fault))?
        .to_string();
    let caption = caption.to_owned();
    let told = core.act(
        rig,
        Act::Photo {
            about,
            digest,
            caption,
        },
    )?;
    let forgotten = core.logbook.photo_not_expected(path);
    forgotten.map_err(|fault| core.storage(&fault))?;
    adopt(core, rig, about)?;
    Ok(told)
}
