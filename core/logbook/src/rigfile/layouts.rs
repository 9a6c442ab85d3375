//! The layouts that come with the tool: two sample rigs, and three to start one's own from.

use super::{Fault, NamedText, read};
use baywalk_domain::ids::ActId;
use baywalk_domain::rig::Book;

/// A rig in files that comes with the tool.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Layout {
    /// Its stable name, such as `starter-van-dc`.
    pub code: &'static str,
    /// The text of its TOML file.
    pub toml: &'static str,
    /// The text of its CSV file.
    pub csv: &'static str,
}

impl Layout {
    /// Reads the layout as a new book.
    ///
    /// # Errors
    /// As [`read`]; a test sees that no layout has a fault.
    pub fn book(&self, ids: ActId) -> Result<Book, Vec<Fault>> {
        let toml = NamedText {
            name: "rig.toml",
            text: self.toml,
        };
        let csv = NamedText {
            name: "points.csv",
            text: self.csv,
        };
        read(&toml, &csv, ids)
    }
}

macro_rules! layout {
    ($code:literal) => {
        Layout {
            code: $code,
            toml: include_str!(concat!("../../layouts/", $code, "/rig.toml")),
            csv: include_str!(concat!("../../layouts/", $code, "/points.csv")),
        }
    };
}

/// The layouts that come with the tool, the samples first.
///
/// # Example
/// ```
/// use baywalk_logbook::rigfile::layouts;
/// assert!(layouts().iter().any(|layout| layout.code == "sample-motorhome"));
/// ```
#[must_use]
pub fn layouts() -> &'static [Layout] {
    &[
        layout!("sample-motorhome"),
        layout!("sample-trailer"),
        layout!("starter-motorhome-50a"),
        layout!("starter-trailer-30a"),
        layout!("starter-van-dc"),
        layout!("starter-empty-motorhome"),
        layout!("starter-empty-trailer"),
    ]
}

/// A bench with one device and no point: where a terminal that stands in no rig is described.
#[must_use]
pub fn bench() -> super::Files {
    super::Files {
        toml: include_str!("../../layouts/bench/rig.toml").to_owned(),
        csv: include_str!("../../layouts/bench/points.csv").to_owned(),
    }
}
