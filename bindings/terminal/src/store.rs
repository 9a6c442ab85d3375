//! Opening the logbook that the command line names.

use baywalk_screens::{Core, Problem};
use baywalk_words::Words;
use clap::ArgMatches;
use std::path::{Path, PathBuf};

/// The logbook that the command line names, or the one of this user.
///
/// # Errors
/// [`Problem`] where it can't be opened.
pub(crate) fn open(words: &Words, matches: &ArgMatches) -> Result<Core, Problem> {
    Core::open(&folder(matches), *words)
}

/// The folder of the logbook that the command line names, or the one of this user.
pub(crate) fn folder(matches: &ArgMatches) -> PathBuf {
    let named = matches.get_one::<PathBuf>("store").cloned();
    named.unwrap_or_else(of_user)
}

/// The folder for a user's own data, where the environment tells one; else a folder here.
fn of_user() -> PathBuf {
    let data = std::env::var_os("XDG_DATA_HOME").map(PathBuf::from);
    let home = || std::env::var_os("HOME").map(|home| Path::new(&home).join(".local/share"));
    data.or_else(home).unwrap_or_default().join("baywalk")
}
