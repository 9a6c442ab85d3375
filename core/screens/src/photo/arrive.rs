//! Photos that are expected of a camera.

use super::pin::adopt;
use super::{meant, sentence, storage};
use crate::{Core, Problem};
use baywalk_domain::ids::RigId;
use baywalk_logbook::ActFault;
use baywalk_logbook::photo::{Arrived, Came};
use serde::Serialize;
use std::path::Path;

/// What came of one expected photo.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct ArrivedLine {
    /// Where the camera was to write it.
    pub path: String,
    /// Whether it is entered.
    pub entered: bool,
    /// Whether it is still expected.
    pub expected: bool,
    /// In words.
    pub words: String,
}

/// Notes a photo before the camera opens that is to write it to a path; gives what is told.
///
/// # Errors
/// [`Problem`] where there is no such place or it can't be noted.
pub fn expect(core: &mut Core, rig: RigId, place: &str, path: &Path) -> Result<String, Problem> {
    let about = meant(core, rig, place)?;
    let noted = core.logbook.photo_expected(rig, about, path);
    noted.map_err(|fault| storage(&core.words, path, &fault))?;
    let args = [("path", path.display().to_string().into())];
    Ok(core.words.fill("photo-expected", &args))
}

/// Expects a photo at a path no longer; gives what is told.
///
/// # Errors
/// [`Problem`] where it can't be noted.
pub fn forget(core: &mut Core, path: &Path) -> Result<String, Problem> {
    let noted = core.logbook.photo_not_expected(path);
    noted.map_err(|fault| storage(&core.words, path, &fault))?;
    let args = [("path", path.display().to_string().into())];
    Ok(core.words.fill("photo-expected-no-longer", &args))
}

/// Enters the expected photos that have arrived and tells what came of each. A shell calls it at
/// its start and when a camera returns.
///
/// # Errors
/// [`Problem`] where the notes can't be read or written.
pub fn arrived(core: &mut Core) -> Result<Vec<ArrivedLine>, Problem> {
    let arrived = core.logbook.photos_arrived();
    let arrived = arrived.map_err(|fault| core.storage(&fault))?;
    for one in &arrived {
        if matches!(one.came, Came::Entered { .. }) {
            adopt(core, one.rig, one.about)?;
        }
    }
    Ok(arrived.iter().map(|one| line(core, one)).collect())
}

fn line(core: &Core, one: &Arrived) -> ArrivedLine {
    let words = &core.words;
    let book = core.logbook.shared_book(one.rig).ok();
    let path = one.path.display().to_string();
    let (key, why) = match &one.came {
        Came::Entered { .. } => ("photo-entered", None),
        Came::Nothing => ("photo-nothing", None),
        Came::NoPhoto(fault) => ("photo-not-entered", Some(sentence(words, fault))),
        Came::NotTaken(ActFault::Refused(refusal)) => (
            "photo-not-entered",
            Some(words.refusal(refusal, book.as_deref())),
        ),
        Came::NotTaken(fault) => ("photo-not-entered", Some(fault.to_string())),
        Came::NotKept(fault) => {
            let problem = storage(&core.words, &one.path, fault);
            ("photo-not-entered", Some(problem.sentence))
        }
    };
    let about = words.about(one.about, book.as_deref());
    let mut args = vec![("about", about.into()), ("path", path.as_str().into())];
    let expected = why.is_some();
    args.extend(why.map(|why| ("why", why.into())));
    ArrivedLine {
        words: words.fill(key, &args),
        entered: key == "photo-entered",
        expected,
        path,
    }
}
