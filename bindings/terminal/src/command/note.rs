//! `note`: what happens between walks.

use super::{rig_of, text};
use crate::out;
use baywalk_screens::{Core, Problem, usage};
use clap::ArgMatches;

pub(super) fn run(core: &mut Core, matches: &ArgMatches) -> Result<(), Problem> {
    let rig = rig_of(core, matches)?;
    let Some((what, of)) = matches.subcommand() else {
        return Ok(());
    };
    let told = match what {
        "odometer" => usage::odometer(core, rig, text(of, "reading")),
        "restart" => usage::restart(core, rig, text(of, "reading"), text(of, "why")),
        "hours" => usage::hours(core, rig, text(of, "reading")),
        "trip" => usage::trip(core, rig, text(of, "reading")),
        _ => {
            let around = (text(of, "about"), text(of, "distance"), text(of, "note"));
            usage::event(core, rig, text(of, "event"), around)
        }
    };
    out::told(of, &told?)
}
