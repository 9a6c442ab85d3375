//! `rig`: listing, starting, loading, changing and writing out rigs.

use super::{fields, rig_of, set_up, text};
use crate::out;
use baywalk_logbook::rigfile::{self, NamedText};
use baywalk_screens::{Core, Problem, Told, book, files, rig, rigs};
use baywalk_words::Words;
use clap::ArgMatches;
use std::path::{Path, PathBuf};

/// Does what needs no logbook: naming the layouts.
pub(super) fn needs_no_store(words: &Words, matches: &ArgMatches) -> Result<bool, Problem> {
    let Some(("layouts", of)) = matches.subcommand() else {
        return Ok(false);
    };
    let layouts = files::layouts(words);
    if of.get_flag("json") {
        out::json(&layouts)?;
    } else {
        for layout in layouts {
            out::line(&format!("{}: {}", layout.code, layout.words));
        }
    }
    Ok(true)
}

pub(super) fn run(core: &mut Core, matches: &ArgMatches) -> Result<(), Problem> {
    match matches.subcommand() {
        None => show(core, matches),
        Some(("start", of)) => {
            let rig = files::start_from(core, text(of, "layout"), text(of, "name"))?;
            one(core, rig, of)
        }
        Some(("load", of)) => {
            let (toml, csv) = (read(core, of, "toml")?, read(core, of, "csv")?);
            let rig = files::load(core, &toml.named(core)?, &csv.named(core)?)?;
            one(core, rig, of)
        }
        Some((verb, of)) => {
            let rig = rig_of(core, of)?;
            change(core, rig, verb, of)
        }
    }
}

fn change(
    core: &mut Core,
    rig: baywalk_domain::ids::RigId,
    verb: &str,
    of: &ArgMatches,
) -> Result<(), Problem> {
    match verb {
        "amend" => {
            let (toml, csv) = (read(core, of, "toml")?, read(core, of, "csv")?);
            let told = book::amend(core, rig, &toml.named(core)?, &csv.named(core)?)?;
            all_told(core, of, &told)
        }
        "write" => {
            let empty = PathBuf::new();
            let folder = of.get_one::<PathBuf>("folder").unwrap_or(&empty);
            write(core, rig, folder)
        }
        "add" => {
            let fields = fields(core, of)?;
            let told = book::add(core, rig, text(of, "record"), &fields)?;
            all_told(core, of, &told)
        }
        "change" => {
            let fields = fields(core, of)?;
            let told = book::change(core, rig, text(of, "code"), &fields)?;
            all_told(core, of, &told)
        }
        "here" | "again" | "facts" | "sources" => set_up::run(core, rig, (verb, of)),
        _ => {
            let told = book::retire(core, rig, text(of, "code"))?;
            all_told(core, of, &told)
        }
    }
}

fn all_told(core: &Core, matches: &ArgMatches, told: &[Told]) -> Result<(), Problem> {
    if told.is_empty() && !matches.get_flag("json") {
        out::line(&core.words.say("book-nothing"));
    }
    told.iter().try_for_each(|told| out::told(matches, told))
}

fn show(core: &Core, matches: &ArgMatches) -> Result<(), Problem> {
    if matches.get_one::<String>("rig").is_some() {
        return one(core, rig_of(core, matches)?, matches);
    }
    let screen = rigs::rigs(core)?;
    if matches.get_flag("json") {
        return out::json(&screen);
    }
    out::marked("", screen.empty.as_slice());
    for rig in &screen.rigs {
        out::line(&format!("{}: {}. {}", rig.name, rig.what, rig.due));
    }
    Ok(())
}

fn one(core: &Core, id: baywalk_domain::ids::RigId, matches: &ArgMatches) -> Result<(), Problem> {
    let screen = rig::rig(core, id)?;
    if matches.get_flag("json") {
        return out::json(&screen);
    }
    out::line(&format!("{}: {}", screen.name, screen.what));
    out::marked(
        "",
        &screen
            .line
            .iter()
            .map(|line| line.words.clone())
            .collect::<Vec<_>>(),
    );
    for bay in &screen.bays {
        let count = format!("{}/{}", bay.done, bay.total);
        out::line(&format!(
            "  {:<3} {count:>7}  {}, {}",
            bay.code, bay.name, bay.side.word
        ));
    }
    out::line(&screen.points);
    out::line(&screen.due.words);
    out::line(&screen.findings);
    Ok(())
}

/// The bytes of a file and its name.
struct FileBytes {
    name: String,
    bytes: Vec<u8>,
}

impl FileBytes {
    fn named(&self, core: &Core) -> Result<NamedText<'_>, Problem> {
        NamedText::from_bytes(&self.name, &self.bytes)
            .map_err(|faults| files::faults(core, &faults))
    }
}

fn read(core: &Core, matches: &ArgMatches, name: &str) -> Result<FileBytes, Problem> {
    let empty = PathBuf::new();
    let path = matches.get_one::<PathBuf>(name).unwrap_or(&empty);
    let bytes = out::read(&core.words, path)?;
    Ok(FileBytes {
        name: path.display().to_string(),
        bytes,
    })
}

fn write(core: &Core, rig: baywalk_domain::ids::RigId, folder: &Path) -> Result<(), Problem> {
    let rigfile::Files { toml, csv } = files::write(core, rig)?;
    out::file(&core.words, &folder.join("rig.toml"), &toml)?;
    out::file(&core.words, &folder.join("points.csv"), &csv)
}
