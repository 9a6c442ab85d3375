//! Photos held against the ledger.

use crate::named::count;
use crate::{Core, Problem};
use baywalk_logbook::photo::{MissingPhoto, MissingWhy, Stray, StrayWhy};
use baywalk_words::Words;
use serde::Serialize;

/// What a check of the photos found.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct PhotosScreen {
    /// How many entries name a photo.
    pub entered: u32,
    /// How many of these are not there as they were.
    pub missing: u32,
    /// How many files no entry names.
    pub strays: u32,
    /// In words, what is missing first.
    pub words: Vec<String>,
}

/// Holds every photo against the ledger: each file is hashed again.
///
/// # Errors
/// [`Problem`] where the logbook can't be read.
pub fn check(core: &Core) -> Result<PhotosScreen, Problem> {
    let words = &core.words;
    let found = core.logbook.check_photos();
    let found = found.map_err(|fault| core.storage(&fault))?;
    let entered = ("count", found.entered.into());
    let mut told = vec![if found.missing.is_empty() {
        words.fill("photo-all-there", &[entered])
    } else {
        let missing = ("missing", found.missing.len().into());
        words.fill("photo-some-missing", &[entered, missing])
    }];
    told.extend(found.missing.iter().map(|one| missing(core, one)));
    told.extend(found.strays.iter().map(|one| stray(words, one)));
    let ours = found
        .strays
        .iter()
        .filter(|one| one.why != StrayWhy::NotOurs);
    let ours = ours.count();
    if ours > 0 {
        told.push(words.fill("photo-strays", &[("count", ours.into())]));
    }
    Ok(PhotosScreen {
        entered: count(found.entered),
        missing: count(found.missing.len()),
        strays: count(found.strays.len()),
        words: told,
    })
}

fn missing(core: &Core, one: &MissingPhoto) -> String {
    let book = core.logbook.shared_book(one.rig).ok();
    let key = match one.why {
        MissingWhy::Gone => "photo-gone",
        MissingWhy::Changed => "photo-changed",
        MissingWhy::Unreadable => "photo-unreadable",
        MissingWhy::OriginalChanged => "photo-original-changed",
    };
    let args = [
        ("seq", one.seq.to_string().into()),
        ("about", core.words.about(one.about, book.as_deref()).into()),
        ("digest", one.digest.as_str().into()),
    ];
    core.words.fill(key, &args)
}

fn stray(words: &Words, one: &Stray) -> String {
    let key = match one.why {
        StrayWhy::NotEntered => "photo-stray",
        StrayWhy::Unfinished => "photo-unfinished",
        StrayWhy::NotOurs => "photo-not-ours",
    };
    let args = [
        ("path", one.path.display().to_string().into()),
        ("size", kilobytes(one.bytes).into()),
    ];
    words.fill(key, &args)
}

/// Bytes in thousands, rounded up.
pub(super) fn kilobytes(bytes: u64) -> String {
    bytes.div_ceil(1000).to_string()
}
