//! What is put on paper: report, follow-up sheet, labels.

use super::of_rig;
use baywalk_words::Words;
use clap::{Arg, Command, value_parser};
use std::path::PathBuf;

/// The report of a walk.
pub(super) fn report(words: &Words) -> Command {
    let walk = Arg::new("walk").long("walk");
    Command::new("report")
        .about(words.say("terminal-command-report"))
        .arg(out(words, "terminal-argument-paper-out"))
        .arg(walk.help(words.say("terminal-option-walk")))
        .arg(paper(words))
        .arg(photos(words))
        .arg(of_rig(words))
}

/// Labels of bays and points.
pub(super) fn labels(words: &Words) -> Command {
    let only = Arg::new("only").long("only").value_delimiter(',');
    Command::new("labels")
        .about(words.say("terminal-command-labels"))
        .arg(out(words, "terminal-argument-pdf-out"))
        .arg(only.help(words.say("terminal-option-only")))
        .arg(paper(words))
        .arg(of_rig(words))
}

/// The sheet of one finding.
pub(super) fn follow_up(words: &Words) -> Command {
    let number = Arg::new("number").required(true);
    Command::new("sheet")
        .about(words.say("terminal-findings-sheet"))
        .arg(
            number
                .value_parser(value_parser!(u32))
                .help(words.say("terminal-argument-number")),
        )
        .arg(out(words, "terminal-argument-paper-out"))
        .arg(paper(words))
        .arg(photos(words))
}

fn out(words: &Words, key: &str) -> Arg {
    Arg::new("out")
        .required(true)
        .value_parser(value_parser!(PathBuf))
        .help(words.say(key))
}

fn paper(words: &Words) -> Arg {
    Arg::new("paper")
        .long("paper")
        .default_value("letter")
        .help(words.say("terminal-option-paper"))
}

fn photos(words: &Words) -> Arg {
    Arg::new("photos")
        .long("photos")
        .default_value("stored")
        .help(words.say("terminal-option-photos"))
}
