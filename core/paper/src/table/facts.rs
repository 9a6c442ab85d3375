//! What the tables are made of.

use super::{Table, findings, lives, photos, points, readings, usage, walks};
use baywalk_domain::due::Lived;
use baywalk_domain::finding::Finding;
use baywalk_domain::ids::ActId;
use baywalk_domain::rig::Book;
use baywalk_domain::walk::{Act, WalkState};
use chrono::NaiveDate;

/// One rig with its whole past.
#[derive(Debug, Clone, PartialEq)]
pub struct RigFacts {
    /// Its book as it stands.
    pub book: Book,
    /// Its walks, oldest first.
    pub walks: Vec<WalkFacts>,
    /// Its findings, oldest first.
    pub findings: Vec<Finding>,
    /// The lives of its terminals, over and running.
    pub lives: Vec<Lived>,
    /// What was noted and ruled between walks, oldest first.
    pub timing: Vec<(NaiveDate, ActId, Act)>,
}

/// One walk.
#[derive(Debug, Clone, PartialEq)]
pub struct WalkFacts {
    /// What is so in it.
    pub state: WalkState,
    /// The book as it stood at its end.
    pub book: Book,
}

/// All tables of some rigs, each there even where it has no row.
#[must_use]
pub fn tables(rigs: &[RigFacts]) -> Vec<Table> {
    vec![
        walks::table(rigs),
        points::table(rigs),
        readings::table(rigs),
        findings::table(rigs),
        lives::table(rigs),
        usage::table(rigs),
        photos::table(rigs),
    ]
}

/// Every walk of every rig.
pub(super) fn each_walk(rigs: &[RigFacts]) -> impl Iterator<Item = &WalkFacts> {
    rigs.iter().flat_map(|rig| &rig.walks)
}
