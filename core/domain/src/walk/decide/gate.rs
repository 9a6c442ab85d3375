//! The gate: what a terminal needs before a hand may touch it.

use super::Deciding;
use crate::ids::{BayId, PointId};
use crate::isolation::Proof;
use crate::rig::{Book, Check, Device, Point, SupplyKind};
use crate::walk::{BayStage, BayWork, Needs, Phase, Refusal, WalkState};

/// Sees that a bay is open in a walk that stands at the bays.
pub(super) fn open_bay(walk: &WalkState, bay: BayId) -> Result<&BayWork, Refusal> {
    super::at_phase(walk, Phase::AtBays)?;
    let found = walk.stage(bay);
    match walk.bays.get(&bay) {
        Some(work) if found == BayStage::Open => Ok(work),
        _ => Err(Refusal::Bay {
            bay,
            found,
            expected: BayStage::Open,
        }),
    }
}

impl WalkState {
    /// What a point still needs before it may be touched; `None` where it may be.
    #[must_use]
    pub fn needs(&self, book: &Book, point: &Point) -> Option<Needs> {
        let device = book.device(point.device)?;
        let work = match self.bays.get(&device.bay) {
            Some(work) if work.stage == BayStage::Open => work,
            _ => return Some(Needs::OpenBay(device.bay)),
        };
        let mut sources = book.live_sources();
        if let Some(source) = sources.find(|source| !self.is_dealt_with(source.id)) {
            return Some(Needs::Source(source.id));
        }
        if device.sets.is_empty() {
            return Some(Needs::Sets(device.id));
        }
        let wanted = match point
            .terminal()
            .and_then(|terminal| terminal.set.as_deref())
        {
            Some(set) => device.checks_for(set),
            None => crate::isolation::checks_of(&device.sets),
        };
        work.needs(device, wanted)
    }

    /// Whether every pair of a device's sets is proved dead, with none gone on at by exception.
    #[must_use]
    pub fn is_proved(&self, device: &Device) -> bool {
        let checks = crate::isolation::checks_of(&device.sets);
        let work = self.bays.get(&device.bay);
        !checks.is_empty()
            && work.is_some_and(|work| checks.iter().all(|check| work.proves(device, check)))
    }

    /// The pairs still to be read at a device in its open bay.
    #[must_use]
    pub fn unread(&self, device: &Device) -> Vec<Check> {
        let none = BayWork::default();
        let work = self.bays.get(&device.bay).unwrap_or(&none);
        let mut checks = crate::isolation::checks_of(&device.sets);
        checks.retain(|check| !work.has_read(device, check) && !work.is_excepted(device, check));
        checks
    }
}

impl BayWork {
    fn needs(&self, device: &Device, wanted: Vec<Check>) -> Option<Needs> {
        let mut missing = wanted
            .into_iter()
            .filter(|check| !self.proves(device, check) && !self.is_excepted(device, check));
        let next = missing.next()?;
        let supply = next.supply;
        let left = missing.count() + 1;
        let read = self.has_read(device, &next);
        let latest = self
            .proofs
            .iter()
            .rev()
            .find(|proof| proof.supply == supply);
        Some(match latest {
            Some(proof) if proof.is_spoiled() => Needs::FoundLive(device.id),
            Some(Proof {
                lapsed: Some(lapse),
                ..
            }) => Needs::Lapsed(*lapse),
            Some(proof) if read && proof.after.is_none() => Needs::LiveAgain(supply),
            _ => Needs::Pairs {
                device: device.id,
                left,
                next,
            },
        })
    }

    fn proves(&self, device: &Device, check: &Check) -> bool {
        self.proofs
            .iter()
            .any(|proof| proof.proves(device.id, check))
    }

    /// Whether a pair was read dead in a proof that still counts, finished or not.
    fn has_read(&self, device: &Device, check: &Check) -> bool {
        let counts = |proof: &&Proof| proof.lapsed.is_none() && !proof.is_spoiled();
        let reads = self
            .proofs
            .iter()
            .filter(counts)
            .flat_map(|proof| &proof.reads);
        reads
            .into_iter()
            .any(|read| read.device == device.id && read.check == *check)
    }

    fn is_excepted(&self, device: &Device, check: &Check) -> bool {
        let excepted = |set: &str| {
            self.exceptions
                .iter()
                .any(|exception| exception.device == device.id && exception.set == set)
        };
        excepted(&check.set) || excepted(&check.other_set)
    }
}

impl Deciding<'_> {
    /// Sees that a point may be touched now.
    pub(super) fn unlocked(&self, walk: &WalkState, point: &Point) -> Result<(), Refusal> {
        super::at_phase(walk, Phase::AtBays)?;
        let locked = |needs| Refusal::Locked {
            point: point.id,
            needs,
        };
        if let Some(needs) = walk.needs(self.book()?, point) {
            return Err(locked(needs));
        }
        self.lapse
            .map_or(Ok(()), |lapse| Err(locked(Needs::Lapsed(lapse))))
    }

    /// The point with a name, in use, and its bay.
    pub(super) fn point(&self, id: PointId) -> Result<(&Point, BayId), Refusal> {
        let book = self.book()?;
        let found = book.point(id).filter(|point| !point.retired);
        found
            .and_then(|point| book.bay_of(point).map(|bay| (point, bay)))
            .ok_or(Refusal::NotInBook("point"))
    }

    /// The device with a name, in use.
    pub(super) fn device(&self, id: crate::ids::DeviceId) -> Result<&Device, Refusal> {
        self.book()?
            .device(id)
            .filter(|device| !device.retired)
            .ok_or(Refusal::NotInBook("device"))
    }
}

/// Sees that a proof of a kind is running in a bay.
pub(super) fn running(work: &BayWork, supply: SupplyKind) -> Result<&Proof, Refusal> {
    work.proofs
        .iter()
        .rev()
        .find(|proof| proof.supply == supply && proof.is_running())
        .ok_or(Refusal::NoProof(supply))
}
