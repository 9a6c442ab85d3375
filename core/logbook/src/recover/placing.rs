//! Whether an entry still has what it rests on, where entries before it are missing.

use baywalk_domain::ids::{ActId, RigId, WalkId};
use baywalk_domain::rig::BookChange;
use baywalk_domain::walk::{Act, Entry};
use std::collections::{BTreeMap, BTreeSet};

/// What the entries so far leave to rest on.
#[derive(Debug, Default)]
pub(super) struct Placing {
    rigs: BTreeSet<RigId>,
    walks: BTreeMap<RigId, WalkId>,
    acts: BTreeSet<ActId>,
}

impl Placing {
    /// Takes an entry where it has what it rests on; says whether.
    ///
    /// A change needs its rig, an act of a walk the start of that walk, a strike the act it strikes.
    pub(super) fn take(&mut self, entry: &Entry) -> bool {
        if self.acts.contains(&entry.id) || !self.rests(entry) {
            return false;
        }
        self.acts.insert(entry.id);
        match &entry.act {
            Act::Book(_) => {
                self.rigs.insert(entry.rig);
            }
            Act::Start { .. } => {
                if let Some(walk) = entry.walk {
                    self.walks.insert(entry.rig, walk);
                }
            }
            Act::End(_) => {
                self.walks.remove(&entry.rig);
            }
            _ => {}
        }
        true
    }

    fn rests(&self, entry: &Entry) -> bool {
        let walk = self.walks.get(&entry.rig);
        let in_walk = entry.walk.is_none() || walk == entry.walk.as_ref();
        match &entry.act {
            Act::Book(BookChange::Whole(_)) => in_walk,
            // The end of the walk before may be what is missing.
            Act::Start { .. } => self.rigs.contains(&entry.rig),
            Act::Strike { act } => in_walk && self.acts.contains(act),
            act if act.is_origin() => in_walk,
            act if act.is_outside() => in_walk && self.rigs.contains(&entry.rig),
            _ => in_walk && entry.walk.is_some(),
        }
    }
}
