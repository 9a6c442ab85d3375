//! The command line: names and values here, their help in the catalogue of words.

mod paper;
mod past;
mod timing;

use baywalk_words::Words;
use clap::{Arg, ArgAction, Command, value_parser};
use std::path::PathBuf;

/// The whole command line.
pub(crate) fn command(words: &Words) -> Command {
    let say = |key: &str| words.say(key);
    Command::new("baywalk")
        .version(env!("CARGO_PKG_VERSION"))
        .about(say("terminal-about"))
        .after_help(say("terminal-exit-codes"))
        .subcommand_required(true)
        .arg_required_else_help(true)
        .arg(path("store", words, "terminal-option-store").global(true))
        .arg(
            Arg::new("language")
                .long("language")
                .global(true)
                .help(say("terminal-option-language")),
        )
        .arg(flag("json", words, "terminal-option-json").global(true))
        .subcommand(
            Command::new("try")
                .about(say("terminal-command-try"))
                .arg(path("folder", words, "terminal-option-folder").default_value("baywalk-try")),
        )
        .subcommand(rig(words))
        .subcommand(walk(words))
        .subcommand(timing::note(words))
        .subcommand(timing::rule(words))
        .subcommand(torque(words))
        .subcommand(check_share(words))
        .subcommand(plan(words))
        .subcommand(timing::due(words))
        .subcommand(timing::calendar(words))
        .subcommand(timing::learned(words))
        .subcommand(past::past(words))
        .subcommand(past::chart(words))
        .subcommand(findings(words))
        .subcommand(photo(words))
        .subcommand(paper::report(words))
        .subcommand(paper::labels(words))
        .subcommand(Command::new("verify").about(say("terminal-command-verify")))
        .subcommands(safe(words))
        .subcommand(calc(words))
}

fn plan(words: &Words) -> Command {
    let minutes = Arg::new("minutes").long("minutes");
    let minutes = minutes.value_parser(value_parser!(u16));
    Command::new("plan")
        .about(words.say("terminal-command-plan"))
        .arg(minutes.help(words.say("terminal-option-minutes")))
        .arg(flag("why", words, "terminal-option-why"))
        .arg(flag("follow", words, "terminal-option-follow"))
        .arg(flag("leave", words, "terminal-option-leave"))
        .arg(of_rig(words))
}

fn torque(words: &Words) -> Command {
    Command::new("torque")
        .about(words.say("terminal-command-torque"))
        .after_help(words.say("terminal-torque-fields"))
        .arg(fields(words))
        .arg(of_rig(words))
}

fn check_share(words: &Words) -> Command {
    let percent = Arg::new("percent").value_parser(value_parser!(u8));
    Command::new("check-share")
        .about(words.say("terminal-command-check-share"))
        .arg(percent.help(words.say("terminal-argument-percent")))
}

/// What keeps the logbook safe.
fn safe(words: &Words) -> [Command; 5] {
    let file = |key: &str| {
        let file = Arg::new("file").required(true);
        file.value_parser(value_parser!(PathBuf))
            .help(words.say(key))
    };
    let passphrase = || flag("passphrase", words, "terminal-option-passphrase");
    [
        Command::new("backup")
            .about(words.say("terminal-command-backup"))
            .arg(file("terminal-argument-backup"))
            .arg(passphrase()),
        Command::new("restore")
            .about(words.say("terminal-command-restore"))
            .arg(file("terminal-argument-restore"))
            .arg(passphrase())
            .arg(flag("look", words, "terminal-option-look"))
            .arg(flag("replace", words, "terminal-option-replace")),
        Command::new("recover")
            .about(words.say("terminal-command-recover"))
            .arg(path("backup", words, "terminal-option-backup"))
            .arg(passphrase()),
        Command::new("export")
            .about(words.say("terminal-command-export"))
            .arg(path("to", words, "terminal-option-to"))
            .arg(path("csv", words, "terminal-option-csv"))
            .arg(flag("schema", words, "terminal-option-line-schema")),
        Command::new("import")
            .about(words.say("terminal-command-import"))
            .arg(file("terminal-argument-import")),
    ]
}

fn calc(words: &Words) -> Command {
    Command::new("calc")
        .about(words.say("terminal-command-calc"))
        .arg(Arg::new("name").help(words.say("terminal-argument-calc")))
        .arg(flag("schema", words, "terminal-option-schema"))
}

fn rig(words: &Words) -> Command {
    let say = |key: &str| words.say(key);
    let file = |name: &'static str, key: &str| {
        Arg::new(name)
            .required(true)
            .value_parser(value_parser!(PathBuf))
            .help(words.say(key))
    };
    let word = |name: &'static str, key: &str| Arg::new(name).required(true).help(words.say(key));
    Command::new("rig")
        .about(say("terminal-command-rig"))
        .arg(of_rig(words).global(true))
        .subcommand(Command::new("layouts").about(say("terminal-rig-layouts")))
        .subcommand(
            Command::new("start")
                .about(say("terminal-rig-start"))
                .arg(word("layout", "terminal-argument-layout"))
                .arg(word("name", "terminal-argument-name")),
        )
        .subcommand(
            Command::new("load")
                .about(say("terminal-rig-load"))
                .arg(file("toml", "terminal-argument-toml"))
                .arg(file("csv", "terminal-argument-csv")),
        )
        .subcommand(
            Command::new("amend")
                .about(say("terminal-rig-amend"))
                .arg(file("toml", "terminal-argument-toml"))
                .arg(file("csv", "terminal-argument-csv")),
        )
        .subcommand(
            Command::new("write")
                .about(say("terminal-rig-write"))
                .arg(file("folder", "terminal-argument-folder")),
        )
        .subcommand(
            Command::new("add")
                .about(say("terminal-rig-add"))
                .arg(
                    Arg::new("record")
                        .required(true)
                        .value_parser(["source", "bay", "device", "point", "tool"])
                        .help(say("terminal-argument-record")),
                )
                .arg(fields(words).required(true)),
        )
        .subcommand(
            Command::new("change")
                .about(say("terminal-rig-change"))
                .arg(word("code", "terminal-argument-code"))
                .arg(fields(words).required(true)),
        )
        .subcommand(
            Command::new("retire")
                .about(say("terminal-rig-retire"))
                .arg(word("code", "terminal-argument-code")),
        )
        .subcommands(set_up(words))
}

