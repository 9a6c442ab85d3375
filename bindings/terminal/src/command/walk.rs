//! `walk`: goes on with the open walk, or starts one; or replays a script.

use super::{prompt, replay, rig_of, text};
use crate::out;
use baywalk_screens::{Core, Problem, photo, room, start};
use clap::ArgMatches;
use std::path::PathBuf;

pub(super) fn run(core: &mut Core, matches: &ArgMatches) -> Result<(), Problem> {
    if let Some(path) = matches.get_one::<PathBuf>("script") {
        let rig = match core.logbook.rigs()?.is_empty() {
            true => None,
            false => rig_of(core, matches).ok(),
        };
        replay::file(core, path, (rig, matches.get_flag("json")))?;
        return Ok(());
    }
    for arrived in photo::arrived(core)? {
        out::line(&arrived.words);
    }
    let rig = rig_of(core, matches)?;
    if core.logbook.open_walk(rig)?.is_none() {
        out::marked("! ", room::low(core)?.as_slice());
        let bays: Vec<String> = matches
            .get_many::<String>("bays")
            .into_iter()
            .flatten()
            .cloned()
            .collect();
        let wish = start::Wish {
            person: text(matches, "person"),
            bays: &bays,
            second_look: matches.get_flag("second-look"),
        };
        start::start(core, rig, &wish)?;
    }
    prompt::walk(core, rig)
}
