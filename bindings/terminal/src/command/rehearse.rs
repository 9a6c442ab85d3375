//! `try`: the whole job on a sample rig, from power down to the next due date, with a report.

use super::{prompt, replay, report};
use crate::out;
use baywalk_screens::{Core, Problem, paper, result};
use baywalk_words::Words;
use clap::ArgMatches;
use std::path::{Path, PathBuf};

/// The walk of the sample rig as a person entered it.
const WALK: &str = include_str!("../../scripts/wren.jsonl");

pub(super) fn run(words: &Words, matches: &ArgMatches) -> Result<(), Problem> {
    let here = PathBuf::from("baywalk-try");
    let folder = matches.get_one::<PathBuf>("folder").unwrap_or(&here);
    let mut core = Core::open(folder, *words)?;
    let shown = folder.display().to_string();
    out::line(&words.fill("try-begin", &[("folder", shown.as_str().into())]));
    let rig = replay::text_of(&mut core, WALK, Path::new(""), None)?;
    let walk = paper::last_walk(&core, rig)?;
    prompt::show_result(&core, &result::result(&core, rig, walk)?);
    report::write(&core, walk, &folder.join("report.html"))?;
    report::write(&core, walk, &folder.join("report.pdf"))?;
    let checked = baywalk_screens::verify::verify(&core)?;
    out::marked("", &checked.words);
    out::line(&words.fill("try-end", &[("folder", shown.into())]));
    Ok(())
}
