//! The dead proof, and the knowing exception.

use super::{Deciding, gate, said};
use crate::ids::{BayId, DeviceId};
use crate::isolation::{EXCEPTION_BELOW, MeterKind, checks_of, is_dead, is_known_live};
use crate::rig::{Check, Device, SetSystem, SupplyKind};
use crate::units::{Stated, VoltageUnit};
use crate::walk::{Away, NoException, ReadyAnswer, ReadyItem, Refusal, Shown, WalkState};

impl Deciding<'_> {
    pub(super) fn known_live(
        &self,
        walk: &WalkState,
        bay: BayId,
        (supply, meter): (SupplyKind, MeterKind),
        place: &str,
        volts: &Stated<VoltageUnit>,
    ) -> Result<Shown, Refusal> {
        gate::open_bay(walk, bay)?;
        said(place)?;
        if meter == MeterKind::Proximity {
            return Err(Refusal::Proximity);
        }
        if matches!(
            walk.ready.get(&ReadyItem::Meter),
            Some(ReadyAnswer::Without(_))
        ) {
            return Err(Refusal::NoMeter);
        }
        if is_known_live(supply, volts.quantity()) {
            Ok(Shown::default())
        } else {
            Err(Refusal::NotKnownLive(supply))
        }
    }

    pub(super) fn read(
        &self,
        walk: &WalkState,
        device: DeviceId,
        check: &Check,
        volts: &Stated<VoltageUnit>,
    ) -> Result<Shown, Refusal> {
        let device = self.device(device)?;
        let work = gate::open_bay(walk, device.bay)?;
        if !checks_of(&device.sets).contains(check) {
            return Err(Refusal::NoSuchPair);
        }
        if self.lapse.is_some() {
            return Err(Refusal::NoProof(check.supply));
        }
        gate::running(work, check.supply)?;
        let dead = is_dead(check.supply, volts.quantity());
        let suspects = if dead {
            Vec::new()
        } else {
            self.suspects(walk, device)
        };
        Ok(Shown {
            dead: Some(dead),
            suspects,
            ..Shown::default()
        })
    }

    /// The sources that could still feed a device: those that are not surely away first.
    fn suspects(&self, walk: &WalkState, device: &Device) -> Vec<crate::ids::SourceId> {
        let bay = self.context.book.and_then(|book| book.bay(device.bay));
        let mut fed = bay.map(|bay| bay.fed_by.clone()).unwrap_or_default();
        fed.sort_by_key(|source| matches!(walk.away.get(source), Some(Away::Isolated(_))));
        fed
    }

    pub(super) fn except(
        &self,
        walk: &WalkState,
        device: DeviceId,
        set: &str,
        reason: &str,
    ) -> Result<Shown, Refusal> {
        let device = self.device(device)?;
        gate::open_bay(walk, device.bay)?;
        said(reason)?;
        let set = device.set(set).ok_or(Refusal::NoSuchPair)?;
        if set.system != SetSystem::Dc {
            return Err(Refusal::NoException(NoException::Ac));
        }
        if device.unswitched.is_empty() {
            return Err(Refusal::NoException(NoException::Switch));
        }
        let book = self.book()?;
        let bay = book.bay(device.bay).ok_or(Refusal::NotInBook("bay"))?;
        let reach = |source: &&crate::rig::Source| {
            let named = bay.fed_by.contains(&source.id) || device.unswitched.contains(&source.code);
            named && source.supply == SupplyKind::Dc
        };
        for source in book.live_sources().filter(reach) {
            let away = matches!(walk.away.get(&source.id), Some(Away::Isolated(_)));
            match &source.highest {
                _ if away && !device.unswitched.contains(&source.code) => {}
                None => return Err(Refusal::NoException(NoException::NotNoted)),
                Some(highest) if highest.quantity().volts().abs() >= EXCEPTION_BELOW => {
                    return Err(Refusal::NoException(NoException::TooHigh));
                }
                Some(_) => {}
            }
        }
        Ok(Shown::default())
    }
}
