//! Which sources reach which conductors, with some of the sources taken away.

use super::wiring::{Entry, Way, Wiring};
use crate::ids::{BayId, DeviceId, SourceId};
use crate::rig::{Book, Isolation, Opening, Source};

/// Whether devices that pass power one way are taken as built, or as failed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Passing {
    /// A transfer switch, an inverter, a converter, a controller pass as they should.
    AsBuilt,
    /// They pass both ways: a welded contact, a shorted part.
    Failed,
}

/// The sources that reach each set of a rig.
#[derive(Debug, Clone, PartialEq)]
pub struct Reach<'a> {
    book: &'a Book,
    sets: Vec<(DeviceId, &'a str, Vec<SourceId>)>,
}

impl<'a> Reach<'a> {
    /// The sources that reach a set, in the order of the book.
    #[must_use]
    pub fn set(&self, device: DeviceId, set: &str) -> &[SourceId] {
        let found = self
            .sets
            .iter()
            .find(|(of, name, _)| (*of, *name) == (device, set));
        found.map_or(&[], |(_, _, sources)| sources)
    }

    /// The sources that reach any set of a device.
    #[must_use]
    pub fn device(&self, device: DeviceId) -> Vec<SourceId> {
        self.any(|of| of == device)
    }

    /// The sources that reach any conductor in a bay, also by ways that its record adds.
    #[must_use]
    pub fn bay(&self, bay: BayId) -> Vec<SourceId> {
        let here = |of| self.book.device(of).is_some_and(|device| device.bay == bay);
        self.any(here)
    }

    /// The bays that a source reaches, nose to tail.
    #[must_use]
    pub fn bays_of(&self, source: SourceId) -> Vec<BayId> {
        let bays = self.book.bays_in_order().into_iter().map(|bay| bay.id);
        bays.filter(|bay| self.bay(*bay).contains(&source))
            .collect()
    }

    /// The sets that a source reaches.
    #[must_use]
    pub fn sets_of(&self, source: SourceId) -> Vec<(DeviceId, &'a str)> {
        let reached = self
            .sets
            .iter()
            .filter(|(_, _, sources)| sources.contains(&source));
        reached.map(|(device, set, _)| (*device, *set)).collect()
    }

    /// The sources that reach a set which a source reaches too, such as the panels that charge a
    /// battery; the source itself is left out.
    #[must_use]
    pub fn meeting(&self, source: SourceId) -> Vec<SourceId> {
        let shared = |other: &SourceId| {
            let mut sets = self.sets.iter().map(|(_, _, sources)| sources);
            *other != source && sets.any(|of| of.contains(&source) && of.contains(other))
        };
        let all = self.book.live_sources().map(|source| source.id);
        all.filter(shared).collect()
    }

    fn any(&self, wanted: impl Fn(DeviceId) -> bool) -> Vec<SourceId> {
        let reaches = |source: &SourceId| {
            let mut sets = self.sets.iter().filter(|(of, _, _)| wanted(*of));
            sets.any(|(_, _, sources)| sources.contains(source))
        };
        let all = self.book.live_sources().map(|source| source.id);
        all.filter(reaches).collect()
    }
}

impl<'a> Wiring<'a> {
    /// Which sources still reach each set once some are taken away as their records say.
    ///
    /// A battery and panels in light stay live at what is wired to them. A switch that opens parts
    /// the sets of its device and nothing else, so that what is wired around it stays live; a lead
    /// off or a plug pulled, or a switch that is no device of the rig, parts all that lies behind.
    /// Every other source is gone whole. One that can't be taken away stays.
    #[must_use]
    pub fn reach(&self, passing: Passing, is_away: impl Fn(&Source) -> bool) -> Reach<'a> {
        let away = |entry: &&Entry<'a>| {
            entry.source.isolation != Isolation::Never && is_away(entry.source)
        };
        let open: Vec<bool> = (self.ways.iter())
            .map(|way| {
                self.sources
                    .iter()
                    .filter(away)
                    .any(|entry| self.opens(entry, way))
            })
            .collect();
        let mut sets: Vec<_> = (self.places.iter())
            .map(|place| (place.device.id, place.set, Vec::new()))
            .collect();
        for entry in &self.sources {
            let live = self.spread(start(entry, away(&entry)), passing, &open);
            for ((_, _, sources), live) in sets.iter_mut().zip(live) {
                if live {
                    sources.push(entry.source.id);
                }
            }
        }
        Reach {
            book: self.book,
            sets,
        }
    }

    /// Whether taking a source away opens a way, for all that may come along it.
    fn opens(&self, entry: &Entry<'a>, way: &Way) -> bool {
        let opening = entry.source.opens.as_ref();
        let parted = opening.is_some_and(|opening| {
            way.within && [way.from, way.to].iter().any(|at| self.is_at(*at, opening))
        });
        let bare = opening.is_none() || entry.source.isolation != Isolation::Switch;
        let own = |at: usize| entry.wired.contains(&at);
        let at_the_posts = entry.source.kind.is_lasting() && own(way.from) != own(way.to);
        parted || bare && at_the_posts
    }

    fn is_at(&self, at: usize, opening: &Opening) -> bool {
        self.places.get(at).is_some_and(|place| {
            let set = opening.set.as_deref().is_none_or(|set| set == place.set);
            place.device.code == opening.device && set
        })
    }

    /// Every place that power reaches from some.
    fn spread(&self, start: Vec<usize>, passing: Passing, open: &[bool]) -> Vec<bool> {
        let mut live = vec![false; self.places.len()];
        let mut next = start;
        while let Some(at) = next.pop() {
            match live.get_mut(at) {
                Some(seen) if !*seen => *seen = true,
                _ => continue,
            }
            let closed = self.ways.iter().zip(open).filter(|(_, open)| !**open);
            next.extend(closed.filter_map(|(way, _)| {
                let both = way.both || passing == Passing::Failed;
                match at {
                    _ if at == way.from => Some(way.to),
                    _ if at == way.to && both => Some(way.from),
                    _ => None,
                }
            }));
        }
        live
    }
}

/// Where a source is live by itself.
fn start(entry: &Entry<'_>, away: bool) -> Vec<usize> {
    let lasts = !away || entry.source.kind.is_lasting();
    let mut start = entry.posts.clone();
    if lasts {
        start.extend(&entry.wired);
    }
    if !away {
        start.extend(&entry.taken);
    }
    start
}
