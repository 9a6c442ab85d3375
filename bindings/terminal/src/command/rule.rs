//! `rule`: the rules of when to look again.

use super::{fields, number, rig_of};
use crate::out;
use baywalk_screens::{Core, Problem, rule};
use clap::ArgMatches;

pub(super) fn run(core: &mut Core, matches: &ArgMatches) -> Result<(), Problem> {
    let rig = rig_of(core, matches)?;
    match matches.subcommand() {
        Some(("set", of)) => {
            let parts = fields(core, of)?;
            let told = rule::set(core, rig, number(of, "in-place"), &parts)?;
            out::told(of, &told)
        }
        Some(("drop", of)) => {
            let told = rule::drop(core, rig, number(of, "number").unwrap_or_default())?;
            out::told(of, &told)
        }
        _ => list(core, matches),
    }
}

fn list(core: &Core, matches: &ArgMatches) -> Result<(), Problem> {
    let screen = rule::rules(core, rig_of(core, matches)?)?;
    if matches.get_flag("json") {
        return out::json(&screen);
    }
    for rule in &screen.rules {
        out::line(&format!("{} {}", rule.number, rule.words));
    }
    out::marked("", screen.empty.as_slice());
    Ok(())
}
