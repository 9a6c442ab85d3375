//! The pace that is reckoned with: what the table says, drawn to what the rig's own walks took.

use super::table::row;
use super::{Sample, Step};
use crate::coded::Coded;
use std::collections::BTreeMap;

/// How many of a rig's own steps weigh as much as the table. Ours.
const TABLE_WEIGHS: u64 = 5;

/// Seconds: the quicker quarter, the usual, the slower quarter.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Span {
    /// A quarter of the steps are done within so many seconds.
    pub quick: u32,
    /// Half of them.
    pub usual: u32,
    /// Three quarters of them.
    pub slow: u32,
}

impl Span {
    /// Both together, each as quick, as usual or as slow as the other.
    #[must_use]
    pub const fn and(self, other: Self) -> Self {
        Self {
            quick: self.quick.saturating_add(other.quick),
            usual: self.usual.saturating_add(other.usual),
            slow: self.slow.saturating_add(other.slow),
        }
    }

    /// The same seconds whatever the pace.
    #[must_use]
    pub const fn fixed(seconds: u32) -> Self {
        Self {
            quick: seconds,
            usual: seconds,
            slow: seconds,
        }
    }
}

/// The pace of each step.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Pace {
    learned: BTreeMap<Step, (Span, u32)>,
}

impl Pace {
    /// The pace that the steps of a rig's own walks tell; the table weighs as much as five of them,
    /// so that few draw it a little and many set it.
    ///
    /// # Example
    /// ```
    /// use baywalk_domain::pace::{Pace, Sample, Step};
    /// let table = Pace::of(&[]).span(Step::Look);
    /// let took = Sample { step: Step::Look, seconds: 2 * table.usual };
    /// let own = Pace::of(&[took; 45]);
    /// assert_eq!(own.span(Step::Look).usual, (5 * table.usual + 45 * 2 * table.usual + 25) / 50);
    /// assert_eq!((own.count(Step::Look), own.count(Step::Tug)), (45, 0));
    /// ```
    #[must_use]
    pub fn of(samples: &[Sample]) -> Self {
        let learned = Step::ALL.iter().filter_map(|step| {
            let of_step = samples.iter().filter(|sample| sample.step == *step);
            let mut seconds: Vec<u32> = of_step.map(|sample| sample.seconds).collect();
            seconds.sort_unstable();
            let count = u32::try_from(seconds.len()).unwrap_or(u32::MAX);
            let [quick, usual, slow] = row(step.code());
            let drawn = |quarter, table| drawn(&seconds, quarter, table);
            (count > 0).then(|| {
                let span = Span {
                    quick: drawn(1, quick),
                    usual: drawn(2, usual),
                    slow: drawn(3, slow),
                };
                (*step, (span, count))
            })
        });
        Self {
            learned: learned.collect(),
        }
    }

    /// The seconds that a step takes.
    #[must_use]
    pub fn span(&self, step: Step) -> Span {
        self.learned.get(&step).map_or_else(
            || {
                let [quick, usual, slow] = row(step.code());
                Span { quick, usual, slow }
            },
            |(span, _)| *span,
        )
    }

    /// On how many steps of the rig's own walks that rests.
    #[must_use]
    pub fn count(&self, step: Step) -> u32 {
        self.learned.get(&step).map_or(0, |(_, count)| *count)
    }

    /// On how many steps of the rig's own walks it rests in all.
    #[must_use]
    pub fn total(&self) -> u32 {
        self.learned.values().map(|(_, count)| count).sum()
    }
}

/// A quartile of sorted seconds (the value below which that many quarters lie), drawn to the table.
fn drawn(seconds: &[u32], quarter: usize, table: u32) -> u32 {
    let at = (seconds.len().saturating_sub(1) * quarter + 2) / 4;
    let own = u64::from(seconds.get(at).copied().unwrap_or(table));
    let count = u64::try_from(seconds.len())
        .unwrap_or(u64::MAX)
        .min(1_000_000);
    let weight = TABLE_WEIGHS + count;
    let sum = TABLE_WEIGHS * u64::from(table) + count * own;
    u32::try_from((sum + weight / 2) / weight)
        .unwrap_or(u32::MAX)
        .max(1)
}
