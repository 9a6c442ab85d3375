//! Replays a script, line by line.

use super::ScriptFault;
use super::act::Around;
use super::book::{BookTrouble, change};
use super::line::{Line, Script};
use super::timing;
use super::written::Written;
use baywalk_domain::ids::RigId;
use baywalk_domain::walk::{Act, Call};
use baywalk_screens::{Core, Problem, ProblemKind, Told, photo};
use baywalk_words::Words;
use std::path::Path;

/// What came of one line.
pub(crate) struct Step<'a> {
    /// The number of the line in the file.
    pub(crate) line: usize,
    /// The rig.
    pub(crate) rig: RigId,
    /// The act.
    pub(crate) act: &'a Act,
    /// What is told of it, or the refusal that was expected.
    pub(crate) told: Result<Told, Problem>,
}

/// Replays a script; lines that the logbook has already are gone over, so that a replay that was
/// cut off goes on where it stopped.
///
/// # Errors
/// [`Problem`] at the first line that is wrong or refused; what was recorded before it stands.
pub(crate) fn run(
    core: &mut Core,
    script: &Script,
    rig: Option<RigId>,
    mut each: impl FnMut(&Core, &Step<'_>),
) -> Result<RigId, Problem> {
    let mut rig = rig;
    let last = script
        .lines
        .iter()
        .rposition(|(number, _)| recorded(core, script, *number));
    for (place, (number, line)) in script.lines.iter().enumerate() {
        let passed = last.is_some_and(|last| place <= last);
        if passed && line.refused {
            continue;
        }
        let (of, act) = match prepare(core, script, (*number, line), rig, passed)? {
            Prepared::Act(of, act) => (of, act),
            Prepared::Passed(of) => {
                rig = Some(of);
                continue;
            }
        };
        rig = Some(of);
        let call = Call {
            id: script.id(*number),
            rig: of,
            act,
        };
        let told = core.call(&call, &script.moment(line));
        let step = Step {
            line: *number,
            rig: of,
            act: &call.act,
            told,
        };
        match (&step.told, line.refused) {
            (Ok(_), false) => {}
            (Err(problem), true) if problem.kind == ProblemKind::Refused => {}
            (Ok(_), true) => {
                return Err(wrong(&core.words, *number, &ScriptFault::NotRefused));
            }
            (Err(problem), _) => return Err(at_line(&core.words, *number, problem)),
        }
        each(core, &step);
    }
    rig.ok_or_else(|| at(&core.words, 1, &core.words.say("rigs-empty")))
}

/// Whether the logbook has the act of a line.
fn recorded(core: &Core, script: &Script, number: usize) -> bool {
    core.logbook
        .rig_of(script.id(number))
        .is_ok_and(|rig| rig.is_some())
}

pub(super) enum Prepared {
    Act(RigId, Act),
    /// The logbook has it already.
    Passed(RigId),
}

/// Turns a line into an act of the core.
pub(super) fn prepare(
    core: &mut Core,
    script: &Script,
    (number, line): (usize, &Line),
    rig: Option<RigId>,
    passed: bool,
) -> Result<Prepared, Problem> {
    let id = script.id(number);
    if passed && let Some(of) = core.logbook.rig_of(id)? {
        return Ok(Prepared::Passed(of));
    }
    if line.act.is_book() {
        return match change(core, script, id, &line.act, rig) {
            Ok((of, act)) => Ok(Prepared::Act(of, act)),
            Err(BookTrouble::Script(fault)) => Err(wrong(&core.words, number, &fault)),
            Err(BookTrouble::Told(problem)) => Err(at_line(&core.words, number, &problem)),
        };
    }
    let of = rig.ok_or_else(|| at(&core.words, number, &core.words.say("rigs-empty")))?;
    if line.act.is_timing() {
        let around = (of, id, script.moment(line).date());
        let act = timing::act(core, around, &line.act);
        let act = act.map_err(|problem| at_line(&core.words, number, &problem))?;
        return Ok(Prepared::Act(of, act));
    }
    let act = in_walk(core, script, (number, &line.act), of)?;
    Ok(Prepared::Act(of, act))
}

/// Turns an act of a walk into one of the core.
fn in_walk(
    core: &mut Core,
    script: &Script,
    (number, written): (usize, &Written),
    of: RigId,
) -> Result<Act, Problem> {
    let book = core.logbook.shared_book(of)?;
    let findings = core.logbook.findings(of)?;
    let unsettled = core.logbook.unsettled(of)?;
    let newest = core
        .logbook
        .shared_walk(of)?
        .and_then(|walk| walk.standing.last().copied());
    let folder = script.folder.clone();
    let told = core.words;
    let mut photo = |file: &str| {
        let path: &Path = &folder.join(file);
        let taken = core.logbook.add_photo(path);
        taken
            .map(|digest| digest.to_string())
            .map_err(|fault| ScriptFault::File(photo::storage(&told, path, &fault).sentence))
    };
    let mut around = Around {
        book: &book,
        findings: &findings,
        newest,
        unsettled,
        photo: &mut photo,
    };
    match written.act(&mut around) {
        Ok(Some(act)) => Ok(act),
        Ok(None) => Err(wrong(&told, number, &ScriptFault::Missing("act"))),
        Err(fault) => Err(wrong(&told, number, &fault)),
    }
}

fn wrong(told: &Words, line: usize, fault: &ScriptFault) -> Problem {
    at(told, line, &words(told, fault))
}

fn at_line(words: &Words, line: usize, problem: &Problem) -> Problem {
    Problem::new(
        problem.kind,
        words.fill(
            "script-at",
            &[
                ("line", line.into()),
                ("what", problem.sentence.as_str().into()),
            ],
        ),
    )
}

fn at(words: &Words, line: usize, what: &str) -> Problem {
    at_line(
        words,
        line,
        &Problem::new(ProblemKind::Input, what.to_owned()),
    )
}

/// What is wrong with a script, in a sentence.
pub(crate) fn words(words: &Words, fault: &ScriptFault) -> String {
    match fault {
        ScriptFault::Head(found) => words.fill("script-head", &[("found", found.as_str().into())]),
        ScriptFault::Newer { found } => words.fill("script-newer", &[("found", (*found).into())]),
        ScriptFault::Since { since } => words.fill("script-since", &[("since", (*since).into())]),
        ScriptFault::Line(found) => words.fill("script-line", &[("found", found.as_str().into())]),
        ScriptFault::Order => words.say("script-order"),
        ScriptFault::NoCode { code, .. } => {
            words.fill("script-no-code", &[("code", code.as_str().into())])
        }
        ScriptFault::Missing(field) => words.fill("script-missing", &[("field", (*field).into())]),
        ScriptFault::Unknown(fault) => words.unknown_code(fault),
        ScriptFault::Code(fault) => words.code_fault(fault),
        ScriptFault::Quantity(fault) => words.stated_fault(fault),
        ScriptFault::File(found) => words.fill("script-file", &[("found", found.as_str().into())]),
        ScriptFault::NotRefused => words.say("script-not-refused"),
    }
}
