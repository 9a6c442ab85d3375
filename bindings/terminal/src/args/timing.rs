//! Notes between walks, rules, and what is due.

use super::{fields, of_rig};
use baywalk_words::Words;
use clap::{Arg, Command, value_parser};
use std::path::PathBuf;

/// `note`: what happens between walks.
pub(super) fn note(words: &Words) -> Command {
    let verb = |name: &'static str, key: &str| Command::new(name).about(words.say(key));
    let value = |name: &'static str, key: &str| Arg::new(name).required(true).help(words.say(key));
    let option = |name: &'static str, key: &str| {
        Arg::new(name)
            .long(name)
            .default_value("")
            .help(words.say(key))
    };
    let odometer = || value("reading", "terminal-argument-odometer");
    Command::new("note")
        .about(words.say("terminal-command-note"))
        .subcommand_required(true)
        .arg_required_else_help(true)
        .arg(of_rig(words).global(true))
        .subcommand(verb("odometer", "terminal-note-odometer").arg(odometer()))
        .subcommand(
            verb("restart", "terminal-note-restart")
                .arg(odometer())
                .arg(value("why", "terminal-argument-restart")),
        )
        .subcommand(
            verb("hours", "terminal-note-hours").arg(value("reading", "terminal-argument-hours")),
        )
        .subcommand(
            verb("trip", "terminal-note-trip").arg(value("reading", "terminal-argument-trip")),
        )
        .subcommand(
            verb("event", "terminal-note-event")
                .arg(value("event", "terminal-argument-event"))
                .arg(option("about", "terminal-option-about"))
                .arg(option("distance", "terminal-option-distance"))
                .arg(option("note", "terminal-option-note")),
        )
}

/// `rule`: the rules of when to look again.
pub(super) fn rule(words: &Words) -> Command {
    let in_place = Arg::new("in-place")
        .long("in-place")
        .value_parser(value_parser!(u32));
    Command::new("rule")
        .about(words.say("terminal-command-rule"))
        .arg(of_rig(words).global(true))
        .subcommand(
            Command::new("set")
                .about(words.say("terminal-rule-set"))
                .arg(in_place.help(words.say("terminal-option-in-place")))
                .arg(fields(words).required(true)),
        )
        .subcommand(
            Command::new("drop")
                .about(words.say("terminal-rule-drop"))
                .arg(line(words)),
        )
}

/// `due`: what is due, and putting it off.
pub(super) fn due(words: &Words) -> Command {
    let value = |name: &'static str, key: &str| Arg::new(name).required(true).help(words.say(key));
    Command::new("due")
        .about(words.say("terminal-command-due"))
        .arg(of_rig(words).global(true))
        .subcommand(
            Command::new("put-off")
                .about(words.say("terminal-due-put-off"))
                .arg(line(words))
                .arg(value("until", "terminal-argument-until"))
                .arg(value("why", "terminal-argument-why")),
        )
}

/// `calendar`: what is due as a calendar file.
pub(super) fn calendar(words: &Words) -> Command {
    let file = Arg::new("out")
        .required(true)
        .value_parser(value_parser!(PathBuf));
    Command::new("calendar")
        .about(words.say("terminal-command-calendar"))
        .arg(file.help(words.say("terminal-argument-calendar")))
        .arg(of_rig(words))
}

/// `learned`: what the rig's own past tells.
pub(super) fn learned(words: &Words) -> Command {
    Command::new("learned")
        .about(words.say("terminal-command-learned"))
        .arg(of_rig(words))
}

fn line(words: &Words) -> Arg {
    Arg::new("number")
        .required(true)
        .value_parser(value_parser!(u32))
        .help(words.say("terminal-argument-line"))
}
