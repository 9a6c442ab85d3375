//! The `baywalk` command: the core in a terminal.

mod args;
mod calc;
mod command;
mod exit;
mod out;
mod script;
mod store;

use baywalk_words::Words;
use std::process::ExitCode;

fn main() -> ExitCode {
    let wanted = language(std::env::args());
    let wanted: Vec<&str> = wanted.iter().map(String::as_str).collect();
    let words = Words::for_locales(&wanted);
    let matches = match args::command(&words).try_get_matches() {
        Ok(matches) => matches,
        Err(error) => return exit::usage(&error),
    };
    match command::run(&words, &matches) {
        Ok(()) => ExitCode::SUCCESS,
        Err(problem) => {
            out::error(&problem.sentence);
            exit::code(problem.kind)
        }
    }
}

/// The language asked for on the command line, else those of the environment, best first.
///
/// Help is worded before the command line is read as a whole, so it is looked for by hand.
fn language(args: impl Iterator<Item = String>) -> Vec<String> {
    let args: Vec<String> = args.collect();
    let asked = args
        .iter()
        .zip(args.iter().skip(1))
        .find(|(name, _)| *name == "--language");
    let asked = asked.map(|(_, value)| value.clone());
    let told = ["LC_ALL", "LC_MESSAGES", "LANG"]
        .iter()
        .filter_map(|name| std::env::var(name).ok());
    let told = told.map(|value| {
        value
            .split('.')
            .next()
            .unwrap_or_default()
            .replace('_', "-")
    });
    asked
        .into_iter()
        .chain(told)
        .filter(|value| !value.is_empty())
        .collect()
}
