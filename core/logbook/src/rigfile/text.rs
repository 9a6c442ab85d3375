//! The text of a file and its name.

use super::sink::Sink;
use super::{Fault, FaultKind, Limit, MOST_BYTES};

/// A file's text with the name by which faults call it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NamedText<'a> {
    /// The name of the file, as people know it.
    pub name: &'a str,
    /// Its text.
    pub text: &'a str,
}

impl<'a> NamedText<'a> {
    /// Takes the bytes of a file as text.
    ///
    /// # Errors
    /// One [`Fault`] where the file is too large or not UTF-8; its place is the first wrong byte.
    ///
    /// # Example
    /// ```
    /// use baywalk_logbook::rigfile::{FaultKind, NamedText};
    /// let faults = NamedText::from_bytes("points.csv", b"code\nF\xff").unwrap_err();
    /// assert_eq!((faults[0].line, faults[0].column), (2, 2));
    /// assert_eq!(faults[0].kind, FaultKind::NotUtf8);
    /// ```
    pub fn from_bytes(name: &'a str, bytes: &'a [u8]) -> Result<Self, Vec<Fault>> {
        if let Some(fault) = too_large(name, bytes.len()) {
            return Err(vec![fault]);
        }
        match str::from_utf8(bytes) {
            Ok(text) => Ok(Self { name, text }),
            Err(error) => {
                let good = bytes.get(..error.valid_up_to()).unwrap_or_default();
                let before = str::from_utf8(good).unwrap_or_default();
                Err(vec![at_end(name, before)])
            }
        }
    }

    /// The fault of a text that is larger than is read.
    pub(super) fn too_large(&self) -> Option<Fault> {
        too_large(self.name, self.text.len())
    }
}

fn too_large(name: &str, found: usize) -> Option<Fault> {
    (found > MOST_BYTES).then(|| Fault {
        file: name.to_owned(),
        line: 1,
        column: 1,
        field: String::new(),
        kind: FaultKind::TooMany {
            what: Limit::Bytes,
            found,
            most: MOST_BYTES,
        },
    })
}

/// The fault of bytes that follow good text and are none.
fn at_end(name: &str, before: &str) -> Fault {
    let (line, column) = Sink::new(NamedText { name, text: before }).place(before.len());
    Fault {
        file: name.to_owned(),
        line,
        column,
        field: String::new(),
        kind: FaultKind::NotUtf8,
    }
}
