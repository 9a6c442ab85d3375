//! Writes a whole rig as its two files.

use super::{NamedText, point_writer, rig_writer};
use baywalk_domain::rig::Book;

/// The two files of a rig.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Files {
    /// The TOML file of the rig.
    pub toml: String,
    /// The CSV file of its points.
    pub csv: String,
}

impl Files {
    /// The two texts under the usual names of their files.
    #[must_use]
    pub fn named(&self) -> (NamedText<'_>, NamedText<'_>) {
        let named = |name, text| NamedText { name, text };
        (
            named("rig.toml", &self.toml),
            named("points.csv", &self.csv),
        )
    }
}

/// Writes a rig so that [`read`](super::read) gives the same codes and facts again.
///
/// Numbers and sizes stand as they were typed; retired records stay, with their codes. Blanks
/// around texts are not kept.
///
/// # Example
/// ```
/// use baywalk_domain::ids::ActId;
/// use baywalk_logbook::rigfile::{layouts, read, write, NamedText};
/// let act: ActId = "0190f0c4-0000-7000-8000-000000000001".parse()?;
/// for layout in layouts() {
///     let book = layout.book(act).expect("layouts are sound");
///     let files = write(&book);
///     let toml = NamedText { name: "rig.toml", text: &files.toml };
///     let csv = NamedText { name: "points.csv", text: &files.csv };
///     assert_eq!(read(&toml, &csv, act), Ok(book));
/// }
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn write(book: &Book) -> Files {
    Files {
        toml: rig_writer::write(book),
        csv: point_writer::write(book),
    }
}
