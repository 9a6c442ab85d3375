//! Taking a photo in.

use crate::{Core, Problem, Told};
use baywalk_domain::finding::About;
use baywalk_domain::ids::RigId;
use baywalk_domain::walk::Act;
use baywalk_logbook::store::StoreFault;
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
    let taken = core.logbook.add_photo(Path::new(text(0)));
    let digest = match taken {
        Ok(digest) => digest.to_string(),
        Err(StoreFault::File { detail, .. }) => {
            let args = [("why", detail.into())];
            return Err(Problem::input(core.words.fill("storage-photo", &args)));
        }
        Err(fault) => return Err(core.storage(&fault)),
    };
    let caption = text(1).to_owned();
    core.act(
        rig,
        Act::Photo {
            about,
            digest,
            caption,
        },
    )
}
