//! The innermost intervals, and which of them each life reaches over.

use crate::loosening::Life;

/// Lives that reach over the same innermost intervals.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Class {
    /// The first of them.
    pub(super) first: usize,
    /// The one after the last of them.
    pub(super) end: usize,
    /// How many joints.
    pub(super) count: f64,
}

/// All lives by the innermost intervals that they reach over.
pub(super) struct Classes {
    /// The classes, by their first and last interval.
    pub(super) all: Vec<Class>,
    /// How many joints in all.
    pub(super) count: f64,
}

impl Classes {
    /// The innermost intervals, as (after, by], and the classes over them.
    pub(super) fn new(lives: &[Life]) -> (Vec<(f64, f64)>, Self) {
        let ends = innermost(lives);
        let mut all: Vec<Class> = lives.iter().map(|life| class(life, &ends)).collect();
        all.sort_by_key(|class| (class.first, class.end));
        all.dedup_by(|next, kept| {
            let same = (next.first, next.end) == (kept.first, kept.end);
            if same {
                kept.count += next.count;
            }
            same
        });
        let count = all.iter().map(|class| class.count).sum();
        (ends, Self { all, count })
    }
}

/// Each beginning of a life that is followed by an end without another beginning between them.
/// Intervals are half-open, so an end at an age comes before a beginning at that age.
fn innermost(lives: &[Life]) -> Vec<(f64, f64)> {
    let begins = lives.iter().map(|life| (life.after(), true));
    let ends = lives.iter().map(|life| (end(life), false));
    let mut marks: Vec<(f64, bool)> = begins.chain(ends).collect();
    marks.sort_by(|one, other| one.0.total_cmp(&other.0).then(one.1.cmp(&other.1)));
    let pairs = marks.iter().zip(marks.iter().skip(1));
    pairs
        .filter(|(one, next)| one.1 && !next.1)
        .map(|(one, next)| (one.0, next.0))
        .collect()
}

fn end(life: &Life) -> f64 {
    life.by().unwrap_or(f64::INFINITY)
}

fn class(life: &Life, ends: &[(f64, f64)]) -> Class {
    Class {
        first: ends.partition_point(|(after, _)| *after < life.after()),
        end: ends.partition_point(|(_, by)| *by <= end(life)),
        count: f64::from(life.count()),
    }
}
