//! The rigs in the logbook.

use crate::named::count;
use crate::{Core, Problem};
use baywalk_domain::ids::RigId;
use serde::Serialize;

/// The rigs in the logbook.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct RigsScreen {
    /// A line each.
    pub rigs: Vec<RigLine>,
    /// What to do where there is none.
    pub empty: Option<String>,
}

/// One rig in a line.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct RigLine {
    /// Its name for the machine.
    pub id: String,
    /// What its owner calls it.
    pub name: String,
    /// What it is: kind and service.
    pub what: String,
    /// When the next walk is due, or that a walk is open.
    pub due: String,
    /// How many findings wait.
    pub open_findings: u32,
}

/// The rigs in the logbook.
///
/// # Errors
/// [`Problem`] where the logbook can't be read.
pub fn rigs(core: &Core) -> Result<RigsScreen, Problem> {
    let mut rigs = Vec::new();
    for id in core.logbook.rigs()? {
        rigs.push(line(core, id)?);
    }
    let empty = rigs.is_empty().then(|| core.words.say("rigs-empty"));
    Ok(RigsScreen { rigs, empty })
}

fn line(core: &Core, id: RigId) -> Result<RigLine, Problem> {
    let book = core.logbook.book(id)?;
    let due = match core.logbook.open_walk(id)? {
        Some(_) => core.words.say("rigs-walk-open"),
        None => crate::due::due(core, id)?.words,
    };
    let findings = core.logbook.findings(id)?;
    Ok(RigLine {
        id: id.to_string(),
        name: book.rig.name.clone(),
        what: what(core, &book),
        due,
        open_findings: count(findings.iter().filter(|finding| finding.is_open()).count()),
    })
}

/// Kind and service of a rig.
pub(crate) fn what(core: &Core, book: &baywalk_domain::rig::Book) -> String {
    format!(
        "{}, {}",
        core.words.code(book.rig.kind),
        core.words.code(book.rig.service)
    )
}

impl Core {
    /// The rig that a person means: by name, by id, or the only one there is.
    ///
    /// # Errors
    /// [`Problem`] where there is none such, or several and none was named.
    pub fn find_rig(&self, named: Option<&str>) -> Result<RigId, Problem> {
        let rigs = self.logbook.rigs()?;
        let mut found = Vec::new();
        for id in &rigs {
            let book = self.logbook.book(*id)?;
            let meant = named.is_none_or(|name| {
                book.rig.name.to_lowercase() == name.trim().to_lowercase() || id.to_string() == name
            });
            if meant {
                found.push(*id);
            }
        }
        match (found.as_slice(), named) {
            ([one], _) => Ok(*one),
            ([], Some(name)) => Err(Problem::not_found(
                self.words.fill("rigs-no-such", &[("name", name.into())]),
            )),
            ([], None) => Err(Problem::not_found(self.words.say("rigs-empty"))),
            _ => Err(Problem::not_found(self.words.say("rigs-several"))),
        }
    }
}
