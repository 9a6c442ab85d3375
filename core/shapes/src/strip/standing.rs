//! How a bay stands.

use crate::line::Power;
use baywalk_domain::ids::BayId;
use baywalk_domain::rig::Book;
use baywalk_domain::walk::{BayStage, Grade, PointRecord, WalkState};
use std::collections::BTreeMap;

/// How a bay stands on the strip.
#[derive(Debug, Clone, PartialEq)]
pub struct Standing {
    /// How many points it has in this walk.
    pub total: usize,
    /// How many of them have each grade.
    pub grades: BTreeMap<Grade, usize>,
    /// Whether it is shut, open, or closed again.
    pub stage: BayStage,
    /// Whether the hand goes there next.
    pub next: bool,
    /// What is known of its conductors, where that is to be told.
    pub power: Option<Power>,
    /// The caller's word beside its tag; empty for none.
    pub word: String,
}

impl Default for Standing {
    fn default() -> Self {
        Self {
            total: 0,
            grades: BTreeMap::new(),
            stage: BayStage::Shut,
            next: false,
            power: None,
            word: String::new(),
        }
    }
}

impl Standing {
    /// How each bay in use stands in a walk, by the points the walk goes through. Looks that were
    /// seen count as looked at.
    #[must_use]
    pub fn of_walk(walk: &WalkState, book: &Book) -> BTreeMap<BayId, Self> {
        let bays = book.bays.iter().filter(|bay| !bay.retired);
        let mut standings: BTreeMap<BayId, Self> = bays
            .map(|bay| {
                let stage = walk.stage(bay.id);
                (
                    bay.id,
                    Self {
                        stage,
                        ..Self::default()
                    },
                )
            })
            .collect();
        for point in walk.points_to_do(book) {
            let standing = book.bay_of(point).and_then(|bay| standings.get_mut(&bay));
            if let Some(standing) = standing {
                standing.total += 1;
                if let Some(grade) = walk.point(point.id).and_then(PointRecord::grade) {
                    *standing.grades.entry(grade).or_default() += 1;
                }
            }
        }
        standings
    }

    /// How many points have a grade.
    #[must_use]
    pub fn count(&self, grade: Grade) -> usize {
        self.grades.get(&grade).copied().unwrap_or(0)
    }
}
