//! `export` and `import`: the entries as JSON Lines.

use crate::out;
use baywalk_screens::lines::{self, LinesScreen};
use baywalk_screens::{Core, Problem, ProblemKind};
use clap::ArgMatches;
use std::fs::File;
use std::io::BufReader;
use std::path::PathBuf;

pub(super) fn export(core: &Core, matches: &ArgMatches) -> Result<(), Problem> {
    let path = file(matches);
    let made = File::create_new(&path)
        .map_err(|error| cant(core, "terminal-cant-write", &path, &error))?;
    let synced = made.try_clone();
    let screen = lines::export(core, made)?;
    let synced = synced.and_then(|file| file.sync_all());
    synced.map_err(|error| cant(core, "terminal-cant-write", &path, &error))?;
    print(matches, &screen)
}

pub(super) fn import(core: &mut Core, matches: &ArgMatches) -> Result<(), Problem> {
    let path = file(matches);
    let from =
        File::open(&path).map_err(|error| cant(core, "terminal-cant-read", &path, &error))?;
    let screen = lines::import(core, BufReader::new(from))?;
    print(matches, &screen)
}

fn file(matches: &ArgMatches) -> PathBuf {
    matches
        .get_one::<PathBuf>("file")
        .cloned()
        .unwrap_or_default()
}

fn cant(core: &Core, key: &str, path: &std::path::Path, error: &std::io::Error) -> Problem {
    let path = path.display().to_string();
    let args = [("path", path.into()), ("why", error.to_string().into())];
    Problem::new(ProblemKind::Input, core.words.fill(key, &args))
}

fn print(matches: &ArgMatches, screen: &LinesScreen) -> Result<(), Problem> {
    if matches.get_flag("json") {
        return out::json(screen);
    }
    out::line(&screen.words);
    Ok(())
}
