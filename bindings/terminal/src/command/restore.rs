//! `restore`: the logbook from a backup; with `--look`, what that would do.

use super::backup::with_bar;
use super::secret;
use crate::{out, store};
use baywalk_logbook::backup::Wish;
use baywalk_screens::{Problem, restore};
use baywalk_words::Words;
use clap::ArgMatches;
use std::path::PathBuf;

pub(super) fn run(words: &Words, matches: &ArgMatches) -> Result<(), Problem> {
    let folder = store::folder(matches);
    let none = PathBuf::new();
    let wished = matches.get_flag("passphrase");
    let passphrase = wished.then(|| secret::ask(words, false)).transpose()?;
    let wish = Wish {
        folder: &folder,
        from: matches.get_one::<PathBuf>("file").unwrap_or(&none),
        passphrase: passphrase.as_ref(),
        replace: matches.get_flag("replace"),
    };
    let screen = if matches.get_flag("look") {
        with_bar(|watch| restore::plan(words, &wish, watch))?
    } else {
        with_bar(|watch| restore::restore(words, &wish, watch))?.1
    };
    if matches.get_flag("json") {
        return out::json(&screen);
    }
    out::marked("", &screen.words);
    Ok(())
}
