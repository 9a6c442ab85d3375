//! Photos that are expected: noted before a camera opens, so that an end of the program behind the
//! camera loses none.

use super::PhotoFault;
use crate::logbook::ActFault;
use crate::store::{Store, StoreFault};
use crate::stored::{About, Shape, Text};
use baywalk_domain::finding;
use baywalk_domain::ids::{ActId, RigId};
use serde::{Deserialize, Serialize};
use std::path::{Path, PathBuf};

/// The key under which expected photos are kept.
const EXPECTED: &str = "photos_expected";

/// A photo that is expected at a path.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Expected {
    /// The name that its act will have, so that it is entered once.
    pub(crate) id: ActId,
    /// The rig.
    pub(crate) rig: RigId,
    /// What it will show.
    pub(crate) about: finding::About,
    /// Where the camera writes it.
    pub(crate) path: PathBuf,
}

/// What came of a photo that was expected.
#[derive(Debug, Clone, PartialEq)]
pub struct Arrived {
    /// Where the camera was to write it. The file is left there, with all that the camera wrote.
    pub path: PathBuf,
    /// The rig.
    pub rig: RigId,
    /// What it shows.
    pub about: finding::About,
    /// What came of it.
    pub came: Came,
}

/// What came of a photo that was expected.
#[derive(Debug, Clone, PartialEq)]
pub enum Came {
    /// It is entered.
    Entered {
        /// The number of its entry.
        seq: u64,
    },
    /// The camera wrote nothing; it is no longer expected.
    Nothing,
    /// What the camera wrote is no photo, or not yet one. It is still expected.
    NoPhoto(PhotoFault),
    /// The photo is kept and the rules refuse the entry. It is still expected.
    NotTaken(ActFault),
    /// The photo can't be read or kept. It is still expected.
    NotKept(StoreFault),
}

/// An expected photo as it is stored. A path below the folder of the store is stored from there
/// on: on some systems that folder has another place after an update.
#[derive(Serialize, Deserialize)]
struct Noted {
    id: Text<ActId>,
    rig: Text<RigId>,
    about: About,
    path: String,
}

impl Store {
    /// The photos that are expected. A note that can't be read is as if it were not there.
    pub(crate) fn expected(&self) -> Result<Vec<Expected>, StoreFault> {
        let text = self.scratch(EXPECTED)?.unwrap_or_default();
        let noted: Vec<Noted> = serde_json::from_str(&text).unwrap_or_default();
        let read = noted.into_iter().filter_map(|noted| {
            Some(Expected {
                id: noted.id.domain().ok()?,
                rig: noted.rig.domain().ok()?,
                about: noted.about.domain().ok()?,
                path: self.folder().join(noted.path),
            })
        });
        Ok(read.collect())
    }

    /// Notes a photo that is expected, in place of one at the same path.
    pub(crate) fn expect(&self, photo: Expected) -> Result<(), StoreFault> {
        let mut all = self.expected()?;
        all.retain(|other| other.path != photo.path);
        all.push(photo);
        self.note_expected(&all)
    }

    /// Expects a photo at a path no longer.
    pub(crate) fn expect_no_longer(&self, path: &Path) -> Result<(), StoreFault> {
        let mut all = self.expected()?;
        all.retain(|photo| photo.path != path);
        self.note_expected(&all)
    }

    fn note_expected(&self, all: &[Expected]) -> Result<(), StoreFault> {
        let noted: Result<Vec<Noted>, StoreFault> = all.iter().map(|one| self.noted(one)).collect();
        let text = serde_json::to_string(&noted?)
            .map_err(|error| StoreFault::Unexpected(error.to_string()))?;
        self.set_scratch(EXPECTED, (!all.is_empty()).then_some(&text))
    }

    fn noted(&self, photo: &Expected) -> Result<Noted, StoreFault> {
        let path = photo
            .path
            .strip_prefix(self.folder())
            .unwrap_or(&photo.path);
        let path = path.to_str().ok_or_else(|| StoreFault::File {
            path: photo.path.clone(),
            detail: "its name is not UTF-8".to_owned(),
        })?;
        Ok(Noted {
            id: Text::of(&photo.id),
            rig: Text::of(&photo.rig),
            about: About::of(&photo.about),
            path: path.to_owned(),
        })
    }
}
