//! Where a screen stood, beside the ledger: a shell that comes back finds it again.

use crate::{Baywalk, Fault};
use baywalk_screens::Problem;

/// Keys of shells stand apart from those of the core.
fn named(place: &str) -> String {
    format!("screen {place}")
}

#[uniffi::export]
impl Baywalk {
    /// How far down the screen of a place was scrolled; nothing where it was left at its top.
    ///
    /// # Errors
    /// [`Fault`] where the logbook can't be read.
    pub fn scrolled(&self, place: &str) -> Result<u32, Fault> {
        self.with(|core| {
            let kept = core.logbook.scratch(&named(place)).map_err(Problem::from)?;
            Ok(kept.and_then(|text| text.parse().ok()).unwrap_or_default())
        })
    }

    /// Keeps how far down the screen of a place is scrolled. It is no entry, and no backup has it.
    ///
    /// # Errors
    /// [`Fault`] where it can't be kept.
    pub fn keep_scrolled(&self, place: &str, down: u32) -> Result<(), Fault> {
        let text = (down > 0).then(|| down.to_string());
        self.with(|core| {
            let kept = core.logbook.set_scratch(&named(place), text.as_deref());
            kept.map_err(Problem::from)
        })
    }
}
