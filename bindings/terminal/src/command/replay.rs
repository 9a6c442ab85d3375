//! Replaying a script with a bar that shows how far it is.

use crate::out;
use crate::script::{Script, Step, run, words};
use baywalk_domain::ids::RigId;
use baywalk_domain::walk::Act;
use baywalk_screens::{Core, Problem, ProblemKind};
use indicatif::{ProgressBar, ProgressStyle};
use std::path::Path;

/// Replays a script from a file. As JSON, what is told of each act is one line.
pub(super) fn file(
    core: &mut Core,
    path: &Path,
    (rig, json): (Option<RigId>, bool),
) -> Result<RigId, Problem> {
    let bytes = out::read(&core.words, path)?;
    let text = String::from_utf8_lossy(&bytes);
    let folder = path.parent().unwrap_or(Path::new(""));
    if json {
        each(core, &text, folder, (rig, as_json))
    } else {
        text_of(core, &text, folder, rig)
    }
}

/// What is printed of a step.
type Print = fn(&Core, &Step<'_>) -> Vec<String>;

/// What is told of a step, or why it was refused, as one line of JSON.
fn as_json(_: &Core, step: &Step<'_>) -> Vec<String> {
    let line = match &step.told {
        Ok(told) => serde_json::to_string(told),
        Err(problem) => serde_json::to_string(problem),
    };
    line.into_iter().collect()
}

/// Replays the text of a script; paths in it start from a folder.
pub(super) fn text_of(
    core: &mut Core,
    text: &str,
    folder: &Path,
    rig: Option<RigId>,
) -> Result<RigId, Problem> {
    each(core, text, folder, (rig, lines))
}

fn each(
    core: &mut Core,
    text: &str,
    folder: &Path,
    (rig, print): (Option<RigId>, Print),
) -> Result<RigId, Problem> {
    let script = Script::read(text, folder).map_err(|(line, fault)| {
        let what = words(&core.words, &fault);
        let args = [("line", line.into()), ("what", what.into())];
        Problem::new(ProblemKind::Input, core.words.fill("script-at", &args))
    })?;
    let bar = bar(script.len());
    let rig = run(core, &script, rig, |core, step| {
        bar.inc(1);
        for line in print(core, step) {
            bar.suspend(|| out::line(&line));
        }
    });
    bar.finish_and_clear();
    rig
}

fn bar(acts: usize) -> ProgressBar {
    let bar = ProgressBar::new(u64::try_from(acts).unwrap_or(u64::MAX));
    let style = ProgressStyle::with_template("{bar:40} {pos}/{len}");
    match style {
        Ok(style) if out::is_terminal() => bar.with_style(style),
        _ => ProgressBar::hidden(),
    }
}

/// What is printed of a step: the acts that a reader follows, and all that is out of the ordinary.
fn lines(core: &Core, step: &Step<'_>) -> Vec<String> {
    let words = &core.words;
    let told = match &step.told {
        Ok(told) => told,
        Err(problem) => {
            let args = [
                ("line", step.line.into()),
                ("why", problem.sentence.as_str().into()),
            ];
            return vec![words.fill("replay-refused", &args)];
        }
    };
    let book = core.logbook.book(step.rig).ok();
    let name = match step.act {
        Act::Isolate { source, .. } | Act::Restore { source } | Act::LeaveAway { source, .. } => {
            words.source_name(*source, book.as_ref())
        }
        Act::Open { bay } | Act::Close { bay, .. } => words.bay_name(*bay, book.as_ref()),
        Act::Found { point, .. } | Act::Left { point, .. } | Act::Look { point, .. } => {
            words.point_name(*point, book.as_ref())
        }
        _ => String::new(),
    };
    let ordinary = told.findings.is_empty();
    let key = match step.act {
        Act::Start { .. } => "replay-start",
        Act::Isolate { .. } => "replay-away",
        Act::Open { .. } => "replay-open",
        Act::Close { .. } => "replay-close",
        Act::PowerUp => "replay-power",
        Act::Restore { .. } => "replay-back",
        Act::Pause => "replay-pause",
        Act::Resume => "replay-resume",
        Act::Strike { .. } => "replay-undo",
        Act::Left { .. } => "replay-left",
        Act::End(_) => "replay-end",
        _ if ordinary => return Vec::new(),
        _ => "replay-other",
    };
    let mut lines = vec![words.fill(key, &[("name", name.into())])];
    if !ordinary || matches!(step.act, Act::Measure(_)) {
        lines.extend(
            told.sentences
                .iter()
                .map(|sentence| format!("    {sentence}")),
        );
    }
    lines.retain(|line| !line.trim().is_empty());
    lines
}
