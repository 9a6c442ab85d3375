//! Rigs and their books: from a layout, and changed record by record.

use crate::{Baywalk, Fault};
use baywalk_screens::files::LayoutLine;
use baywalk_screens::{Told, book, files};

/// A column of a record and what stands in it, as in the rig's files.
#[derive(Debug, Clone, PartialEq, Eq, uniffi::Record)]
pub struct Field {
    /// The column.
    pub name: String,
    /// What stands in it.
    pub value: String,
}

impl Field {
    pub(crate) fn pairs(fields: Vec<Self>) -> Vec<(String, String)> {
        let pair = |field: Self| (field.name, field.value);
        fields.into_iter().map(pair).collect()
    }
}

#[uniffi::export]
impl Baywalk {
    /// The layouts that a rig can be started from.
    ///
    /// # Errors
    /// None today; a shell treats one as any other.
    pub fn layouts(&self) -> Result<Vec<LayoutLine>, Fault> {
        Ok(files::layouts(&self.words))
    }

    /// Starts a rig from a layout, under a name; gives its name for the machine.
    ///
    /// # Errors
    /// [`Fault`] where there is no such layout or it can't be stored.
    pub fn start_from(&self, layout: &str, name: &str) -> Result<String, Fault> {
        self.with(|core| files::start_from(core, layout, name).map(|rig| rig.to_string()))
    }

    /// Adds a record (`source`, `bay`, `device`, `point`, `tool`) to a rig's book.
    ///
    /// # Errors
    /// [`Fault`] with every fault of the record; nothing is changed then.
    pub fn add(&self, rig: &str, what: &str, fields: Vec<Field>) -> Result<Vec<Told>, Fault> {
        let pairs = Field::pairs(fields);
        self.with_rig(rig, |core, rig| book::add(core, rig, what, &pairs))
    }

    /// Changes a record of a rig's book, by its code.
    ///
    /// # Errors
    /// [`Fault`] with every fault of the change; nothing is changed then.
    pub fn change(&self, rig: &str, code: &str, fields: Vec<Field>) -> Result<Vec<Told>, Fault> {
        let pairs = Field::pairs(fields);
        self.with_rig(rig, |core, rig| book::change(core, rig, code, &pairs))
    }

    /// Retires a record of a rig's book: it stays in the past and is asked for no longer.
    ///
    /// # Errors
    /// [`Fault`] where there is no such record or something still needs it.
    pub fn retire(&self, rig: &str, code: &str) -> Result<Vec<Told>, Fault> {
        self.with_rig(rig, |core, rig| book::retire(core, rig, code))
    }
}
