//! `due`: when the next walk is due.

use super::rig_of;
use crate::out;
use baywalk_screens::{Core, Problem, due};
use clap::ArgMatches;

pub(super) fn run(core: &Core, matches: &ArgMatches) -> Result<(), Problem> {
    let screen = due::due(core, rig_of(core, matches)?)?;
    if matches.get_flag("json") {
        return out::json(&screen);
    }
    out::line(&format!("{}: {}", screen.rig, screen.words));
    if let Some(second) = &screen.second_look {
        out::line(&second.words);
    }
    out::marked("", screen.backup.as_slice());
    Ok(())
}
