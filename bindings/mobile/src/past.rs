//! The past, and tables of it.

use crate::{Baywalk, Fault, Picture};
use baywalk_screens::past::{self, PastScreen};
use baywalk_screens::tables::{self, TablesScreen};
use std::path::Path;

/// The past as it is shown.
#[derive(Debug, Clone, uniffi::Record)]
pub struct PastView {
    /// What it says.
    pub screen: PastScreen,
    /// Its charts, in the order in which the screen tells them.
    pub charts: Vec<Picture>,
}

#[uniffi::export]
impl Baywalk {
    /// The past of a rig, or of the point with a code, its charts drawn over a width.
    ///
    /// # Errors
    /// [`Fault`] where there is no such rig or point, or the logbook can't be read.
    pub fn past(&self, rig: &str, code: Option<String>, width: f64) -> Result<PastView, Fault> {
        self.with_rig(rig, |core, rig| {
            let view = past::past(core, rig, code.as_deref(), width)?;
            let charts = view.charts.into_iter().map(|chart| chart.drawing.into());
            Ok(PastView {
                screen: view.screen,
                charts: charts.collect(),
            })
        })
    }

    /// Writes all tables and all entries into one new file, a ZIP archive.
    ///
    /// # Errors
    /// [`Fault`] where the file is there already or can't be written, or the logbook can't be read.
    pub fn tables(&self, path: &str) -> Result<TablesScreen, Fault> {
        self.with(|core| tables::write(core, Path::new(path)))
    }
}
