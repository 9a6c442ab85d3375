//! Where the hand goes next: computed from what is so, so that a walk goes on at the same place
//! after any stop.

use super::{BayStage, Outlook, Phase, PointRecord, ReadyItem, Setting, WalkState};
use crate::coded::Coded;
use crate::ids::{BayId, DeviceId, PointId, SourceId};
use crate::isolation::{Wiring, away_order, restore_order};
use crate::rig::{Book, Check, Device, Point, SetSystem, SupplyKind};
use crate::supply::ReadingStep;

/// The next thing to do in a walk.
#[derive(Debug, Clone, PartialEq)]
pub enum Next {
    /// Go on with a walk that is stopped for now.
    Resume,
    /// Answer an item of the list before.
    Ready(ReadyItem),
    /// Take a source away.
    Isolate(SourceId),
    /// Open a bay.
    Open(BayId),
    /// Go on at a set that no switch cuts off, by a knowing exception, or leave it.
    Except {
        /// The device.
        device: DeviceId,
        /// The set.
        set: String,
    },
    /// Read a known live source: before the pairs, or after them.
    KnownLive {
        /// The bay.
        bay: BayId,
        /// AC or DC.
        supply: SupplyKind,
        /// Whether pairs have been read already.
        again: bool,
    },
    /// Read a pair that must be dead.
    Read {
        /// The device.
        device: DeviceId,
        /// The pair.
        check: Check,
    },
    /// Set a tool, and say so.
    SetTool(Setting),
    /// Judge a point.
    Point(PointId),
    /// Say how a point was left.
    Left(PointId),
    /// Close a bay.
    Close(BayId),
    /// Begin to bring power back.
    PowerUp,
    /// Bring a source back.
    Restore(SourceId),
    /// Take a reading.
    Measure(ReadingStep),
    /// A reading is not safe: do the safe act.
    Unsafe(ReadingStep),
    /// End the walk.
    End,
}

impl WalkState {
    /// The next thing to do.
    #[must_use]
    pub fn next(&self, book: &Book, outlook: &Outlook<'_>) -> Next {
        if self.paused {
            return Next::Resume;
        }
        if let Some(item) = ReadyItem::ALL
            .iter()
            .find(|item| !self.ready.contains_key(item))
        {
            return Next::Ready(*item);
        }
        match self.phase {
            Phase::Before | Phase::TakingAway | Phase::AtBays => {
                let away = away_order(book.live_sources());
                match away.iter().find(|source| !self.is_dealt_with(source.id)) {
                    Some(source) => Next::Isolate(source.id),
                    None => self.next_at_bays(book, outlook),
                }
            }
            Phase::PoweringUp => self.next_of_power(book),
            Phase::Ended => Next::End,
        }
    }

    fn next_at_bays(&self, book: &Book, outlook: &Outlook<'_>) -> Next {
        let route = self.route();
        let undone = |bay: BayId| -> Vec<&Point> {
            let mut points = self.points_in(book, bay);
            points.retain(|point| {
                let record = self.point(point.id);
                let begun = record.is_some_and(PointRecord::waits_for_left);
                let wanted = begun || route.is_none_or(|route| route.takes(bay, point.id));
                wanted && !record.is_some_and(PointRecord::is_done)
            });
            points
        };
        let at = |stage| move |bay: &BayId| self.stage(*bay) == stage;
        let bays: Vec<BayId> = book.bays_in_order().iter().map(|bay| bay.id).collect();
        if let Some(bay) = bays.iter().copied().find(at(BayStage::Open)) {
            return self.next_in_bay(book, bay, &undone(bay), outlook);
        }
        let in_use = |bay: &BayId| bays.contains(bay);
        let bays: Vec<BayId> = route.map_or_else(
            || bays.clone(),
            |route| {
                route
                    .stops
                    .iter()
                    .map(|stop| stop.bay)
                    .filter(in_use)
                    .collect()
            },
        );
        bays.into_iter()
            .filter(at(BayStage::Shut))
            .find(|bay| !undone(*bay).is_empty())
            .map_or(Next::PowerUp, Next::Open)
    }

