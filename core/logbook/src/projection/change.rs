//! What an act moved, so that screens redraw by it.

use baywalk_domain::ids::PointId;
use baywalk_domain::rig::BookChange;
use baywalk_domain::walk::{Act, Entry};

/// Something that screens read and that an act moved.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Change {
    /// The list of rigs: a new one, or a name.
    Rigs,
    /// The rig's book.
    Book,
    /// The open walk.
    Walk,
    /// The list of the rig's walks: one was started or ended.
    Walks,
    /// What is known of a point from walks.
    Past(PointId),
    /// The rig's findings.
    Findings,
    /// What tells when to look again: notes of odometer and use, rules, what was put off.
    Timing,
}

/// What an entry moved; `struck` is the entry that it struck.
pub(crate) fn changes(entry: &Entry, struck: Option<&Entry>) -> Vec<Change> {
    let mut moved = by_act(&entry.act);
    if let Some(struck) = struck {
        moved.extend(by_act(&struck.act));
    }
    if entry.walk.is_some() {
        moved.push(Change::Walk);
    }
    let raised = |entry: &Entry| !entry.shown.findings.is_empty();
    if raised(entry) || struck.is_some_and(raised) {
        moved.push(Change::Findings);
    }
    let mut each = Vec::new();
    for change in moved {
        if !each.contains(&change) {
            each.push(change);
        }
    }
    each
}

fn by_act(act: &Act) -> Vec<Change> {
    match act {
        Act::Book(BookChange::Whole(_) | BookChange::Rig(_)) => vec![Change::Rigs, Change::Book],
        Act::Book(_) => vec![Change::Book],
        Act::Odometer(_) | Act::Usage(_) | Act::Rule(_) | Act::PutOff { .. } => {
            vec![Change::Timing]
        }
        Act::Start { .. } | Act::End(_) => vec![Change::Walks],
        Act::Decide { .. } => vec![Change::Findings],
        act => point_of(act).map(Change::Past).into_iter().collect(),
    }
}

/// The point whose record an act writes.
pub(super) const fn point_of(act: &Act) -> Option<PointId> {
    match act {
        Act::Found { point, .. }
        | Act::Correct { point, .. }
        | Act::Look { point, .. }
        | Act::Damage { point, .. }
        | Act::Left { point, .. } => Some(*point),
        _ => None,
    }
}
