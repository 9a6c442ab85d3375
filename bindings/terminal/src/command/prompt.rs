//! The walk, prompt by prompt: a card, its keys, what a key asks.

use crate::out;
use baywalk_domain::ids::RigId;
use baywalk_screens::card::{Ask, Card, Key};
use baywalk_screens::result::ResultScreen;
use baywalk_screens::{Core, Problem, ProblemKind, result, step};

/// Walks until the walk ends, is stopped for now, or nobody answers any more.
pub(super) fn walk(core: &mut Core, rig: RigId) -> Result<(), Problem> {
    while let Some(walk) = core.logbook.open_walk(rig)? {
        let card = step::card(core, rig)?;
        show(&card);
        let Some((key, typed)) = answer(core, &card) else {
            out::line("");
            out::line(&core.words.say("terminal-kept"));
            return Ok(());
        };
        match step::press(core, rig, &key, &typed) {
            Ok(told) => out::marked("  = ", &told.sentences),
            Err(problem) if matches!(problem.kind, ProblemKind::Refused | ProblemKind::Input) => {
                out::marked("  # ", &[problem.sentence]);
            }
            Err(problem) => return Err(problem),
        }
        if key == "stop" || core.logbook.open_walk(rig)?.is_none() {
            show_result(core, &result::result(core, rig, walk.id)?);
            return Ok(());
        }
    }
    Ok(())
}

/// Prints a card.
fn show(card: &Card) {
    out::line("");
    let tag = card
        .tag
        .as_ref()
        .map(|tag| format!("[{tag}] "))
        .unwrap_or_default();
    let count = card
        .count
        .map(|count| format!("  {}/{}", count.at, count.of))
        .unwrap_or_default();
    out::line(&format!("{tag}{}{count}", card.title));
    out::line(&format!("-- {} --", card.line.words));
    if !card.place.is_empty() {
        out::line(&format!("  {}", card.place));
    }
    if let Some(figure) = &card.figure {
        if !figure.number.is_empty() {
            out::line(&format!(
                "  {} {} ({})",
                figure.number, figure.unit, figure.metric
            ));
        }
        out::line(&format!("  {}", figure.basis));
    }
    out::marked("  ", &card.lines);
    out::marked("  ! ", &card.cautions);
    out::line(&card.question);
    for (place, key) in card.keys.iter().enumerate() {
        let note = if key.note.is_empty() {
            String::new()
        } else {
            format!(": {}", key.note)
        };
        out::line(&format!("  {} {}{note}", place + 1, key.word));
    }
}

/// The key pressed and what was typed for what it asked; `None` at the end of input.
fn answer(core: &Core, card: &Card) -> Option<(String, Vec<String>)> {
    loop {
        let pressed = read("> ")?;
        let Some(key) = meant(&card.keys, pressed.trim()) else {
            out::line(
                &core
                    .words
                    .fill("step-no-key", &[("key", pressed.trim().into())]),
            );
            continue;
        };
        let typed: Option<Vec<String>> = key.asks.iter().map(|ask| ask_for(core, ask)).collect();
        return typed.map(|typed| (key.code.clone(), typed));
    }
}

/// The key with a number, a code, or a word that begins so alone.
fn meant<'a>(keys: &'a [Key], pressed: &str) -> Option<&'a Key> {
    if let Some(key) = pressed
        .parse::<usize>()
        .ok()
        .and_then(|n| keys.get(n.checked_sub(1)?))
    {
        return Some(key);
    }
    if let Some(key) = keys.iter().find(|key| key.code == pressed) {
        return Some(key);
    }
    let pressed = pressed.to_lowercase();
    let begins = |key: &&Key| !pressed.is_empty() && key.word.to_lowercase().starts_with(&pressed);
    let mut fits = keys.iter().filter(begins);
    fits.next().filter(|_| fits.next().is_none())
}

fn ask_for(core: &Core, ask: &Ask) -> Option<String> {
    match ask {
        Ask::Words { question } => read(&format!("  {question} ")),
        Ask::Number { question, unit } => read(&format!("  {question} [{unit}] ")),
        Ask::Choice { question, options } => {
            out::line(&format!("  {question}"));
            for (place, option) in options.iter().enumerate() {
                out::line(&format!("    {} {}", place + 1, option.word));
            }
            loop {
                let pressed = read("  > ")?;
                let number = pressed.trim().parse::<usize>().ok();
                let by_number = number.and_then(|n| options.get(n.checked_sub(1)?));
                let chosen = by_number
                    .or_else(|| options.iter().find(|option| option.code == pressed.trim()));
                if let Some(option) = chosen {
                    return Some(option.code.clone());
                }
                out::line(
                    &core
                        .words
                        .fill("step-no-key", &[("key", pressed.trim().into())]),
                );
            }
        }
    }
}

/// One line of input; `None` at its end.
fn read(prompt: &str) -> Option<String> {
    out::part(prompt);
    let mut text = String::new();
    match std::io::stdin().read_line(&mut text) {
        Ok(0) | Err(_) => None,
        Ok(_) => Some(text.trim_end_matches(['\n', '\r']).to_owned()),
    }
}

/// Prints the result of a walk, what stays out of service and was not judged first.
pub(super) fn show_result(core: &Core, screen: &ResultScreen) {
    let words = &core.words;
    let list = |key: &str, lines: &[String]| {
        if !lines.is_empty() {
            out::line(&words.fill(key, &[("count", lines.len().into())]));
            out::marked("  ", lines);
        }
    };
    out::line("");
    out::line(&screen.ended);
    list("result-out-of-service", &screen.out_of_service);
    list("result-not-judged", &screen.not_judged);
    list("result-alive", &screen.alive);
    let grades: Vec<String> = screen
        .grades
        .iter()
        .map(|grade| format!("{} {}", grade.count, grade.word.to_lowercase()))
        .collect();
    out::line(&grades.join(", "));
    list("result-had-moved", &screen.moved);
    list(
        "result-findings",
        &screen
            .findings
            .iter()
            .map(|line| line.words.clone())
            .collect::<Vec<_>>(),
    );
    out::line(&screen.due);
    out::marked("", screen.second_look.as_slice());
    out::marked("", screen.backup.as_slice());
    out::marked("", screen.calendar.as_slice());
}
