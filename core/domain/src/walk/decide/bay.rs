//! Opening and closing a bay.

use super::Deciding;
use crate::ids::BayId;
use crate::isolation::Passing;
use crate::rig::{Source, SupplyKind};
use crate::walk::{Away, BayStage, Counted, Phase, Refusal, Shown, WalkState};

impl Deciding<'_> {
    pub(super) fn open(&self, walk: &WalkState, bay: BayId) -> Result<Shown, Refusal> {
        if walk.phase == Phase::Before {
            return Err(Refusal::Phase {
                found: walk.phase,
                expected: Phase::TakingAway,
            });
        }
        let book = self.book()?;
        let mut sources = book.live_sources();
        if let Some(left) = sources.find(|source| !walk.is_dealt_with(source.id)) {
            return Err(Refusal::SourceNotAway(left.id));
        }
        book.bay(bay)
            .filter(|record| !record.retired)
            .ok_or(Refusal::NotInBook("bay"))?;
        if walk.stage(bay) == BayStage::Open {
            return Err(Refusal::BayOpen(bay));
        }
        let reach = walk.still_live(book, Passing::Failed);
        let alive = reach.bay(bay).into_iter().find(|source| {
            let stays = matches!(walk.away.get(source), Some(Away::Stays(_)));
            let ac = |source: &Source| source.supply == SupplyKind::Ac;
            stays && book.source(*source).is_some_and(ac)
        });
        match alive {
            Some(feeding) => Err(Refusal::AliveByChoice { bay, feeding }),
            None => Ok(Shown::default()),
        }
    }

    pub(super) fn close(
        &self,
        walk: &WalkState,
        bay: BayId,
        counted: Counted,
    ) -> Result<Shown, Refusal> {
        super::gate::open_bay(walk, bay)?;
        let book = self.book()?;
        let waits = |point: &&crate::rig::Point| {
            walk.point(point.id)
                .is_some_and(crate::walk::PointRecord::waits_for_left)
        };
        if let Some(point) = book.points_of(bay).into_iter().find(waits) {
            return Err(Refusal::WaitsForLeft(point.id));
        }
        if counted.is_complete() {
            Ok(Shown::default())
        } else {
            Err(Refusal::NotCounted(bay))
        }
    }
}
