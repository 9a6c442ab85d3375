//! `due`: what is due, and putting it off.

use super::{number, rig_of, text};
use crate::out;
use baywalk_screens::due::DueLine;
use baywalk_screens::{Core, Problem, due};
use clap::ArgMatches;

pub(super) fn run(core: &mut Core, matches: &ArgMatches) -> Result<(), Problem> {
    let rig = rig_of(core, matches)?;
    if let Some(("put-off", of)) = matches.subcommand() {
        let line = number(of, "number").unwrap_or_default();
        let told = due::put_off(core, rig, line, (text(of, "until"), text(of, "why")))?;
        return out::told(of, &told);
    }
    let screen = due::due(core, rig)?;
    if matches.get_flag("json") {
        return out::json(&screen);
    }
    out::line(&format!("{}: {}", screen.rig, screen.words));
    if let Some(second) = &screen.second_look {
        out::line(&second.words);
    }
    screen.items.iter().for_each(item);
    out::marked("", screen.backup.as_slice());
    out::marked("", &screen.cautions);
    Ok(())
}

/// A line of the list, with what each limit comes to.
fn item(line: &DueLine) {
    out::line(&format!("{} {}", line.number, line.words));
    for words in line.limits.iter().chain(&line.put_off) {
        out::line(&format!("  {words}"));
    }
}
