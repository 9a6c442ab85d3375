//! `learned`: what the rig's own past tells of its terminals.

use super::rig_of;
use crate::out;
use baywalk_screens::{Core, Problem, learned};
use clap::ArgMatches;

pub(super) fn run(core: &Core, matches: &ArgMatches) -> Result<(), Problem> {
    let screen = learned::told(core, rig_of(core, matches)?)?;
    if matches.get_flag("json") {
        return out::json(&screen);
    }
    for kind in &screen.kinds {
        out::line(&kind.words);
    }
    let rest = screen.never_tight.iter().chain(&screen.first);
    rest.chain([&screen.how, &screen.condition])
        .for_each(|words| out::line(words));
    Ok(())
}
