//! How long the bays of a walk took.

use super::step::{standing, took};
use crate::ids::BayId;
use crate::walk::{Act, Entry};
use std::collections::BTreeMap;

/// How many seconds each bay of a walk stood open, by the clock that runs since the machine started.
///
/// Stops, struck acts and more than 30 minutes without an act are left out; a bay that is opened again
/// counts both times.
///
/// # Example
/// ```
/// assert!(baywalk_domain::pace::in_bays(&[]).is_empty());
/// ```
#[must_use]
pub fn in_bays(entries: &[Entry]) -> BTreeMap<BayId, u32> {
    let mut open: Vec<BayId> = Vec::new();
    let mut seconds: BTreeMap<BayId, u32> = BTreeMap::new();
    let mut before: Option<&Entry> = None;
    for entry in standing(entries) {
        let gap = before.and_then(|before| took(&before.at, &entry.at));
        for bay in &open {
            let sum = seconds.entry(*bay).or_default();
            *sum = sum.saturating_add(gap.unwrap_or(0));
        }
        match &entry.act {
            Act::Open { bay } => open.push(*bay),
            Act::Close { bay, .. } => open.retain(|other| other != bay),
            _ => {}
        }
        let stops = matches!(entry.act, Act::Pause | Act::End(_));
        before = Some(entry).filter(|_| !stops);
    }
    seconds
}
