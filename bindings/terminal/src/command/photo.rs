//! `photo`: taking photos in, and holding those that are kept against the ledger.

use super::{rig_of, text};
use crate::out;
use baywalk_screens::{Core, Problem, ProblemKind, photo};
use clap::ArgMatches;
use std::path::{Path, PathBuf};

pub(super) fn run(core: &mut Core, matches: &ArgMatches) -> Result<(), Problem> {
    match matches.subcommand() {
        Some(("add", of)) => {
            let rig = rig_of(core, of)?;
            let file = (path(of), text(of, "caption"));
            let told = photo::add(core, rig, text(of, "about"), file)?;
            out::told(of, &told)
        }
        Some(("expect", of)) => {
            let rig = rig_of(core, of)?;
            let told = photo::expect(core, rig, text(of, "about"), path(of))?;
            lines(of, &[told])
        }
        Some(("show", of)) => {
            let rig = rig_of(core, of)?;
            let told = photo::show(core, rig, text(of, "bay"))?;
            out::told(of, &told)
        }
        Some(("pin", of)) => {
            let rig = rig_of(core, of)?;
            let part = |name| of.get_one::<u16>(name).copied();
            let told = photo::pin(
                core,
                rig,
                text(of, "point"),
                part("across").zip(part("down")),
            )?;
            out::told(of, &told)
        }
        Some(("arrived", of)) => arrived(core, of),
        Some(("forget", of)) => lines(of, &[photo::forget(core, path(of))?]),
        Some(("clear", of)) => lines(of, &[photo::clear(core)?]),
        Some(("thumbnails", of)) => lines(of, &photo::thumbnails(core)?),
        Some(("originals", of)) => {
            let told = match text(of, "keep") {
                "" => photo::originals(core)?,
                keep => photo::keep_originals(core, keep == "yes")?,
            };
            lines(of, &[told])
        }
        Some((_, of)) => check(core, of),
        None => check(core, matches),
    }
}

/// Enters the expected photos that have arrived, and says what came of each.
fn arrived(core: &mut Core, matches: &ArgMatches) -> Result<(), Problem> {
    let arrived = photo::arrived(core)?;
    if matches.get_flag("json") {
        return out::json(&arrived);
    }
    if arrived.is_empty() {
        out::line(&core.words.say("photo-none-expected"));
    }
    arrived.iter().for_each(|one| out::line(&one.words));
    Ok(())
}

fn check(core: &Core, matches: &ArgMatches) -> Result<(), Problem> {
    let screen = photo::check(core)?;
    if matches.get_flag("json") {
        out::json(&screen)?;
    } else {
        out::marked("", &screen.words);
    }
    match screen.words.into_iter().next() {
        Some(sentence) if screen.missing > 0 => Err(Problem::new(ProblemKind::Damaged, sentence)),
        _ => Ok(()),
    }
}

fn lines(matches: &ArgMatches, lines: &[String]) -> Result<(), Problem> {
    if matches.get_flag("json") {
        return out::json(&lines);
    }
    out::marked("", lines);
    Ok(())
}

fn path(matches: &ArgMatches) -> &Path {
    let given = matches.get_one::<PathBuf>("file");
    given.map_or(Path::new(""), PathBuf::as_path)
}