    /// Two passes: every point is judged at its check setting first, then what had moved is set.
    fn next_in_bay(
        &self,
        book: &Book,
        bay: BayId,
        undone: &[&Point],
        outlook: &Outlook<'_>,
    ) -> Next {
        let waits = |point: &&Point| {
            self.point(point.id)
                .is_some_and(PointRecord::waits_for_left)
        };
        let (second, first): (Vec<&Point>, Vec<&Point>) = undone.iter().copied().partition(waits);
        self.next_of_proof(book, bay, undone)
            .or_else(|| self.next_by_setting(book, &first, outlook, Next::Point))
            .or_else(|| self.next_by_setting(book, &second, outlook, Next::Left))
            .unwrap_or(Next::Close(bay))
    }

    /// The first point in order, or a later one that needs no other setting of the tool; where each
    /// one left does, the tool is set for the first.
    fn next_by_setting(
        &self,
        book: &Book,
        points: &[&Point],
        outlook: &Outlook<'_>,
        step: fn(PointId) -> Next,
    ) -> Option<Next> {
        let wanted = |point: &&Point| self.setting_for(book, point, outlook);
        let ready =
            |point: &&&Point| wanted(point).is_none_or(|setting| self.is_set(book, &setting));
        if let Some(point) = points.iter().find(ready) {
            return Some(step(point.id));
        }
        points.first().and_then(wanted).map(Next::SetTool)
    }

    /// What the dead proof of an open bay still asks for, at the devices whose terminals are not
    /// gone through yet.
    fn next_of_proof(&self, book: &Book, bay: BayId, undone: &[&Point]) -> Option<Next> {
        let wanted = |device: &&Device| {
            let here = |point: &&Point| point.device == device.id && point.terminal().is_some();
            undone.iter().any(here)
        };
        let devices: Vec<&Device> = book.devices_of(bay).filter(wanted).collect();
        if let Some((device, set)) = self.unswitched(book, &devices) {
            return Some(Next::Except { device, set });
        }
        SupplyKind::ALL.iter().find_map(|supply| {
            let of_kind = |check: &Check| check.supply == *supply;
            let unread = devices.iter().find_map(|device| {
                let check = self.unread(device).into_iter().find(of_kind)?;
                Some((device.id, check))
            });
            let work = self.bays.get(&bay)?;
            let running = work
                .proofs
                .iter()
                .rev()
                .find(|proof| proof.supply == *supply && proof.is_running());
            match (unread, running) {
                (Some((device, check)), Some(_)) => Some(Next::Read { device, check }),
                (Some(_), None) => Some(Next::KnownLive {
                    bay,
                    supply: *supply,
                    again: false,
                }),
                (None, Some(proof)) if !proof.reads.is_empty() => Some(Next::KnownLive {
                    bay,
                    supply: *supply,
                    again: true,
                }),
                (None, _) => None,
            }
        })
    }

    /// A DC set that stays live when everything is taken away, and that was neither proved nor
    /// excepted, nor found to be too high for it.
    fn unswitched(&self, book: &Book, devices: &[&Device]) -> Option<(DeviceId, String)> {
        let waiting = devices.iter().flat_map(|device| {
            let unread = self.unread(device);
            let dc = device.sets.iter().filter(|set| set.system == SetSystem::Dc);
            let waits = dc.filter(move |set| unread.iter().any(|check| check.set == set.name));
            waits.map(|set| (device.id, set.name.as_str()))
        });
        let mut waiting = waiting.peekable();
        waiting.peek()?;
        let staying = Wiring::of(book).staying();
        waiting
            .find(|(device, set)| !staying.set(*device, set).is_empty())
            .map(|(device, set)| (device, set.to_owned()))
    }

    fn next_of_power(&self, book: &Book) -> Next {
        if let Some(step) = self.stopping() {
            return Next::Unsafe(step);
        }
        let waiting = restore_order(
            book.live_sources()
                .filter(|source| self.waits_for_power(source.id)),
        );
        let waits = |kind| waiting.iter().any(|source| source.kind == kind);
        let dc_waits = waiting.iter().any(|source| source.supply == SupplyKind::Dc);
        let ready = |step: &ReadingStep| {
            self.reading(*step).is_none()
                && !step.after().is_some_and(waits)
                && !(step.is_before_shore() && dc_waits)
        };
        match (self.steps(book).into_iter().find(ready), waiting.first()) {
            (Some(step), _) => Next::Measure(step),
            (None, Some(source)) => Next::Restore(source.id),
            (None, None) => Next::End,
        }
    }
}
