//! Checking the logbook.

use crate::photo::{self, PhotosScreen};
use crate::{Core, Problem};
use serde::Serialize;

/// What a check of the logbook found.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct VerifyScreen {
    /// Whether every entry fits.
    pub whole: bool,
    /// The number of entries.
    pub entries: u64,
    /// The newest digest, in hexadecimal.
    pub digest: String,
    /// The photos, held against the ledger.
    pub photos: PhotosScreen,
    /// In words.
    pub words: Vec<String>,
}

/// Checks every entry of the ledger against its digest and the one before, and every photo against
/// the entry that names it.
///
/// # Errors
/// [`Problem`] where the logbook can't be read.
pub fn verify(core: &Core) -> Result<VerifyScreen, Problem> {
    let report = core.logbook.verify()?;
    let words = &core.words;
    let digest = report.digest.to_string();
    let told = match &report.broken {
        None => words.fill(
            "verify-whole",
            &[
                ("entries", report.entries.into()),
                ("digest", digest.as_str().into()),
            ],
        ),
        Some(broken) => words.fill(
            "verify-broken",
            &[
                ("seq", broken.seq.into()),
                ("why", broken.why.to_string().into()),
            ],
        ),
    };
    let photos = photo::check(core)?;
    let mut said = vec![told];
    said.extend(photos.words.iter().cloned());
    said.push(words.say("verify-chain"));
    said.extend(crate::safe::origins(core)?);
    Ok(VerifyScreen {
        whole: report.broken.is_none(),
        entries: report.entries,
        digest,
        photos,
        words: said,
    })
}
