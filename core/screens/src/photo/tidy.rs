//! What is done about the files of photos, and only when it is asked for.

use super::check::kilobytes;
use crate::{Core, Problem};

/// Removes the files that no entry names; gives what is told.
///
/// # Errors
/// [`Problem`] where the ledger can't be read or a file can't be removed.
pub fn clear(core: &mut Core) -> Result<String, Problem> {
    let removed = core.logbook.remove_strays();
    let removed = removed.map_err(|fault| core.storage(&fault))?;
    let size = removed.iter().map(|stray| stray.bytes).sum();
    let args = [
        ("count", removed.len().into()),
        ("size", kilobytes(size).into()),
    ];
    Ok(core.words.fill("photo-cleared", &args))
}

/// Makes all thumbnails anew; gives what is told, and of which photos none could be made.
///
/// # Errors
/// [`Problem`] where the ledger can't be read or there is no room.
pub fn thumbnails(core: &mut Core) -> Result<Vec<String>, Problem> {
    let made = core.logbook.make_thumbnails();
    let (made, not) = made.map_err(|fault| core.storage(&fault))?;
    let words = &core.words;
    let mut told = vec![words.fill("photo-thumbnails", &[("count", made.into())])];
    let none = |digest: &String| words.fill("photo-no-thumbnail", &[("digest", digest.into())]);
    told.extend(not.iter().map(none));
    Ok(told)
}

/// Whether pictures are kept as they came, in words.
///
/// # Errors
/// [`Problem`] where the logbook can't be read.
pub fn originals(core: &Core) -> Result<String, Problem> {
    Ok(core.words.say(if core.logbook.keeps_originals()? {
        "photo-originals-kept"
    } else {
        "photo-originals-not-kept"
    }))
}

/// Sets whether pictures are kept as they came; gives what is told.
///
/// # Errors
/// [`Problem`] where it can't be kept.
pub fn keep_originals(core: &mut Core, keep: bool) -> Result<String, Problem> {
    let kept = core.logbook.set_keeps_originals(keep);
    kept.map_err(|fault| core.storage(&fault))?;
    originals(core)
}
