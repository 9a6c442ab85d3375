//! Acts of a script that change the book, read as the rig's files are.

use super::ScriptFault;
use super::line::Script;
use super::written::Written;
use baywalk_domain::ids::{ActId, RigId};
use baywalk_domain::rig::{Book, BookChange, Code};
use baywalk_domain::walk::Act;
use baywalk_logbook::rigfile::{self, Layout, NamedText};
use baywalk_screens::{Core, Problem, book, files};
use std::collections::BTreeMap;

/// Why a change of the book can't be made of a line.
pub(super) enum BookTrouble {
    /// The line is wrong.
    Script(ScriptFault),
    /// What it says is refused, in words.
    Told(Problem),
}

/// The change that a line makes to the book, and the rig it makes it to.
pub(super) fn change(
    core: &Core,
    script: &Script,
    id: ActId,
    written: &Written,
    rig: Option<RigId>,
) -> Result<(RigId, Act), BookTrouble> {
    match written {
        Written::Layout { layout } => {
            let found = rigfile::layouts().iter().find(|known| known.code == layout);
            let Layout { toml, csv, .. } = found.ok_or_else(|| no_code("layout", layout))?;
            whole(core, id, toml, csv)
        }
        Written::Files { toml, csv } => {
            let text = |name: &String| {
                std::fs::read_to_string(script.folder.join(name)).map_err(|error| {
                    BookTrouble::Script(ScriptFault::File(format!("{name}: {error}")))
                })
            };
            whole(core, id, &text(toml)?, &text(csv)?)
        }
        Written::Add { record, fields } => one(core, id, rig, |files| {
            rigfile::add(files, record, &pairs(fields))
        }),
        Written::Change { code, fields } => {
            let code = Code::parse(code).map_err(|fault| BookTrouble::Script(fault.into()))?;
            one(core, id, rig, |files| {
                rigfile::patch(files, &code, &pairs(fields))
            })
        }
        _ => Err(BookTrouble::Script(ScriptFault::Missing("act"))),
    }
}

fn whole(core: &Core, id: ActId, toml: &str, csv: &str) -> Result<(RigId, Act), BookTrouble> {
    let book: Book = files::read(
        core,
        &named("rig.toml", toml),
        &named("points.csv", csv),
        id,
    )
    .map_err(BookTrouble::Told)?;
    Ok((book.rig.id, Act::Book(BookChange::Whole(Box::new(book)))))
}

/// The one change that a patch of the rig's files comes to.
fn one(
    core: &Core,
    id: ActId,
    rig: Option<RigId>,
    patch: impl FnOnce(&rigfile::Files) -> Result<rigfile::Files, rigfile::PatchFault>,
) -> Result<(RigId, Act), BookTrouble> {
    let rig = rig.ok_or_else(|| no_code("rig", ""))?;
    let files = files::write(core, rig).map_err(BookTrouble::Told)?;
    let patched =
        patch(&files).map_err(|fault| BookTrouble::Script(ScriptFault::File(fault.to_string())))?;
    let changes = book::changes(
        core,
        rig,
        (
            &named("rig.toml", &patched.toml),
            &named("points.csv", &patched.csv),
        ),
        id,
    )
    .map_err(BookTrouble::Told)?;
    match <[BookChange; 1]>::try_from(changes) {
        Ok([change]) => Ok((rig, Act::Book(change))),
        Err(_) => Err(BookTrouble::Script(ScriptFault::Missing("fields"))),
    }
}

/// The fields with their texts, in order of their names.
pub(super) fn pairs(fields: &BTreeMap<String, String>) -> Vec<(String, String)> {
    fields
        .iter()
        .map(|(name, text)| (name.clone(), text.clone()))
        .collect()
}

fn no_code(what: &'static str, code: &str) -> BookTrouble {
    BookTrouble::Script(ScriptFault::NoCode {
        what,
        code: code.to_owned(),
    })
}

const fn named<'a>(name: &'a str, text: &'a str) -> NamedText<'a> {
    NamedText { name, text }
}
