//! Torque by hand: the advice for a terminal that stands in no rig.

use crate::card::Figure;
use crate::{Core, Named, Problem, files};
use baywalk_domain::coded::Coded;
use baywalk_domain::ids::{ActId, RigId};
use baywalk_domain::rig::Code;
use baywalk_domain::rig::{FasteningKind, Role, Terminal, Tool};
use baywalk_domain::torque::{Advice, Past, Practice, advise, choose};
use baywalk_logbook::rigfile;
use baywalk_words::Words;
use serde::Serialize;

/// The advice for a terminal.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct TorqueScreen {
    /// What to do.
    pub action: Named,
    /// What holds it, in words.
    pub held_by: String,
    /// The full value, framed by its basis.
    pub figure: Figure,
    /// How it is checked and how it is set right.
    pub lines: Vec<String>,
    /// What to mind.
    pub cautions: Vec<String>,
    /// What is not known and would settle it.
    pub missing: Vec<String>,
    /// Why some tools do not reach.
    pub tools: Vec<String>,
    /// Label and local code come first; the conflict in the trade, told shortly.
    pub notes: Vec<String>,
}

/// One thing that is asked of a terminal that stands in no rig.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct TorqueQuestion {
    /// The column of a rig's file of points that it fills.
    pub column: String,
    /// The question.
    pub question: String,
    /// What can be answered.
    pub options: Vec<Named>,
}

/// What is asked of a terminal before it can be advised: what it carries and what holds it.
#[must_use]
pub fn form(words: &Words) -> Vec<TorqueQuestion> {
    vec![
        question::<Role>(words, "role", "torque-role"),
        question::<FasteningKind>(words, "fastening", "torque-fastening"),
    ]
}

fn question<T: Coded>(words: &Words, column: &str, key: &str) -> TorqueQuestion {
    TorqueQuestion {
        column: column.to_owned(),
        question: words.say(key),
        options: T::ALL.iter().map(|one| Named::of(words, *one)).collect(),
    }
}

/// The advice for a point of a rig, by its code, with the rig's tools.
///
/// # Errors
/// [`Problem`] where the rig has no such terminal or the logbook can't be read.
pub fn of_point(core: &Core, rig: RigId, code: &str) -> Result<TorqueScreen, Problem> {
    let book = core.logbook.shared_book(rig)?;
    let named = Code::parse(code).map_err(|fault| Problem::input(core.words.code_fault(&fault)))?;
    let point = book.points.iter().find(|point| point.code == named);
    let terminal = point.and_then(|point| point.terminal());
    Ok(torque(
        core,
        terminal.ok_or_else(|| core.no_code(code))?,
        &book.tools,
        &core.logbook.practice()?,
    ))
}

/// The advice for a terminal described by the columns of a rig's file of points.
///
/// # Errors
/// [`Problem`] with every fault of the description.
pub fn by_hand(core: &Core, fields: &[(String, String)]) -> Result<TorqueScreen, Problem> {
    let bench = rigfile::bench();
    let mut row = vec![
        ("code".to_owned(), "P1".to_owned()),
        ("device".to_owned(), "D1".to_owned()),
    ];
    row.push(("name".to_owned(), "terminal".to_owned()));
    row.extend(fields.iter().cloned());
    let files =
        rigfile::add(&bench, "point", &row).map_err(|fault| crate::book::patch(core, &fault))?;
    let (toml, csv) = files.named();
    let book = files::read(core, &toml, &csv, ActId::new(core.logbook.new_id()))?;
    let terminal = book.points.first().and_then(|point| point.terminal());
    let missing = || Problem::input(core.words.say("torque-no-terminal"));
    Ok(torque(
        core,
        terminal.ok_or_else(missing)?,
        &[],
        &core.logbook.practice()?,
    ))
}

/// The advice for a terminal, with the tools at hand.
#[must_use]
pub fn torque(
    core: &Core,
    terminal: &Terminal,
    tools: &[Tool],
    practice: &Practice,
) -> TorqueScreen {
    let words = &core.words;
    let past = Past {
        moved_running: 0,
        spoiled: false,
        mark_offset: false,
    };
    let advice = advise(terminal, past, practice);
    let target = advice.target.as_ref().map(|target| &target.torque);
    let text = words.advice(&advice);
    let lines = [Some(text.look), text.check, Some(text.left), text.set];
    TorqueScreen {
        action: Named::of(words, advice.action),
        held_by: crate::holds::holds(words, terminal),
        figure: crate::card::figure(words, &advice, target),
        lines: lines.into_iter().flatten().collect(),
        cautions: text.cautions,
        missing: text.missing.into_iter().collect(),
        tools: reach(core, &advice, tools),
        notes: crate::practice::conflict(core, practice.check_percent()),
    }
}

/// Which tools reach the check and the full value, and why the others do not.
fn reach(core: &Core, advice: &Advice, tools: &[Tool]) -> Vec<String> {
    let Some(target) = &advice.target else {
        return Vec::new();
    };
    let words = &core.words;
    let choice = choose(tools, &target.torque, None);
    let fit = choice.fit.iter().map(|(tool, setting)| {
        let args = [
            ("tool", tool.name.as_str().into()),
            ("torque", words.torque(&setting.at).into()),
        ];
        words.fill("torque-tool-fits", &args)
    });
    let unfit = choice
        .unfit
        .iter()
        .map(|(tool, fault)| format!("{}: {}", tool.name, words.setting_fault(fault)));
    fit.chain(unfit).collect()
}
