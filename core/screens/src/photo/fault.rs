//! Why a file is not taken in as a photo, in words.

use crate::Problem;
use baywalk_logbook::photo::PhotoFault;
use baywalk_logbook::store::StoreFault;
use baywalk_words::Words;
use std::path::Path;

/// Why a file is not taken in as a photo, in a whole sentence.
pub(crate) fn sentence(words: &Words, fault: &PhotoFault) -> String {
    let why = |key: &str, why: &str| words.fill(key, &[("why", why.into())]);
    match fault {
        PhotoFault::Empty => words.say("photo-empty"),
        PhotoFault::NotAPhoto => words.say("photo-none"),
        PhotoFault::Foreign { found } => {
            words.fill("photo-foreign", &[("found", found.name().into())])
        }
        PhotoFault::TooLarge { most, .. } => {
            let most = most / (1024 * 1024);
            words.fill("photo-too-large", &[("most", most.to_string().into())])
        }
        PhotoFault::TooManyPixels {
            width,
            height,
            most,
        } => words.fill(
            "photo-too-many-pixels",
            &[
                ("width", width.to_string().into()),
                ("height", height.to_string().into()),
                ("most", (most / 1_000_000).to_string().into()),
            ],
        ),
        PhotoFault::TooManyScans { pixels, most } => words.fill(
            "photo-too-many-scans",
            &[
                ("pixels", pixels.to_string().into()),
                ("most", most.to_string().into()),
            ],
        ),
        PhotoFault::CutOff => words.say("photo-cut-off"),
        PhotoFault::Damaged(detail) => why("photo-damaged", detail),
        PhotoFault::Unsupported(detail) => why("photo-unsupported", detail),
    }
}

/// What stands in the way of taking a file in, in words: a file of a person's that can't be read
/// is told as such, and not as the logbook's own.
#[must_use]
pub fn storage(words: &Words, path: &Path, fault: &StoreFault) -> Problem {
    match fault {
        StoreFault::File { path: of, detail } if of == path => {
            let args = [
                ("path", path.display().to_string().into()),
                ("why", detail.into()),
            ];
            Problem::input(words.fill("photo-cant-read", &args))
        }
        fault => crate::core::storage(words, fault),
    }
}
