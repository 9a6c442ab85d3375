//! `report`, `findings sheet` and `labels`: what is put on paper.

use super::rig_of;
use crate::out;
use baywalk_domain::ids::{RigId, WalkId};
use baywalk_screens::paper::{self, Paper, PhotoSize, Wanted};
use baywalk_screens::{Core, Problem, ProblemKind};
use clap::ArgMatches;
use std::path::{Path, PathBuf};

pub(super) fn run(core: &Core, matches: &ArgMatches) -> Result<(), Problem> {
    let rig = rig_of(core, matches)?;
    let walk = match matches.get_one::<String>("walk") {
        Some(text) => text
            .parse::<WalkId>()
            .map_err(|_| unknown(core, "report-no-walk-id", text))?,
        None => paper::last_walk(core, rig)?,
    };
    let path = file(matches);
    let wanted = wanted(core, matches, &path)?;
    paper::write(core, walk, &wanted, &path)?;
    out::written(&core.words, &path);
    Ok(())
}

/// Writes the report of a walk as HTML and says so.
pub(super) fn write(core: &Core, walk: WalkId, path: &Path) -> Result<(), Problem> {
    let wanted = Wanted::by_name(core, path, Paper::Letter, PhotoSize::Stored)?;
    paper::write(core, walk, &wanted, path)?;
    out::written(&core.words, path);
    Ok(())
}

/// Writes the sheet of one finding.
pub(super) fn follow_up(core: &Core, rig: RigId, matches: &ArgMatches) -> Result<(), Problem> {
    let number = matches.get_one::<u32>("number").copied().unwrap_or(0);
    let path = file(matches);
    let wanted = wanted(core, matches, &path)?;
    paper::write_follow_up(core, rig, number, &wanted, &path)?;
    out::written(&core.words, &path);
    Ok(())
}

/// Writes labels.
pub(super) fn labels(core: &Core, matches: &ArgMatches) -> Result<(), Problem> {
    let rig = rig_of(core, matches)?;
    let only = matches.get_many::<String>("only").into_iter().flatten();
    let only: Vec<String> = only.map(|code| code.trim().to_owned()).collect();
    let path = file(matches);
    let count = paper::labels(core, rig, &only, paper(core, matches)?, &path)?;
    let args = [("count", count.into())];
    out::line(&core.words.fill("report-labels-written", &args));
    out::written(&core.words, &path);
    Ok(())
}

fn file(matches: &ArgMatches) -> PathBuf {
    matches
        .get_one::<PathBuf>("out")
        .cloned()
        .unwrap_or_default()
}

fn wanted(core: &Core, matches: &ArgMatches, out: &Path) -> Result<Wanted, Problem> {
    let size = super::text(matches, "photos");
    let photos =
        PhotoSize::parse(size).ok_or_else(|| unknown(core, "report-no-photo-size", size))?;
    Wanted::by_name(core, out, paper(core, matches)?, photos)
}

fn paper(core: &Core, matches: &ArgMatches) -> Result<Paper, Problem> {
    let name = super::text(matches, "paper");
    Paper::parse(name).ok_or_else(|| unknown(core, "report-no-paper", name))
}

fn unknown(core: &Core, key: &str, found: &str) -> Problem {
    let args = [("found", found.into())];
    Problem::new(ProblemKind::Input, core.words.fill(key, &args))
}
