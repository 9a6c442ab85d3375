//! As found: which grade may be told, and what it raises.

use super::{Deciding, said};
use crate::finding::{About, FindingKind};
use crate::ids::PointId;
use crate::rig::{Point, Terminal};
use crate::torque::{Advice, Past, advise};
use crate::units::{Stated, TorqueUnit};
use crate::walk::{AdviceShown, AsFound, Movement, NotJudgedWhy, Refusal, Shown, Test, WalkState};

impl Deciding<'_> {
    pub(super) fn found(
        &self,
        walk: &WalkState,
        point: PointId,
        found: &AsFound,
    ) -> Result<Shown, Refusal> {
        if walk
            .point(point)
            .is_some_and(|record| record.found.is_some())
        {
            return Err(Refusal::NotedAlready(point));
        }
        self.judge_found(walk, point, found)
    }

    pub(super) fn correct(
        &self,
        walk: &WalkState,
        point: PointId,
        found: &AsFound,
        why: &str,
    ) -> Result<Shown, Refusal> {
        said(why)?;
        if walk
            .point(point)
            .is_none_or(|record| record.found.is_none())
        {
            return Err(Refusal::NothingNoted(point));
        }
        self.judge_found(walk, point, found)
    }

    fn judge_found(
        &self,
        walk: &WalkState,
        id: PointId,
        found: &AsFound,
    ) -> Result<Shown, Refusal> {
        let (point, bay) = self.point(id)?;
        let terminal = point.terminal().ok_or(Refusal::WrongKind(id))?;
        if let AsFound::NotJudged {
            why: NotJudgedWhy::Other,
            note,
        } = found
        {
            said(note)?;
        }
        if found.touches() {
            self.unlocked(walk, point)?;
        } else if !matches!(found, AsFound::NotJudged { .. }) {
            super::gate::open_bay(walk, bay)?;
        } else {
            super::at_phase(walk, crate::walk::Phase::AtBays)?;
        }
        let advice = self.advice(walk, id, terminal);
        self.can_tell(walk, id, &advice, terminal, found)?;
        let mut shown = Shown {
            advice: Some(advice_shown(&advice)),
            ..Shown::default()
        };
        let about = About::Point(id);
        for kind in self.findings_of(walk, point, terminal, found) {
            shown.findings.push(self.raise(kind, about));
        }
        Ok(shown)
    }

    /// The advice for a terminal, with its past.
    pub(super) fn advice(&self, walk: &WalkState, id: PointId, terminal: &Terminal) -> Advice {
        let before = self.context.moved_running.get(&id).copied().unwrap_or(0);
        advise(terminal, past(walk, id, before), self.context.practice)
    }

    /// Sees that the grade can be told by the way the advice allows.
    fn can_tell(
        &self,
        walk: &WalkState,
        point: PointId,
        advice: &Advice,
        terminal: &Terminal,
        found: &AsFound,
    ) -> Result<(), Refusal> {
        let set = match found {
            AsFound::Held(Test::Torque { at, tool }) => Some((*tool, at)),
            AsFound::Moved(Movement::Turned { below, tool, .. }) => Some((*tool, below)),
            _ => None,
        };
        if let Some((tool, at)) = set {
            self.tool_set(walk, tool, at)?;
        }
        if let AsFound::Moved(Movement::Began { tool, .. }) = found {
            self.tool(*tool)?;
        }
        let by_tool = set.is_some() || matches!(found, AsFound::Moved(Movement::Began { .. }));
        let by_tug = matches!(
            found,
            AsFound::Held(Test::Tug) | AsFound::Moved(Movement::Gave)
        );
        let screw = terminal.fastening.kind.takes_torque();
        let refuse = (by_tool && advice.check.is_none()) || (by_tug && screw);
        if refuse {
            Err(Refusal::NotBy {
                point,
                advice: advice.action,
            })
        } else {
            Ok(())
        }
    }

    fn findings_of(
        &self,
        walk: &WalkState,
        point: &Point,
        terminal: &Terminal,
        found: &AsFound,
    ) -> Vec<FindingKind> {
        let running = self
            .context
            .moved_running
            .get(&point.id)
            .copied()
            .unwrap_or(0);
        let has = |kind| {
            let about = About::Point(point.id);
            walk.findings
                .iter()
                .any(|raised| raised.kind == kind && raised.about == about)
        };
        let moved = matches!(found, AsFound::Moved(_) | AsFound::Loose);
        let alive = matches!(
            found,
            AsFound::NotJudged {
                why: NotJudgedWhy::Alive,
                ..
            }
        );
        [
            (moved && running > 0, FindingKind::MovedAgain),
            (matches!(found, AsFound::Apart), FindingKind::WasApart),
            (alive, FindingKind::NotReachedAlive),
            (
                crate::torque::crowded(terminal).is_some(),
                FindingKind::TooManyConductors,
            ),
            (
                crate::torque::size_outside(terminal).is_some(),
                FindingKind::WireOutsideRange,
            ),
        ]
        .into_iter()
        .filter(|(raised, kind)| *raised && !has(*kind))
        .map(|(_, kind)| kind)
        .collect()
    }
}

/// What this and earlier walks tell of a terminal.
///
/// `before` counts the walks running, up to the last one, in which it had moved.
#[must_use]
pub fn past(walk: &WalkState, point: PointId, before: u8) -> Past {
    let record = walk.point(point);
    let found = record
        .and_then(|record| record.found.as_ref())
        .map(|record| &record.found);
    let moved = matches!(found, Some(AsFound::Moved(_) | AsFound::Loose));
    Past {
        moved_running: before.saturating_add(u8::from(moved)),
        spoiled: record
            .is_some_and(|record| record.damage.iter().any(|(damage, _)| damage.spoils())),
        mark_offset: matches!(found, Some(AsFound::Moved(Movement::MarkOff { .. }))),
    }
}

/// The advice as it is kept.
fn advice_shown(advice: &Advice) -> AdviceShown {
    AdviceShown {
        action: advice.action,
        target: advice.target.as_ref().map(|target| target.torque.clone()),
        check: advice.check.clone(),
        basis: advice.target.as_ref().map(|target| target.basis.kind()),
        source: advice
            .target
            .as_ref()
            .map(|target| target.basis.reference())
            .unwrap_or_default(),
    }
}

/// Whether two stated torques are the same within a rounding of their texts.
pub(super) fn same(one: &Stated<TorqueUnit>, other: &Stated<TorqueUnit>) -> bool {
    let (one, other) = (
        one.quantity().newton_metres(),
        other.quantity().newton_metres(),
    );
    (one - other).abs() <= 0.02 * one.max(other)
}
