//! Looks and damage.

use super::{Deciding, gate, said};
use crate::finding::{About, FindingKind};
use crate::ids::PointId;
use crate::walk::{Damage, Refusal, Seen, Shown, WalkState};

impl Deciding<'_> {
    pub(super) fn look(
        &self,
        walk: &WalkState,
        id: PointId,
        seen: &Seen,
    ) -> Result<Shown, Refusal> {
        let (point, bay) = self.point(id)?;
        if point.terminal().is_some() {
            return Err(Refusal::WrongKind(id));
        }
        gate::open_bay(walk, bay)?;
        if walk.point(id).is_some_and(|record| record.seen.is_some()) {
            return Err(Refusal::NotedAlready(id));
        }
        let mut shown = Shown::default();
        if let Seen::Trouble(words) | Seen::NotLooked(words) = seen {
            said(words)?;
        }
        if matches!(seen, Seen::Trouble(_)) {
            shown
                .findings
                .push(self.raise(FindingKind::LookTrouble, About::Point(id)));
        }
        Ok(shown)
    }

    pub(super) fn damage(
        &self,
        walk: &WalkState,
        id: PointId,
        damage: Damage,
    ) -> Result<Shown, Refusal> {
        let (_, bay) = self.point(id)?;
        gate::open_bay(walk, bay)?;
        let (kind, about) = (damage.finding(), About::Point(id));
        let mut raised = walk.findings.iter();
        let known = raised.any(|raised| raised.kind == kind && raised.about == about);
        let new = (!known).then(|| self.raise(kind, about));
        Ok(Shown {
            findings: new.into_iter().collect(),
            ..Shown::default()
        })
    }
}
