//! What the walks tell: the past, and charts of it.

use super::{of_rig, path};
use baywalk_words::Words;
use clap::{Arg, ArgAction, Command};

/// `past`: the past of a rig, or of a point.
pub(super) fn past(words: &Words) -> Command {
    Command::new("past")
        .about(words.say("terminal-command-past"))
        .arg(point(words))
        .arg(of_rig(words))
}

/// `chart`: one chart as an SVG file, its numbers as a table.
pub(super) fn chart(words: &Words) -> Command {
    let chart = Arg::new("chart").required(true);
    Command::new("chart")
        .about(words.say("terminal-command-chart"))
        .arg(chart.help(words.say("terminal-argument-chart")))
        .arg(point(words))
        .arg(path("to", words, "terminal-option-chart").action(ArgAction::Set))
        .arg(path("numbers", words, "terminal-option-numbers"))
        .arg(of_rig(words))
}

fn point(words: &Words) -> Arg {
    Arg::new("point").help(words.say("terminal-argument-past-point"))
}
