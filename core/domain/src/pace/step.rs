//! What takes time at a point, and how long it took in a walk.

use crate::coded::coded;
use crate::ids::ActId;
use crate::isolation::IDLE_LIMIT;
use crate::moment::Moment;
use crate::rig::{Book, FasteningKind, Point, PointKind};
use crate::walk::{Act, AsFound, Entry, Seen};
use std::collections::BTreeSet;

coded! {
    /// The kinds of work that take their own time.
    Step as "pace-step" {
        /// A look.
        Look = "look",
        /// A conductor tugged by hand.
        Tug = "tug",
        /// A screw checked with the torque tool.
        Screw = "screw",
        /// A nut or bolt checked with the torque tool.
        Nut = "nut",
        /// A joint set right that had moved.
        Set = "set",
    }
}

/// What a point asks for before anything is found there.
#[must_use]
pub fn step_of(point: &Point) -> Step {
    let kind = match &point.kind {
        PointKind::Look(_) => return Step::Look,
        PointKind::Terminal(terminal) => terminal.fastening.kind,
    };
    match kind {
        FasteningKind::Stud
        | FasteningKind::Bolt
        | FasteningKind::BatteryPost
        | FasteningKind::WingNut
        | FasteningKind::SplitBolt
        | FasteningKind::BoltOnBreaker
        | FasteningKind::ShearBolt => Step::Nut,
        FasteningKind::Sealed | FasteningKind::CellLink => Step::Look,
        kind if kind.takes_torque() => Step::Screw,
        _ => Step::Tug,
    }
}

/// How long one step took.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Sample {
    /// What was done.
    pub step: Step,
    /// The seconds from the act before to the act that noted it.
    pub seconds: u32,
}

/// How long each step of a walk took, by the clock that runs since the machine started.
///
/// The time of a point begins with the act before it that is of a point, a proof or a bay, so that a
/// change of the tool's setting and a photo count to the point they were made for. Nothing is told
/// over a stop, a change of the rig's book, or more than 30 minutes without an act.
#[must_use]
pub fn samples(entries: &[Entry], book: &Book) -> Vec<Sample> {
    let mut begun: Option<&Moment> = None;
    let mut found = Vec::new();
    for entry in standing(entries) {
        let took = begun.and_then(|begun| took(begun, &entry.at));
        if let (Some(step), Some(seconds)) = (step(&entry.act, book), took) {
            found.push(Sample { step, seconds });
        }
        match entry.act {
            Act::SetTool { .. } | Act::Photo { .. } | Act::Damage { .. } => {}
            Act::Pause | Act::End(_) => begun = None,
            _ => begun = Some(&entry.at),
        }
    }
    found
}

/// The entries that were not struck.
pub(super) fn standing(entries: &[Entry]) -> impl Iterator<Item = &Entry> {
    let strikes = entries.iter().filter_map(|entry| match entry.act {
        Act::Strike { act } => Some(act),
        _ => None,
    });
    let struck: BTreeSet<ActId> = strikes.collect();
    entries
        .iter()
        .filter(move |entry| !struck.contains(&entry.id))
}

/// Whole seconds between two acts; `None` where they tell nothing of the hand.
pub(super) fn took(begun: &Moment, at: &Moment) -> Option<u32> {
    let seconds = at.boot.seconds_since(&begun.boot)?;
    let told = seconds > 0 && seconds <= IDLE_LIMIT;
    u32::try_from(seconds).ok().filter(|_| told)
}

fn step(act: &Act, book: &Book) -> Option<Step> {
    match act {
        Act::Found {
            found: AsFound::NotJudged { .. },
            ..
        }
        | Act::Look {
            seen: Seen::NotLooked(_),
            ..
        } => None,
        Act::Found { point, .. } | Act::Look { point, .. } => book.point(*point).map(step_of),
        Act::Left { .. } => Some(Step::Set),
        _ => None,
    }
}