/// Setting a rig up where one stands.
fn set_up(words: &Words) -> [Command; 4] {
    let verb = |name: &'static str, key: &str| Command::new(name).about(words.say(key));
    let code = || {
        Arg::new("code")
            .required(true)
            .help(words.say("terminal-argument-code"))
    };
    let piece = Arg::new("piece").required(true);
    let bay = Arg::new("bay").long("bay").default_value("");
    let answers = Arg::new("answers").num_args(0..);
    [
        verb("here", "terminal-rig-here")
            .arg(piece.help(words.say("terminal-argument-piece")))
            .arg(answers.help(words.say("terminal-argument-answers")))
            .arg(bay.help(words.say("terminal-argument-bay"))),
        verb("again", "terminal-rig-again").arg(code()),
        verb("facts", "terminal-rig-facts").arg(code()),
        verb("sources", "terminal-rig-sources"),
    ]
}

fn walk(words: &Words) -> Command {
    let say = |key: &str| words.say(key);
    Command::new("walk")
        .about(say("terminal-command-walk"))
        .arg(
            Arg::new("person")
                .long("person")
                .help(say("terminal-option-person")),
        )
        .arg(
            Arg::new("bays")
                .long("bays")
                .value_delimiter(',')
                .action(ArgAction::Append)
                .help(say("terminal-option-bays")),
        )
        .arg(flag("second-look", words, "terminal-option-second-look"))
        .arg(path("script", words, "terminal-option-script"))
        .arg(of_rig(words))
}

fn findings(words: &Words) -> Command {
    let say = |key: &str| words.say(key);
    Command::new("findings")
        .about(say("terminal-command-findings"))
        .arg(of_rig(words).global(true))
        .subcommand(paper::follow_up(words))
        .subcommand(
            Command::new("decide")
                .about(say("terminal-findings-decide"))
                .arg(
                    Arg::new("number")
                        .required(true)
                        .value_parser(value_parser!(u32))
                        .help(say("terminal-argument-number")),
                )
                .arg(
                    Arg::new("decision")
                        .required(true)
                        .help(say("terminal-argument-decision")),
                )
                .arg(Arg::new("by").long("by").help(say("terminal-option-by")))
                .arg(
                    Arg::new("note")
                        .long("note")
                        .default_value("")
                        .help(say("terminal-option-note")),
                ),
        )
}

fn photo(words: &Words) -> Command {
    let file = || {
        let file = Arg::new("file").required(true);
        let file = file.value_parser(value_parser!(PathBuf));
        file.help(words.say("terminal-argument-photo"))
    };
    let about = || {
        let about = Arg::new("about").required(true);
        about.help(words.say("terminal-argument-about"))
    };
    let verb = |name: &'static str, key: &str| Command::new(name).about(words.say(key));
    let named = |name: &'static str, key: &str| Arg::new(name).help(words.say(key));
    let parts = |name: &'static str, key: &str| named(name, key).value_parser(value_parser!(u16));
    let caption = Arg::new("caption").long("caption");
    let keep = Arg::new("keep").value_parser(["yes", "no"]);
    Command::new("photo")
        .about(words.say("terminal-command-photo"))
        .arg(of_rig(words).global(true))
        .subcommand(
            verb("add", "terminal-photo-add")
                .arg(about())
                .arg(file())
                .arg(caption.help(words.say("terminal-option-caption"))),
        )
        .subcommand(
            verb("expect", "terminal-photo-expect")
                .arg(about())
                .arg(file()),
        )
        .subcommand(verb("arrived", "terminal-photo-arrived"))
        .subcommand(
            verb("show", "terminal-photo-show")
                .arg(named("bay", "terminal-argument-bay").required(true)),
        )
        .subcommand(
            verb("pin", "terminal-photo-pin")
                .arg(named("point", "terminal-argument-point").required(true))
                .arg(parts("across", "terminal-argument-across").requires("down"))
                .arg(parts("down", "terminal-argument-down")),
        )
        .subcommand(verb("forget", "terminal-photo-forget").arg(file()))
        .subcommand(verb("check", "terminal-photo-check"))
        .subcommand(verb("clear", "terminal-photo-clear"))
        .subcommand(verb("thumbnails", "terminal-photo-thumbnails"))
        .subcommand(
            verb("originals", "terminal-photo-originals")
                .arg(keep.help(words.say("terminal-argument-keep"))),
        )
}

fn of_rig(words: &Words) -> Arg {
    Arg::new("rig")
        .long("rig")
        .help(words.say("terminal-option-rig"))
}

fn flag(name: &'static str, words: &Words, key: &str) -> Arg {
    Arg::new(name)
        .long(name)
        .action(ArgAction::SetTrue)
        .help(words.say(key))
}

fn path(name: &'static str, words: &Words, key: &str) -> Arg {
    Arg::new(name)
        .long(name)
        .value_parser(value_parser!(PathBuf))
        .help(words.say(key))
}

fn fields(words: &Words) -> Arg {
    Arg::new("fields")
        .num_args(0..)
        .help(words.say("terminal-argument-fields"))
}
