//! The lines of a script, as they are read.

use super::ScriptFault;
use super::written::Written;
use baywalk_domain::ids::ActId;
use baywalk_domain::moment::{Boot, Moment};
use chrono::{DateTime, FixedOffset};
use serde::Deserialize;
use std::path::{Path, PathBuf};
use uuid::Uuid;

/// The newest version of scripts that is read. It is frozen: a newer one gets a number of its own.
const VERSION: u32 = 2;

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Head {
    script: u32,
    seed: String,
}

/// One act of a script.
#[derive(Debug, Deserialize)]
pub(super) struct Line {
    /// When it was entered.
    at: DateTime<FixedOffset>,
    /// How often the machine had been started anew before it.
    #[serde(default)]
    boot: u32,
    /// Whether the rules are expected to refuse it.
    #[serde(default)]
    pub(super) refused: bool,
    /// The act.
    #[serde(flatten)]
    pub(super) act: Written,
}

/// A whole script.
#[derive(Debug)]
pub(crate) struct Script {
    seed: String,
    /// The folder that paths in it start from.
    pub(super) folder: PathBuf,
    /// The number of each line in the file, and the act on it.
    pub(super) lines: Vec<(usize, Line)>,
}

impl Script {
    /// Reads a script; nothing is done yet.
    ///
    /// # Errors
    /// The number of the first line that is wrong, and what is wrong there.
    pub(crate) fn read(text: &str, folder: &Path) -> Result<Self, (usize, ScriptFault)> {
        let mut rows = text
            .lines()
            .enumerate()
            .map(|(place, row)| (place + 1, row));
        let (_, head) = rows.next().unwrap_or((1, ""));
        let head: Head =
            serde_json::from_str(head).map_err(|e| (1, ScriptFault::Head(e.to_string())))?;
        if head.script > VERSION {
            return Err((1, ScriptFault::Newer { found: head.script }));
        }
        let mut lines: Vec<(usize, Line)> = Vec::new();
        for (number, row) in rows.filter(|(_, row)| !row.trim().is_empty()) {
            let line: Line = serde_json::from_str(row)
                .map_err(|e| (number, ScriptFault::Line(e.to_string())))?;
            if lines.last().is_some_and(|(_, before)| before.at > line.at) {
                return Err((number, ScriptFault::Order));
            }
            let since = line.act.since();
            if since > head.script {
                return Err((number, ScriptFault::Since { since }));
            }
            lines.push((number, line));
        }
        Ok(Self {
            seed: head.seed,
            folder: folder.to_owned(),
            lines,
        })
    }

    /// The name of the act on a line.
    pub(super) fn id(&self, number: usize) -> ActId {
        let seed = Uuid::new_v5(&Uuid::NAMESPACE_OID, self.seed.as_bytes());
        ActId::new(Uuid::new_v5(&seed, number.to_string().as_bytes()))
    }

    /// The moment of a line: the clock since start runs with the wall clock from the first line on.
    pub(super) fn moment(&self, line: &Line) -> Moment {
        let first = self.lines.first().map_or(line.at, |(_, first)| first.at);
        let seconds = u64::try_from((line.at - first).num_seconds()).unwrap_or(0);
        Moment {
            wall: line.at,
            boot: Boot::new(&format!("{}#{}", self.seed, line.boot), seconds),
        }
    }

    /// How many acts it has.
    pub(crate) fn len(&self) -> usize {
        self.lines.len()
    }
}
