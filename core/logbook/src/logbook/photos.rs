//! Photos: taken in, expected of a camera, held against the ledger.

use super::{ActFault, Logbook};
use crate::ledger::{self, Digest};
use crate::photo::{Arrived, Came, Expected, PhotoCheck, PhotoFault, Stray};
use crate::store::StoreFault;
use baywalk_domain::finding::About;
use baywalk_domain::ids::{ActId, RigId};
use baywalk_domain::walk::{Act, Call};
use std::path::{Path, PathBuf};

impl Logbook {
    /// Takes a photo in from a file, lastingly, and gives its digest for [`Act::Photo`].
    ///
    /// Kept are a master turned upright, with the time and nothing else that the camera wrote
    /// beside the pixels, and its thumbnail. The file itself is left where it is.
    ///
    /// # Errors
    /// [`StoreFault`] where it is no photo, not within the limits of [`photo`](crate::photo), not
    /// sound, or can't be read or written; nothing is entered.
    ///
    /// [`Act::Photo`]: baywalk_domain::walk::Act::Photo
    pub fn add_photo(&mut self, path: &Path) -> Result<Digest, StoreFault> {
        self.store.add_photo(path)
    }

    /// The file of a photo by its digest, where there is one.
    #[must_use]
    pub fn photo(&self, digest: &str) -> Option<PathBuf> {
        crate::photo::find(&self.store.photos(), digest)
    }

    /// The thumbnail of a photo by its digest; it is made where it is not there.
    ///
    /// # Errors
    /// [`StoreFault`] where there is no such photo, or it can't be read or written.
    pub fn thumbnail(&mut self, digest: &str) -> Result<PathBuf, StoreFault> {
        self.store.thumbnail(digest, false)
    }

    /// Makes the thumbnails of all photos anew; gives how many, and the digests of photos that
    /// none could be made of.
    ///
    /// # Errors
    /// [`StoreFault`] where the ledger can't be read, or there is no room.
    pub fn make_thumbnails(&mut self) -> Result<(usize, Vec<String>), StoreFault> {
        let (mut made, mut not) = (0, Vec::new());
        for digest in self.store.photos_entered()? {
            match self.store.thumbnail(&digest, true) {
                Ok(_) => made += 1,
                Err(StoreFault::StorageFull) => return Err(StoreFault::StorageFull),
                Err(_) => not.push(digest),
            }
        }
        Ok((made, not))
    }

    /// Whether pictures are kept as they came, beside their masters; they are not unless it is set.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be read.
    pub fn keeps_originals(&self) -> Result<bool, StoreFault> {
        self.store.keeps_originals()
    }

    /// Sets whether pictures are kept as they came: with all their pixels, and still without what
    /// the camera wrote beside them but the time and which way is up.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be written.
    pub fn set_keeps_originals(&mut self, keep: bool) -> Result<(), StoreFault> {
        self.store.set_keeps_originals(keep)
    }

    /// Notes a photo before the camera opens that is to write it to a path.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be written.
    pub fn photo_expected(
        &mut self,
        rig: RigId,
        about: About,
        path: &Path,
    ) -> Result<(), StoreFault> {
        let id = ActId::new(self.clock.new_id());
        let path = std::path::absolute(path).map_err(|error| StoreFault::file(path, &error))?;
        self.store.expect(Expected {
            id,
            rig,
            about,
            path,
        })
    }

    /// Expects a photo at a path no longer.
    ///
    /// # Errors
    /// [`StoreFault`] where the store can't be written.
    pub fn photo_not_expected(&mut self, path: &Path) -> Result<(), StoreFault> {
        let path = std::path::absolute(path).map_err(|error| StoreFault::file(path, &error))?;
        self.store.expect_no_longer(&path)
    }

    /// Enters the expected photos that have arrived and says what came of each. A shell calls it at
    /// its start and when a camera returns. One that the camera did not write is no longer expected;
    /// one that can't be entered stays expected and is told again. No file is removed.
    ///
    /// # Errors
    /// [`StoreFault`] where the notes can't be read or written.
    pub fn photos_arrived(&mut self) -> Result<Vec<Arrived>, StoreFault> {
        let mut arrived = Vec::new();
        for photo in self.store.expected()? {
            let came = self.arrive(&photo)?;
            if matches!(came, Came::Entered { .. } | Came::Nothing) {
                self.store.expect_no_longer(&photo.path)?;
            }
            let Expected {
                rig, about, path, ..
            } = photo;
            arrived.push(Arrived {
                path,
                rig,
                about,
                came,
            });
        }
        Ok(arrived)
    }

    fn arrive(&mut self, photo: &Expected) -> Result<Came, StoreFault> {
        if let Some(entered) = ledger::by_id(self.store.conn(), photo.id)? {
            return Ok(Came::Entered { seq: entered.seq });
        }
        if !photo.path.exists() {
            return Ok(Came::Nothing);
        }
        let digest = match self.store.add_photo(&photo.path) {
            Ok(digest) => digest.to_string(),
            Err(StoreFault::Photo(PhotoFault::Empty)) => return Ok(Came::Nothing),
            Err(StoreFault::Photo(fault)) => return Ok(Came::NoPhoto(fault)),
            Err(fault) => return Ok(Came::NotKept(fault)),
        };
        let act = Act::Photo {
            about: photo.about,
            digest,
            caption: String::new(),
        };
        let call = Call {
            id: photo.id,
            rig: photo.rig,
            act,
        };
        let now = self.clock.now();
        Ok(match self.record(&call, &now) {
            Ok(outcome) => Came::Entered { seq: outcome.seq },
            Err(ActFault::Storage(fault)) => Came::NotKept(fault),
            Err(fault) => Came::NotTaken(fault),
        })
    }

    /// Holds the photos against the ledger; every file is hashed again.
    ///
    /// # Errors
    /// [`StoreFault`] where the ledger or a folder can't be read.
    pub fn check_photos(&self) -> Result<PhotoCheck, StoreFault> {
        self.store.check_photos()
    }

    /// Removes the files in the folders of photos that no entry names, and gives what was removed.
    /// It is never done unasked: where newest entries were lost, their photos are such files.
    ///
    /// # Errors
    /// [`StoreFault`] where the ledger or a folder can't be read, or a file can't be removed.
    pub fn remove_strays(&mut self) -> Result<Vec<Stray>, StoreFault> {
        self.store.remove_strays()
    }
}
