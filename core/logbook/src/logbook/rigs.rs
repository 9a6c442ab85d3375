//! Rigs from files and to files.

use super::{ImportFault, Logbook, Outcome};
use crate::rigfile::{self, Files, NamedText};
use crate::store::StoreFault;
use baywalk_domain::ids::{ActId, RigId};
use baywalk_domain::rig::BookChange;
use baywalk_domain::walk::{Act, Call};

impl Logbook {
    /// Takes a new rig from its two files.
    ///
    /// # Errors
    /// [`ImportFault`] with every fault of the files, or why the book is not taken.
    pub fn import_rig(
        &mut self,
        toml: &NamedText<'_>,
        csv: &NamedText<'_>,
    ) -> Result<Outcome, ImportFault> {
        let id = ActId::new(self.clock.new_id());
        let book = rigfile::read(toml, csv, id).map_err(ImportFault::Files)?;
        let call = Call {
            id,
            rig: book.rig.id,
            act: Act::Book(BookChange::Whole(Box::new(book))),
        };
        let now = self.clock.now();
        Ok(self.record(&call, &now)?)
    }

    /// The two files of a rig.
    ///
    /// # Errors
    /// [`StoreFault`] where there is no such rig or the store can't be read.
    pub fn export_rig(&self, rig: RigId) -> Result<Files, StoreFault> {
        Ok(rigfile::write(&self.book(rig)?))
    }
}
