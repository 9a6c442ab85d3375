//! `rig here`, `again`, `facts`, `sources`: setting a rig up where one stands.

use super::text;
use crate::out;
use baywalk_domain::ids::RigId;
use baywalk_screens::card::Ask;
use baywalk_screens::set_up::{self, Added, Piece};
use baywalk_screens::{Core, Problem, ProblemKind};
use clap::ArgMatches;
use serde::Serialize;

pub(super) fn run(
    core: &mut Core,
    rig: RigId,
    (verb, of): (&str, &ArgMatches),
) -> Result<(), Problem> {
    match verb {
        "again" => {
            let added = set_up::copy(core, rig, text(of, "code"))?;
            told(of, &added)
        }
        "facts" => {
            let facts = set_up::facts(core, rig, text(of, "code"))?;
            let line = |fact: &set_up::Fact| format!("{}: {}", fact.column, fact.shown);
            let mut lines = vec![format!("{} {}", facts.code, facts.name)];
            lines.extend(facts.facts.iter().map(line));
            lines.push(facts.note.clone());
            shown(of, &facts, &lines)
        }
        "sources" => {
            let sources = set_up::sources(core, rig)?;
            let mut lines = vec![sources.words.clone()];
            lines.extend(sources.sources.iter().map(|source| {
                format!("{} {}: {}", source.code, source.name, source.presence.word)
            }));
            shown(of, &sources, &lines)
        }
        _ => here(core, rig, of),
    }
}

fn here(core: &mut Core, rig: RigId, of: &ArgMatches) -> Result<(), Problem> {
    let named = text(of, "piece");
    let known = Piece::ALL.iter().find(|(word, _)| *word == named);
    let piece = known.map(|(_, piece)| *piece).ok_or_else(|| {
        let sentence = core
            .words
            .fill("set-up-no-piece", &[("found", named.into())]);
        Problem::new(ProblemKind::Input, sentence)
    })?;
    let answers: Vec<String> = of
        .get_many::<String>("answers")
        .map(|all| all.cloned().collect())
        .unwrap_or_default();
    if answers.is_empty() {
        let form = set_up::form(core, rig, piece, text(of, "bay"))?;
        let mut lines = vec![form.title.clone()];
        lines.extend(form.cautions.iter().cloned());
        lines.extend(form.asks.iter().map(asked));
        return shown(of, &form, &lines);
    }
    let added = set_up::add(core, rig, piece, (text(of, "bay"), &answers))?;
    told(of, &added)
}

/// A question with the codes of its answers.
fn asked(ask: &Ask) -> String {
    match ask {
        Ask::Words { question } => question.clone(),
        Ask::Number { question, unit } => format!("{question} ({unit})"),
        Ask::Choice { question, options } => {
            let named = |one: &baywalk_screens::Named| format!("  {}: {}", one.code, one.word);
            let options: Vec<String> = options.iter().map(named).collect();
            format!("{question}\n{}", options.join("\n"))
        }
    }
}

fn told(of: &ArgMatches, added: &Added) -> Result<(), Problem> {
    shown(of, added, std::slice::from_ref(&added.words))
}

fn shown(of: &ArgMatches, screen: &impl Serialize, lines: &[String]) -> Result<(), Problem> {
    if of.get_flag("json") {
        return out::json(screen);
    }
    lines.iter().for_each(|line| out::line(line));
    Ok(())
}
