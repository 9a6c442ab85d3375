//! What each command does: reads its values, calls one screen or act, prints it.

mod backup;
mod calc;
mod calendar;
mod due;
mod findings;
mod learned;
mod lines;
mod note;
mod past;
mod photo;
mod plan;
mod prompt;
mod recover;
mod rehearse;
mod replay;
mod report;
mod restore;
mod rig;
mod rule;
mod secret;
mod set_up;
mod torque;
mod walk;

use crate::{out, store};
use baywalk_domain::ids::RigId;
use baywalk_screens::{Core, Problem, ProblemKind, practice, verify};
use baywalk_words::Words;
use clap::ArgMatches;

/// Does what the command line says.
///
/// # Errors
/// [`Problem`] with what to print and the kind that decides the exit code.
pub(crate) fn run(words: &Words, matches: &ArgMatches) -> Result<(), Problem> {
    let Some((name, of)) = matches.subcommand() else {
        return Ok(());
    };
    match name {
        "calc" => return calc::run(of),
        "try" => return rehearse::run(words, of),
        "restore" => return restore::run(words, of),
        "recover" => return recover::run(words, of),
        "export" if of.get_flag("schema") => return lines::print_schema(),
        "rig" if rig::needs_no_store(words, of)? => return Ok(()),
        _ => {}
    }
    let mut core = store::open(words, matches)?;
    match name {
        "rig" => rig::run(&mut core, of),
        "walk" => walk::run(&mut core, of),
        "note" => note::run(&mut core, of),
        "rule" => rule::run(&mut core, of),
        "torque" => torque::run(&core, of),
        "check-share" => check_share(&mut core, of),
        "plan" => plan::run(&mut core, of),
        "due" => due::run(&mut core, of),
        "calendar" => calendar::run(&core, of),
        "learned" => learned::run(&core, of),
        "findings" => findings::run(&mut core, of),
        "photo" => photo::run(&mut core, of),
        "report" => report::run(&core, of),
        "labels" => report::labels(&core, of),
        "verify" => check(&core, of),
        "backup" => backup::run(&mut core, of),
        "past" => past::run(&core, of),
        "chart" => past::chart(&core, of),
        "export" => lines::export(&core, of),
        "import" => lines::import(&mut core, of),
        _ => Ok(()),
    }
}

/// The rig that a command names, or the only one.
fn rig_of(core: &Core, matches: &ArgMatches) -> Result<RigId, Problem> {
    core.find_rig(matches.get_one::<String>("rig").map(String::as_str))
}

/// The value of an argument, empty where it was not given.
fn text<'a>(matches: &'a ArgMatches, name: &str) -> &'a str {
    matches
        .get_one::<String>(name)
        .map(String::as_str)
        .unwrap_or_default()
}

/// The fields of a record, written as `name=value`.
fn fields(core: &Core, matches: &ArgMatches) -> Result<Vec<(String, String)>, Problem> {
    let given = matches.get_many::<String>("fields").into_iter().flatten();
    given
        .map(|field| {
            let (name, value) = field.split_once('=').ok_or_else(|| {
                let sentence = core
                    .words
                    .fill("book-no-equals", &[("found", field.into())]);
                Problem::new(ProblemKind::Input, sentence)
            })?;
            Ok((name.trim().to_owned(), value.trim().to_owned()))
        })
        .collect()
}

/// The number of an argument, where it was given.
fn number(matches: &ArgMatches, name: &str) -> Option<u32> {
    matches.get_one::<u32>(name).copied()
}

fn check_share(core: &mut Core, matches: &ArgMatches) -> Result<(), Problem> {
    let screen = match matches.get_one::<u8>("percent") {
        Some(percent) => practice::set(core, *percent)?,
        None => practice::practice(core)?,
    };
    if matches.get_flag("json") {
        return out::json(&screen);
    }
    out::marked("", &screen.words);
    Ok(())
}

fn check(core: &Core, matches: &ArgMatches) -> Result<(), Problem> {
    let screen = verify::verify(core)?;
    if matches.get_flag("json") {
        out::json(&screen)?;
    } else {
        out::marked("", &screen.words);
    }
    let photos = screen.photos.words.first().cloned();
    let fault = if screen.whole {
        photos.filter(|_| screen.photos.missing > 0)
    } else {
        screen.words.into_iter().next()
    };
    match fault {
        Some(sentence) => Err(Problem::new(ProblemKind::Damaged, sentence)),
        _ => Ok(()),
    }
}
