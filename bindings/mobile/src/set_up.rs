//! Setting a rig up where one stands.

use crate::{Baywalk, Fault};
use baywalk_screens::set_up::{self, Added, Facts, Piece, SetUpForm, SourcesScreen};

#[uniffi::export]
impl Baywalk {
    /// The sources of a rig, each had, not had, or not sure.
    ///
    /// # Errors
    /// [`Fault`] where there is no such rig or the logbook can't be read.
    pub fn sources(&self, rig: &str) -> Result<SourcesScreen, Fault> {
        self.with_rig(rig, |core, rig| set_up::sources(core, rig))
    }

    /// What is asked of something new: a bay of a rig, or a device or point in a bay by its code.
    ///
    /// # Errors
    /// [`Fault`] where there is no such bay, or a point has no device to be on.
    pub fn set_up_form(&self, rig: &str, piece: Piece, bay: &str) -> Result<SetUpForm, Fault> {
        self.with_rig(rig, |core, rig| set_up::form(core, rig, piece, bay))
    }

    /// Adds something new by the answers to what is asked of it, in order.
    ///
    /// # Errors
    /// [`Fault`] where answers are missing or can't be, or the rules refuse it; nothing is added.
    pub fn set_up_add(
        &self,
        rig: &str,
        piece: Piece,
        bay: &str,
        answers: Vec<String>,
    ) -> Result<Added, Fault> {
        self.with_rig(rig, |core, rig| {
            set_up::add(core, rig, piece, (bay, &answers))
        })
    }

    /// Adds a point like the one that has a code, under the next free code.
    ///
    /// # Errors
    /// [`Fault`] where there is no such point or the rules refuse it.
    pub fn set_up_copy(&self, rig: &str, point: &str) -> Result<Added, Fault> {
        self.with_rig(rig, |core, rig| set_up::copy(core, rig, point))
    }

    /// What is noted of a record by its code, field by field; [`Baywalk::change`] fills one in.
    ///
    /// # Errors
    /// [`Fault`] where there is no such record or the logbook can't be read.
    pub fn facts(&self, rig: &str, code: &str) -> Result<Facts, Fault> {
        self.with_rig(rig, |core, rig| set_up::facts(core, rig, code))
    }
}
