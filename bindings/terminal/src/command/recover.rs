//! `recover`: what can be read of a damaged logbook, into a new one.

use super::backup::with_bar;
use super::secret;
use crate::{out, store};
use baywalk_logbook::recover::Wish;
use baywalk_screens::{Problem, recover};
use baywalk_words::Words;
use clap::ArgMatches;
use std::path::PathBuf;

pub(super) fn run(words: &Words, matches: &ArgMatches) -> Result<(), Problem> {
    let folder = store::folder(matches);
    let wished = matches.get_flag("passphrase");
    let passphrase = wished.then(|| secret::ask(words, false)).transpose()?;
    let wish = Wish {
        folder: &folder,
        backup: matches.get_one::<PathBuf>("backup").map(PathBuf::as_path),
        passphrase: passphrase.as_ref(),
    };
    let (_, screen) = with_bar(|watch| recover::recover(words, &wish, watch))?;
    if matches.get_flag("json") {
        return out::json(&screen);
    }
    out::marked("", &screen.words);
    Ok(())
}
