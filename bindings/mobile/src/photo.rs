//! Photos: expected of a camera, taken in from a file.

use crate::{Baywalk, Fault};
use baywalk_screens::Told;
use baywalk_screens::photo::{self, ArrivedLine};
use std::path::Path;

/// A place on a photo, in thousandths from its upper left.
#[derive(Debug, Clone, Copy, PartialEq, Eq, uniffi::Record)]
pub struct PinPlace {
    /// Of its width.
    pub across: u16,
    /// Of its height.
    pub down: u16,
}

#[uniffi::export]
impl Baywalk {
    /// Notes a photo before the camera opens that is to write it to a path, of what a code or the
    /// rig's name says; gives what is told.
    ///
    /// # Errors
    /// [`Fault`] where there is no such place or it can't be noted.
    pub fn photo_expected(&self, rig: &str, place: &str, path: &str) -> Result<String, Fault> {
        self.with_rig(rig, |core, rig| {
            photo::expect(core, rig, place, Path::new(path))
        })
    }

    /// Expects a photo no longer, as where the camera was left without one.
    ///
    /// # Errors
    /// [`Fault`] where it can't be noted.
    pub fn photo_forgotten(&self, path: &str) -> Result<String, Fault> {
        self.with(|core| photo::forget(core, Path::new(path)))
    }

    /// Enters the expected photos that have arrived; called at each start and when a camera returns.
    ///
    /// # Errors
    /// [`Fault`] where the notes can't be read or written.
    pub fn photos_arrived(&self) -> Result<Vec<ArrivedLine>, Fault> {
        self.with(photo::arrived)
    }

    /// Shows a bay by the newest photo that the open walk has of it; its pins are put anew.
    ///
    /// # Errors
    /// [`Fault`] where the open walk has no photo of the bay, or it can't be kept.
    pub fn photo_show(&self, rig: &str, bay: &str) -> Result<Told, Fault> {
        self.with_rig(rig, |core, rig| photo::show(core, rig, bay))
    }

    /// Puts the pin of a point on its bay's photo, in thousandths of width and height from the
    /// upper left, or takes it out where no place is said.
    ///
    /// # Errors
    /// [`Fault`] where its bay has no photo, the place is beside it, or it can't be kept.
    pub fn pin(&self, rig: &str, point: &str, at: Option<PinPlace>) -> Result<Told, Fault> {
        let at = at.map(|at| (at.across, at.down));
        self.with_rig(rig, |core, rig| photo::pin(core, rig, point, at))
    }

    /// Takes a photo in from a file, of what a code or the rig's name says.
    ///
    /// # Errors
    /// [`Fault`] where no walk is open, or the file is no photo or can't be kept.
    pub fn photo_add(
        &self,
        rig: &str,
        place: &str,
        path: &str,
        caption: &str,
    ) -> Result<Told, Fault> {
        let file = (Path::new(path), caption);
        self.with_rig(rig, |core, rig| photo::add(core, rig, place, file))
    }
}
