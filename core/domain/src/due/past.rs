//! The lives of a rig's terminals one by one, and what they tell of each kind at any age.

use super::Known;
use super::learned::{Fitted, seen};
use crate::ids::PointId;
use crate::loosening::{FEWEST_MOVED, Life, NoFit, Npmle, Proportion, Tight, npmle, tally};
use crate::rig::{Book, FasteningKind};
use chrono::NaiveDate;

/// The life of a terminal: over, or running.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Lived {
    /// The terminal.
    pub point: PointId,
    /// What holds it.
    pub kind: FasteningKind,
    /// Since when it was known to be tight.
    pub tight: Tight,
    /// The day on which it was found to have moved; `None` where it had not.
    pub moved: Option<NaiveDate>,
    /// The same as an interval of age, in months.
    pub life: Life,
}

/// What the lives of one kind tell at any age.
#[derive(Debug, Clone, PartialEq)]
pub struct KindCurve {
    /// The kind.
    pub kind: FasteningKind,
    /// How many lives are known.
    pub joints: u32,
    /// How many of them ended by moving.
    pub moved: u32,
    /// The age of the last check that tells anything, in months.
    pub last: f64,
    /// The estimate without a law; an error where the search for it did not end.
    pub steps: Result<Npmle, NoFit>,
    /// The chance of having moved by each age that was asked, with its interval, by the law that
    /// kinds fitted together tell; `None` where fewer than five had moved.
    pub law: Option<Vec<(f64, Proportion)>>,
}

/// The lives of the terminals that the walks tell: those that are over, then those that run.
#[must_use]
pub fn lives(book: &Book, known: &Known) -> Vec<Lived> {
    let courses = known.courses();
    let seen = seen(book, known, &courses);
    seen.iter()
        .map(|one| Lived {
            point: one.point,
            kind: one.terminal.fastening.kind,
            tight: one.tight,
            moved: one.moved,
            life: one.life,
        })
        .collect()
}

/// What the lives of each kind tell, at so many ages evenly between none and the last check.
///
/// The law is the one by which a due day is found: of copper set by a known hand, at the rig's usual
/// pace, kinds fitted together.
#[must_use]
pub fn curves(book: &Book, known: &Known, ages: u32) -> Vec<KindCurve> {
    let courses = known.courses();
    let seen = seen(book, known, &courses);
    let mut kinds: Vec<FasteningKind> =
        seen.iter().map(|one| one.terminal.fastening.kind).collect();
    kinds.sort_unstable();
    kinds.dedup();
    let of = |kind| {
        let own = seen
            .iter()
            .filter(move |one| one.terminal.fastening.kind == kind);
        own.map(|one| one.life).collect::<Vec<Life>>()
    };
    let lawful = kinds.iter().any(|kind| tally(&of(*kind)).1 >= FEWEST_MOVED);
    let fitted = lawful
        .then(|| Fitted::of(&kinds, &seen, &courses))
        .flatten();
    kinds
        .iter()
        .map(|kind| {
            let lives = of(*kind);
            let (joints, moved) = tally(&lives);
            let last = lives.iter().map(|life| life.by().unwrap_or(life.after()));
            let last = last.fold(0.0, f64::max);
            let fitted = fitted.as_ref().filter(|_| moved >= FEWEST_MOVED);
            let at = (0..=ages).map(|step| last * f64::from(step) / f64::from(ages.max(1)));
            let law = fitted.and_then(|fitted| fitted.moved_by(*kind, at));
            let steps = npmle(&lives);
            KindCurve {
                kind: *kind,
                joints,
                moved,
                last,
                steps,
                law,
            }
        })
        .collect()
}
