//! `backup`: the whole logbook into one file.

use super::secret;
use crate::out;
use baywalk_logbook::backup::{Go, Progress, Step, Watch};
use baywalk_screens::{Core, Problem, backup};
use clap::ArgMatches;
use indicatif::{ProgressBar, ProgressStyle};
use std::path::PathBuf;

pub(super) fn run(core: &mut Core, matches: &ArgMatches) -> Result<(), Problem> {
    let wished = matches.get_flag("passphrase");
    let passphrase = wished.then(|| secret::ask(&core.words, true)).transpose()?;
    let none = PathBuf::new();
    let to = matches.get_one::<PathBuf>("file").unwrap_or(&none);
    let screen = with_bar(|watch| backup::write(core, to, passphrase.as_ref(), watch))?;
    if matches.get_flag("json") {
        return out::json(&screen);
    }
    out::marked("", &screen.words);
    Ok(())
}

/// Does a long job with a bar that shows how far it is, where a person looks.
pub(super) fn with_bar<T>(job: impl FnOnce(&mut Watch<'_>) -> T) -> T {
    let bar = ProgressBar::new(0);
    let style = ProgressStyle::with_template("{bar:40} {bytes}/{total_bytes}");
    let bar = match style {
        Ok(style) if out::is_terminal() => bar.with_style(style),
        _ => ProgressBar::hidden(),
    };
    let mut at = Step::Writing;
    let done = job(&mut |progress: Progress| {
        if progress.step != at {
            at = progress.step;
            bar.reset();
        }
        bar.set_length(progress.of);
        bar.set_position(progress.done);
        Go::On
    });
    bar.finish_and_clear();
    done
}
