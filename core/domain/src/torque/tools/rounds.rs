//! The points of a bay grouped by setting, so that a tool is set as seldom as can be.

use super::{SettingFault, setting};
use crate::rig::Tool;
use crate::units::{Stated, TorqueUnit};

/// One setting of the tool and the points that are done with it. Each new round is a change of
/// setting that the person confirms.
#[derive(Debug, Clone, PartialEq)]
pub struct Round<K> {
    /// What the tool is set to.
    pub at: Stated<TorqueUnit>,
    /// The points, in the order in which they were given.
    pub points: Vec<K>,
}

/// A point that the tool can't do, and why.
#[derive(Debug, Clone, PartialEq)]
pub struct Refused<K> {
    /// The point.
    pub point: K,
    /// Why.
    pub fault: SettingFault,
}

/// One pass through a bay with one tool.
#[derive(Debug, Clone, PartialEq)]
pub struct Rounds<K> {
    /// The settings, rising, so that a tool left at the round before never gives too much.
    pub rounds: Vec<Round<K>>,
    /// The points for which another tool is needed.
    pub refused: Vec<Refused<K>>,
}

/// Groups the points of a bay by what a tool is set to. A bay has two passes: one with the check
/// values of all points, one with the full values of those that moved.
#[must_use]
pub fn rounds<K: Clone>(tool: &Tool, wanted: &[(K, Stated<TorqueUnit>)]) -> Rounds<K> {
    let mut grouped = Rounds {
        rounds: Vec::<Round<K>>::new(),
        refused: Vec::new(),
    };
    for (point, torque) in wanted {
        match setting(tool, torque, None) {
            Ok(set) => {
                let same = |round: &&mut Round<K>| round.at.text() == set.at.text();
                if let Some(round) = grouped.rounds.iter_mut().find(same) {
                    round.points.push(point.clone());
                } else {
                    grouped.rounds.push(Round {
                        at: set.at,
                        points: vec![point.clone()],
                    });
                }
            }
            Err(fault) => grouped.refused.push(Refused {
                point: point.clone(),
                fault,
            }),
        }
    }
    grouped
        .rounds
        .sort_by(|one, other| one.at.value().total_cmp(&other.at.value()));
    grouped
}
