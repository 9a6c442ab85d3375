//! How much of a rig hangs behind each set of conductors.

use super::Wiring;
use super::wiring::Place;
use crate::ids::DeviceId;
use crate::rig::{SetSystem, SourceKind};

/// What hangs behind a set.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Behind<'a> {
    /// The device.
    pub device: DeviceId,
    /// The set of it.
    pub set: &'a str,
    /// The share, 0 to 1, of the rig's terminals that get their power through the set.
    pub share: f64,
    /// Whether it carries AC of shore and of a generator alike, or joins it to the other.
    pub every_source: bool,
}

impl<'a> Wiring<'a> {
    /// What hangs behind each set, by the ways that are noted. What is not noted counts as nothing.
    #[must_use]
    pub fn all_behind(&self) -> Vec<Behind<'a>> {
        let terminals: Vec<u32> = self
            .places
            .iter()
            .map(|place| self.terminals(place))
            .collect();
        let all: u32 = terminals.iter().sum();
        let share = |at: usize| {
            let behind = self.behind(at).into_iter().zip(&terminals);
            let reached: u32 = behind.filter(|(is, _)| *is).map(|(_, count)| count).sum();
            f64::from(reached) / f64::from(all.max(1))
        };
        let joins = self.joins_sources();
        let places = self.places.iter().enumerate();
        places
            .map(|(at, place)| Behind {
                device: place.device.id,
                set: place.set,
                share: share(at),
                every_source: joins.get(at).copied().unwrap_or(false),
            })
            .collect()
    }

    /// Which places carry AC of shore and of a generator alike, or join it to the other in their
    /// device, as the inputs of a transfer switch do.
    fn joins_sources(&self) -> Vec<bool> {
        let feeding = self.feeding();
        let joined = |place: &Place<'a>| {
            let system = place.device.set(place.set).map(|set| set.system);
            let ac = matches!(system, Some(SetSystem::SplitPhase | SetSystem::SinglePhase));
            let sources = feeding.set(place.device.id, place.set).iter();
            let kinds: Vec<SourceKind> = sources
                .filter_map(|source| Some(self.book.source(*source)?.kind))
                .collect();
            ac && kinds.contains(&SourceKind::Shore) && kinds.contains(&SourceKind::Generator)
        };
        let joined: Vec<bool> = self.places.iter().map(joined).collect();
        let into = |at: usize| {
            let mut ways = self.ways.iter().filter(|way| way.within && way.from == at);
            ways.any(|way| joined.get(way.to) == Some(&true))
        };
        (0..joined.len())
            .map(|at| joined.get(at) == Some(&true) || into(at))
            .collect()
    }

    fn terminals(&self, place: &Place<'a>) -> u32 {
        let here = |point: &&crate::rig::Point| {
            let set = point
                .terminal()
                .and_then(|terminal| terminal.set.as_deref());
            !point.retired && point.device == place.device.id && set == Some(place.set)
        };
        u32::try_from(self.book.points.iter().filter(here).count()).unwrap_or(u32::MAX)
    }

    /// Which places get their power through one, itself left out.
    fn behind(&self, from: usize) -> Vec<bool> {
        let mut seen = vec![false; self.places.len()];
        let mut next = vec![from];
        while let Some(at) = next.pop() {
            for way in self
                .ways
                .iter()
                .filter(|way| way.from == at && way.to != from)
            {
                if let Some(seen) = seen.get_mut(way.to).filter(|seen| !**seen) {
                    *seen = true;
                    next.push(way.to);
                }
            }
        }
        seen
    }
}
