//! `calendar`: writes what is due as a calendar file.

use super::rig_of;
use crate::out;
use baywalk_screens::{Core, Problem, calendar};
use clap::ArgMatches;
use std::path::PathBuf;

pub(super) fn run(core: &Core, matches: &ArgMatches) -> Result<(), Problem> {
    let text = calendar::file(core, rig_of(core, matches)?)?;
    let folder = PathBuf::new();
    let path = matches.get_one::<PathBuf>("out").unwrap_or(&folder);
    out::file(&core.words, path, &text)?;
    Ok(())
}
