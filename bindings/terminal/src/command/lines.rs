//! `export` and `import`: the entries as JSON Lines, the tables as CSV.

use crate::out;
use baywalk_logbook::lines::schema;
use baywalk_screens::lines::{self, LinesScreen};
use baywalk_screens::{Core, Problem, ProblemKind, tables};
use clap::ArgMatches;
use std::fs::File;
use std::io::{BufReader, Write};
use std::path::Path;

/// Prints the JSON Schema of a line; no logbook is opened for it.
pub(super) fn print_schema() -> Result<(), Problem> {
    out::json(&schema())
}

pub(super) fn export(core: &Core, matches: &ArgMatches) -> Result<(), Problem> {
    let path = |name: &str| out::path(matches, name);
    if let Some(folder) = path("csv") {
        csv(core, matches, folder)?;
    }
    match path("to") {
        Some(file) => entries(core, matches, file),
        None if path("csv").is_none() => Err(Problem::new(
            ProblemKind::Input,
            core.words.say("past-which-export"),
        )),
        None => Ok(()),
    }
}

fn entries(core: &Core, matches: &ArgMatches, path: &Path) -> Result<(), Problem> {
    let made =
        File::create_new(path).map_err(|error| cant(core, "terminal-cant-write", path, &error))?;
    let synced = made.try_clone();
    let screen = lines::export(core, made)?;
    let synced = synced.and_then(|file| file.sync_all());
    synced.map_err(|error| cant(core, "terminal-cant-write", path, &error))?;
    print(matches, &screen)
}

/// Writes a file for each table; where one is there already, none is written.
fn csv(core: &Core, matches: &ArgMatches, folder: &Path) -> Result<(), Problem> {
    let made = tables::tables(core)?;
    let files = made.iter().map(|table| folder.join(tables::file(table)));
    if let Some(there) = files.clone().find(|path| path.exists()) {
        let args = [("path", there.display().to_string().into())];
        return Err(Problem::new(
            ProblemKind::Input,
            core.words.fill("past-table-there", &args),
        ));
    }
    std::fs::create_dir_all(folder)
        .map_err(|error| cant(core, "terminal-cant-write", folder, &error))?;
    for (table, path) in made.iter().zip(files) {
        let written = File::create_new(&path).and_then(|mut file| {
            file.write_all(table.csv().as_bytes())?;
            file.sync_all()
        });
        written.map_err(|error| cant(core, "terminal-cant-write", &path, &error))?;
    }
    let screen = tables::told(core, &made);
    if matches.get_flag("json") {
        return out::json(&screen);
    }
    out::marked("", &screen.words);
    Ok(())
}

pub(super) fn import(core: &mut Core, matches: &ArgMatches) -> Result<(), Problem> {
    let path = out::path(matches, "file").unwrap_or(Path::new(""));
    let from = File::open(path).map_err(|error| cant(core, "terminal-cant-read", path, &error))?;
    let screen = lines::import(core, BufReader::new(from))?;
    print(matches, &screen)
}

fn cant(core: &Core, key: &str, path: &Path, error: &std::io::Error) -> Problem {
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
