//! Checking the logbook.

use crate::{Core, Problem};
use serde::Serialize;

/// What a check of the logbook found.
#[derive(Debug, Clone, Serialize)]
pub struct VerifyScreen {
    /// Whether every entry fits.
    pub whole: bool,
    /// The number of entries.
    pub entries: u64,
    /// The newest digest, in hexadecimal.
    pub digest: String,
    /// In words.
    pub words: Vec<String>,
}

/// Checks every entry of the ledger against its digest and the one before.
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
    let mut said = vec![told, words.say("verify-chain")];
    said.extend(crate::safe::origins(core)?);
    Ok(VerifyScreen {
        whole: report.broken.is_none(),
        entries: report.entries,
        digest,
        words: said,
    })
}
