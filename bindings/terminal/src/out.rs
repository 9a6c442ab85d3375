//! Printing: listings as lines or as JSON, errors on standard error.

use baywalk_screens::{Problem, ProblemKind};
use baywalk_words::Words;
use serde::Serialize;
use std::io::{IsTerminal, Write};
use std::path::Path;

/// Prints one line. A reader that has gone away ends the printing, not the work.
pub(crate) fn line(text: &str) {
    let _ = writeln!(std::io::stdout(), "{text}");
}

/// Prints text without a line end, at once.
pub(crate) fn part(text: &str) {
    let mut out = std::io::stdout();
    let _ = write!(out, "{text}");
    let _ = out.flush();
}

/// Prints lines, each behind a mark.
pub(crate) fn marked(mark: &str, lines: &[String]) {
    for text in lines {
        line(&format!("{mark}{text}"));
    }
}

/// Prints an error.
pub(crate) fn error(text: &str) {
    let _ = writeln!(std::io::stderr(), "{text}");
}

/// Prints a value as JSON.
///
/// # Errors
/// [`Problem`] where it can't be written as JSON.
pub(crate) fn json(value: &impl Serialize) -> Result<(), Problem> {
    match serde_json::to_string_pretty(value) {
        Ok(text) => {
            line(&text);
            Ok(())
        }
        Err(error) => Err(Problem::new(ProblemKind::Unexpected, error.to_string())),
    }
}

/// Whether a person looks at what is printed.
pub(crate) fn is_terminal() -> bool {
    std::io::stdout().is_terminal()
}

/// Prints what is told of an act.
///
/// # Errors
/// [`Problem`] where it can't be written as JSON.
pub(crate) fn told(
    matches: &clap::ArgMatches,
    told: &baywalk_screens::Told,
) -> Result<(), Problem> {
    if matches.get_flag("json") {
        return json(told);
    }
    marked("", &told.sentences);
    Ok(())
}

/// Writes a file, with its folder where that is not there, and says so.
///
/// # Errors
/// [`Problem`] with the path and why it can't be written.
pub(crate) fn file(words: &Words, path: &Path, text: &str) -> Result<(), Problem> {
    let shown = path.display().to_string();
    let folder = path
        .parent()
        .filter(|folder| !folder.as_os_str().is_empty());
    let made = folder.map_or(Ok(()), std::fs::create_dir_all);
    made.and_then(|()| std::fs::write(path, text))
        .map_err(|error| {
            let args = [
                ("path", shown.as_str().into()),
                ("why", error.to_string().into()),
            ];
            Problem::new(ProblemKind::Input, words.fill("terminal-cant-write", &args))
        })?;
    written(words, path);
    Ok(())
}

/// Says that a file was written.
pub(crate) fn written(words: &Words, path: &Path) {
    let args = [("path", path.display().to_string().into())];
    line(&words.fill("terminal-written", &args));
}

/// The path of an argument, where it was given.
pub(crate) fn path<'a>(matches: &'a clap::ArgMatches, name: &str) -> Option<&'a Path> {
    matches
        .get_one::<std::path::PathBuf>(name)
        .map(std::path::PathBuf::as_path)
}

/// Reads a file.
///
/// # Errors
/// [`Problem`] with the path and why it can't be read.
pub(crate) fn read(words: &Words, path: &Path) -> Result<Vec<u8>, Problem> {
    std::fs::read(path).map_err(|error| {
        let path = path.display().to_string();
        let args = [("path", path.into()), ("why", error.to_string().into())];
        Problem::new(ProblemKind::Input, words.fill("terminal-cant-read", &args))
    })
}
