//! Labels for bays and terminals.

use super::save::unwritten;
use super::{EDITION, save_bytes};
use crate::{Core, Problem};
use baywalk_domain::ids::RigId;
use baywalk_paper::Paper;
use baywalk_paper::labels::labels as on_paper;
use std::path::Path;

/// Writes a sheet of labels as PDF: all bays and points of a rig, or those whose codes are named.
/// Gives how many there are.
///
/// # Errors
/// [`Problem`] where there is no such rig or code, the logbook can't be read, or the file can't be
/// written.
pub fn labels(
    core: &Core,
    rig: RigId,
    only: &[String],
    paper: Paper,
    path: &Path,
) -> Result<usize, Problem> {
    let book = core.logbook.shared_book(rig)?;
    let only: Vec<String> = only.iter().map(|code| code.to_uppercase()).collect();
    let bays = book.bays.iter().map(|bay| bay.code.as_str());
    let points = book.points.iter().map(|point| point.code.as_str());
    let known: Vec<&str> = bays.chain(points).collect();
    if let Some(stranger) = only.iter().find(|code| !known.contains(&code.as_str())) {
        return Err(core.no_code(stranger));
    }
    let practice = core.logbook.practice()?;
    let labels = on_paper(&book, &practice, &only, EDITION, &core.words);
    if labels.is_empty() {
        return Err(Problem::not_found(core.words.say("report-labels-none")));
    }
    let bytes = labels.pdf(paper, &core.words);
    let bytes = bytes.map_err(|fault| unwritten(core, &fault))?;
    save_bytes(core, &bytes, path)?;
    Ok(labels.len())
}
