//! `report`: writes the report of a walk.

use super::rig_of;
use crate::out;
use baywalk_domain::ids::WalkId;
use baywalk_screens::{Core, Problem, ProblemKind, report};
use clap::ArgMatches;
use std::path::PathBuf;

pub(super) fn run(core: &Core, matches: &ArgMatches) -> Result<(), Problem> {
    let rig = rig_of(core, matches)?;
    let walk = match matches.get_one::<String>("walk") {
        Some(text) => text.parse::<WalkId>().map_err(|_| {
            let args = [("found", text.into())];
            Problem::new(
                ProblemKind::Input,
                core.words.fill("report-no-walk-id", &args),
            )
        })?,
        None => report::last_walk(core, rig)?,
    };
    let folder = PathBuf::new();
    write(
        core,
        walk,
        matches.get_one::<PathBuf>("out").unwrap_or(&folder),
    )
}

/// Writes the report of a walk to a file and says so.
pub(super) fn write(core: &Core, walk: WalkId, path: &std::path::Path) -> Result<(), Problem> {
    let html = report::html(core, walk)?;
    out::file(&core.words, path, &html)?;
    Ok(())
}
