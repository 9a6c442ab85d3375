//! The rigs in the logbook.

use crate::due::next_walk;
use crate::{Core, Problem};
use baywalk_domain::ids::RigId;
use baywalk_domain::rig::Rig;
use baywalk_logbook::RigGlance;
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
    pub open_findings: u64,
}

/// The rigs in the logbook.
///
/// # Errors
/// [`Problem`] where the logbook can't be read.
pub fn rigs(core: &Core) -> Result<RigsScreen, Problem> {
    let glances = core.logbook.glances()?;
    let empty = glances.is_empty().then(|| core.words.say("rigs-empty"));
    let rigs = glances.iter().map(|glance| line(core, glance)).collect();
    Ok(RigsScreen { rigs, empty })
}

fn line(core: &Core, glance: &RigGlance) -> RigLine {
    let due = match glance.walk {
        Some(_) => core.words.say("rigs-walk-open"),
        None => next_walk(core, glance),
    };
    RigLine {
        id: glance.rig.id.to_string(),
        name: glance.rig.name.clone(),
        what: what(core, &glance.rig),
        due,
        open_findings: glance.open_findings,
    }
}

/// Kind and service of a rig.
pub(crate) fn what(core: &Core, rig: &Rig) -> String {
    format!(
        "{}, {}",
        core.words.code(rig.kind),
        core.words.code(rig.service)
    )
}

impl Core {
    /// The rig that a person means: by name, by id, or the only one there is.
    ///
    /// # Errors
    /// [`Problem`] where there is none such, or several and none was named.
    pub fn find_rig(&self, named: Option<&str>) -> Result<RigId, Problem> {
        let meant = |rig: &Rig| {
            named.is_none_or(|name| {
                rig.name.to_lowercase() == name.trim().to_lowercase() || rig.id.to_string() == name
            })
        };
        let mut found = Vec::new();
        for glance in self.logbook.glances()? {
            if meant(&glance.rig) {
                found.push(glance.rig.id);
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
