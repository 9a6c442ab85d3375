//! The dead proof, and the knowing exception.

use super::{Deciding, gate, said};
use crate::ids::{BayId, DeviceId, SourceId};
use crate::isolation::{
    EXCEPTION_BELOW, Meter, MeterKind, Passing, Wiring, checks_of, is_dead, is_known_live,
};
use crate::rig::{Check, Device, SetSystem, Source, SupplyKind};
use crate::units::{Stated, VoltageUnit};
use crate::walk::{NoException, ReadyAnswer, ReadyItem, Refusal, Shown, WalkState};
use std::collections::BTreeSet;

impl Deciding<'_> {
    pub(super) fn known_live(
        &self,
        walk: &WalkState,
        bay: BayId,
        (supply, meter): (SupplyKind, &Meter),
        place: &str,
        volts: &Stated<VoltageUnit>,
    ) -> Result<Shown, Refusal> {
        gate::open_bay(walk, bay)?;
        said(place)?;
        if meter.kind == MeterKind::Proximity {
            return Err(Refusal::Proximity);
        }
        if meter.name.trim().is_empty() {
            return Err(Refusal::NameMeter);
        }
        if supply == SupplyKind::Ac && !meter.category.is_for_ac() {
            return Err(Refusal::MeterCategory(meter.category));
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

    /// The sources that could still feed a device, the likeliest first: those that still reach it,
    /// those that would where something failed, then those that are isolated and feed its bay.
    fn suspects(&self, walk: &WalkState, device: &Device) -> Vec<SourceId> {
        let Some(book) = self.context.book else {
            return Vec::new();
        };
        let wiring = Wiring::of(book);
        let still = |passing| wiring.reach(passing, |source| walk.is_away(source.id));
        let mut suspects = still(Passing::AsBuilt).device(device.id);
        suspects.extend(still(Passing::Failed).bay(device.bay));
        suspects.extend(wiring.feeding().bay(device.bay));
        let mut seen = BTreeSet::new();
        suspects.retain(|source| seen.insert(*source));
        suspects
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
        let book = self.book()?;
        let name = set.name.as_str();
        if Wiring::of(book).staying().set(device.id, name).is_empty() {
            return Err(Refusal::NoException(NoException::Switch));
        }
        let reach = walk.still_live(book, Passing::Failed);
        let live = |source: &&Source| reach.set(device.id, name).contains(&source.id);
        for source in book.live_sources().filter(live) {
            if source.supply == SupplyKind::Ac {
                return Err(Refusal::NoException(NoException::Ac));
            }
            match &source.highest {
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
