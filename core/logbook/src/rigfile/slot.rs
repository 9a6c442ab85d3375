//! A filled place of a file: a TOML string or a cell of the table.

use super::FaultKind;
use super::sink::Sink;
use baywalk_domain::coded::Coded;
use baywalk_domain::rig::Code;
use baywalk_domain::units::{Stated, Unit};

/// A text that is not empty, its key or header, and where it begins.
///
/// Where there is no slot, the place is empty or was already told as a fault.
#[derive(Clone, Copy)]
pub(super) struct Slot<'a> {
    pub(super) field: &'a str,
    pub(super) offset: usize,
    pub(super) text: &'a str,
    pub(super) sink: &'a Sink<'a>,
}

impl Slot<'_> {
    /// Notes a fault of this place.
    pub(super) fn fault(&self, kind: impl Into<FaultKind>) {
        self.sink.fault(self.offset, self.field, kind);
    }

    /// Reads the text by a checked constructor; notes what it refuses.
    pub(super) fn parse<T, E: Into<FaultKind>>(
        &self,
        read: impl FnOnce(&str) -> Result<T, E>,
    ) -> Option<T> {
        read(self.text).map_err(|error| self.fault(error)).ok()
    }

    /// The text as it stands.
    pub(super) fn owned(&self) -> String {
        self.text.to_owned()
    }

    /// Reads a word of a closed list.
    pub(super) fn coded<T: Coded>(&self) -> Option<T> {
        self.parse(T::from_code)
    }

    /// Reads a record's code.
    pub(super) fn code(&self) -> Option<Code> {
        self.parse(Code::parse)
    }

    /// Reads a number with its unit.
    pub(super) fn stated<U: Unit>(&self) -> Option<Stated<U>> {
        self.parse(Stated::parse_pair)
    }

    /// Reads a whole number between two bounds.
    pub(super) fn whole<T: TryFrom<i64>>(&self, least: i64, most: i64) -> Option<T> {
        self.parse(|text| {
            text.parse()
                .ok()
                .filter(|number| (least..=most).contains(number))
                .and_then(|number| T::try_from(number).ok())
                .ok_or_else(|| FaultKind::Whole {
                    found: text.to_owned(),
                    least,
                    most,
                })
        })
    }

    /// Reads yes or no.
    pub(super) fn yes_no(&self) -> Option<bool> {
        self.parse(|text| match text {
            "yes" => Ok(true),
            "no" => Ok(false),
            _ => Err(FaultKind::YesNo {
                found: text.to_owned(),
            }),
        })
    }
}
