//! What is noted of a record, to be filled in later: each field with its question and its value.

use super::ask;
use crate::card::Ask;
use crate::{Core, Problem, files};
use baywalk_domain::ids::RigId;
use baywalk_domain::rig::{
    Code, CodeOwner, Conductor, DeviceKind, FasteningKind, LookKind, Presence, Role, Side,
    TorqueBasis,
};
use baywalk_logbook::rigfile;
use serde::Serialize;

/// What is noted of a record.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct Facts {
    /// Its code.
    pub code: String,
    /// Its name.
    pub name: String,
    /// The fields that are asked for here.
    pub facts: Vec<Fact>,
    /// Whether it is a point, so that it has a past of its own.
    pub is_point: bool,
    /// What stands first on every screen of numbers.
    pub note: String,
}

/// One field of a record.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct Fact {
    /// The column or key of a rig's files.
    pub column: String,
    /// What stands in it, for the machine.
    pub value: String,
    /// The same in words; that it is not noted where nothing stands in it.
    pub shown: String,
    /// How it is asked.
    pub ask: Ask,
}

/// What is noted of the record that has a code: a source, a bay, a device, a point.
///
/// # Errors
/// [`Problem`] where there is no such record or the logbook can't be read.
pub fn facts(core: &Core, rig: RigId, code: &str) -> Result<Facts, Problem> {
    let missing = || core.no_code(code);
    let book = core.logbook.shared_book(rig)?;
    let named = Code::parse(code.trim()).map_err(|_| missing())?;
    let owner = book.owners(&named).next().ok_or_else(missing)?;
    let written = files::write(core, rig)?;
    let fields = rigfile::fields(&written, &named).map_err(|_| missing())?;
    let value = |column: &str| {
        let found = fields.iter().find(|(known, _)| known == column);
        found.map(|(_, text)| text.clone()).unwrap_or_default()
    };
    let look = !value("look").is_empty();
    Ok(Facts {
        name: value("name"),
        facts: asked(core, owner, look)
            .into_iter()
            .map(|(column, ask)| fact(core, column, value(column), ask))
            .collect(),
        is_point: matches!(owner, CodeOwner::Point(_)),
        note: core.words.say("shell-label-first"),
        code: named.to_string(),
    })
}

fn fact(core: &Core, column: &str, value: String, ask: Ask) -> Fact {
    let word = match &ask {
        Ask::Choice { options, .. } => options.iter().find(|option| option.code == value),
        Ask::Words { .. } | Ask::Number { .. } => None,
    };
    let shown = match (word, value.is_empty()) {
        (Some(named), _) => named.word.clone(),
        (None, true) => core.words.say("set-up-not-noted"),
        (None, false) => value.clone(),
    };
    Fact {
        column: column.to_owned(),
        value,
        shown,
        ask,
    }
}

/// The fields that are asked for, with their questions.
fn asked(core: &Core, owner: CodeOwner, look: bool) -> Vec<(&'static str, Ask)> {
    let text = |key: &str| Ask::Words {
        question: core.words.say(key),
    };
    let name = ("name", text("set-up-name"));
    let place = ("place", text("set-up-place"));
    let note = ("note", text("set-up-note"));
    match owner {
        CodeOwner::Source(_) => vec![
            name,
            ("presence", ask::choice::<Presence>(core, "set-up-presence")),
            ("how", text("set-up-how")),
        ],
        CodeOwner::Bay(_) => vec![
            name,
            place,
            ("side", ask::choice::<Side>(core, "set-up-side")),
            ("station", ask::along(core)),
            ("keep_out", text("set-up-keep-out")),
        ],
        CodeOwner::Device(_) => vec![
            name,
            ("kind", ask::choice::<DeviceKind>(core, "set-up-device")),
        ],
        CodeOwner::Point(_) if look => vec![
            name,
            place,
            ("look", ask::choice::<LookKind>(core, "set-up-look")),
            note,
        ],
        CodeOwner::Point(_) => {
            let mut all = vec![name, place];
            all.extend(of_terminal(core));
            all.push(note);
            all
        }
        CodeOwner::Tool(_) => vec![name],
    }
}

fn of_terminal(core: &Core) -> Vec<(&'static str, Ask)> {
    let text = |key: &str| Ask::Words {
        question: core.words.say(key),
    };
    let basis = ask::choice::<TorqueBasis>(core, "set-up-torque-basis");
    vec![
        (
            "fastening",
            ask::choice::<FasteningKind>(core, "set-up-fastening"),
        ),
        ("role", ask::choice::<Role>(core, "torque-role")),
        ("torque", text("set-up-torque")),
        ("torque_basis", basis),
        ("torque_source", text("set-up-torque-source")),
        ("set", text("set-up-set")),
        (
            "conductor",
            ask::choice::<Conductor>(core, "set-up-conductor"),
        ),
        ("wire", text("set-up-wire")),
        ("current", text("set-up-current")),
    ]
}
