//! What kind of file is asked for.

use crate::{Core, Problem};
use baywalk_paper::Paper;
use std::path::Path;

/// How large the photos in a report are.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "mobile", derive(uniffi::Enum))]
pub enum PhotoSize {
    /// As they are stored, byte for byte.
    Stored,
    /// Made smaller, so that the whole file stays below 10 MB and can be mailed.
    Mail,
    /// Left out; their digests stay.
    None,
}

impl PhotoSize {
    /// Every size.
    pub const ALL: [Self; 3] = [Self::Stored, Self::Mail, Self::None];

    /// Its name on a command line.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Stored => "stored",
            Self::Mail => "mail",
            Self::None => "none",
        }
    }

    /// The size of a name.
    #[must_use]
    pub fn parse(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|size| size.name() == name)
    }
}

/// The format of a file.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Format {
    /// One self-contained HTML file.
    Html,
    /// PDF on a paper.
    Pdf(Paper),
}

/// What kind of file is asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Wanted {
    /// Its format.
    pub format: Format,
    /// How large its photos are.
    pub photos: PhotoSize,
}

/// Where letter is the usual paper (CLDR, `paperSize` of the supplemental data; from memory).
const LETTER: [&str; 14] = [
    "BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE",
];

impl Wanted {
    /// The format by the ending of a file's name; `paper` is for PDF.
    ///
    /// # Errors
    /// [`Problem`] where the ending is neither `.html` nor `.pdf`.
    pub fn by_name(
        core: &Core,
        path: &Path,
        paper: Paper,
        photos: PhotoSize,
    ) -> Result<Self, Problem> {
        let ending = path.extension().and_then(|ending| ending.to_str());
        let format = match ending.map(str::to_ascii_lowercase).as_deref() {
            Some("html" | "htm") => Format::Html,
            Some("pdf") => Format::Pdf(paper),
            _ => {
                let args = [("found", path.display().to_string().into())];
                return Err(Problem::input(core.words.fill("report-no-ending", &args)));
            }
        };
        Ok(Self { format, photos })
    }

    /// The paper that is usual in a country, by its code of two letters (ISO 3166-1).
    #[must_use]
    pub fn usual_paper(country: &str) -> Paper {
        if LETTER.contains(&country) {
            Paper::Letter
        } else {
            Paper::A4
        }
    }

    /// How many bytes of photos a file may have; none where it does not matter.
    pub(crate) const fn photo_bytes(&self) -> Option<u64> {
        match (self.photos, self.format) {
            (PhotoSize::Stored, _) => None,
            (PhotoSize::None, _) => Some(0),
            // Base 64 makes four letters of three bytes.
            (PhotoSize::Mail, Format::Html) => Some(6_900_000),
            (PhotoSize::Mail, Format::Pdf(_)) => Some(9_200_000),
        }
    }
}
