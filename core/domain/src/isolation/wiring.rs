//! What feeds what: the sets of a rig as places, joined by wires and through devices.

use super::reach::{Passing, Reach};
use crate::rig::{Book, Code, Device, DeviceKind, Feed, SetSystem, Source};

/// The wiring of a rig, read from its book.
///
/// A wire between two devices carries both ways. Within a device, a transfer switch, an inverter, a
/// converter, a solar controller and a DC link pass power only as their sets are noted; everything
/// else passes both ways. What nobody noted counts as connected: a set without wiring is fed by
/// every source that its bay names, or by all; a source that is named nowhere reaches every set.
///
/// # Example
/// ```
/// use baywalk_domain::isolation::Wiring;
/// # use baywalk_domain::rig::{Book, Rig, RigKind, ServiceKind, YearlyRule};
/// # let rule = YearlyRule { months: 12, distance: None };
/// # let (kind, service) = (RigKind::Trailer, ServiceKind::None);
/// # let (name, note) = ("Wren".to_owned(), String::new());
/// # let id = "0190f0c4-0000-7000-8000-000000000001".parse()?;
/// let book = Book::new(Rig { id, name, kind, service, rule, note });
/// let nowhere = "0190f0c4-0000-7000-8000-000000000002".parse()?;
/// assert!(Wiring::of(&book).feeding().bays_of(nowhere).is_empty());
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Debug)]
pub struct Wiring<'a> {
    pub(super) book: &'a Book,
    pub(super) places: Vec<Place<'a>>,
    pub(super) ways: Vec<Way>,
    pub(super) sources: Vec<Entry<'a>>,
}

/// A set of a device.
#[derive(Debug)]
pub(super) struct Place<'a> {
    pub(super) device: &'a Device,
    pub(super) set: &'a str,
    /// Whether it carries power at all; bonds do not.
    pub(super) carries: bool,
}

/// What joins two places.
#[derive(Debug)]
pub(super) struct Way {
    pub(super) from: usize,
    pub(super) to: usize,
    /// Whether power passes both ways as the device is built.
    pub(super) both: bool,
    /// Whether it lies within a device, which may be opened.
    pub(super) within: bool,
}

/// Where a source comes in.
#[derive(Debug)]
pub(super) struct Entry<'a> {
    pub(super) source: &'a Source,
    /// Places that are wired to it.
    pub(super) wired: Vec<usize>,
    /// Places that are taken to be fed by it.
    pub(super) taken: Vec<usize>,
    /// Places from which no switch keeps it.
    pub(super) posts: Vec<usize>,
}

impl<'a> Wiring<'a> {
    /// Reads the wiring of a book; records that are retired are not there.
    #[must_use]
    pub fn of(book: &'a Book) -> Self {
        let places = places(book);
        let ways = ways(&places);
        let mut wiring = Self {
            book,
            sources: Vec::new(),
            places,
            ways,
        };
        wiring.sources = book.live_sources().map(|s| wiring.entry(s)).collect();
        wiring
    }

    /// Which sources feed each set while everything is closed.
    #[must_use]
    pub fn feeding(&self) -> Reach<'a> {
        self.reach(Passing::AsBuilt, |_| false)
    }

    /// Which sources still reach each set once every one is taken away as its record says: posts,
    /// the panels' side of their breakers, and what is wired around a switch.
    #[must_use]
    pub fn staying(&self) -> Reach<'a> {
        self.reach(Passing::AsBuilt, |_| true)
    }

    fn entry(&self, source: &'a Source) -> Entry<'a> {
        let all = || self.places.iter().enumerate();
        let at = |fits: &dyn Fn(&Place<'a>) -> bool| -> Vec<usize> {
            let found = all().filter(|(_, place)| fits(place));
            found.map(|(at, _)| at).collect()
        };
        let named = |place: &Place<'a>| {
            let bay = self.book.bay(place.device.bay);
            place.carries && bay.is_some_and(|bay| bay.fed_by.contains(&source.id))
        };
        let wired = at(&|place| self.feeds(place).any(|feed| is_source(feed, &source.code)));
        let nowhere = wired.is_empty() && !all().any(|(_, place)| named(place));
        let taken = at(&|place| {
            named(place) || place.carries && (nowhere || self.is_fed_by_anything(place))
        });
        let posts = at(&|place| place.carries && place.device.unswitched.contains(&source.code));
        Entry {
            source,
            wired,
            taken,
            posts,
        }
    }

    fn feeds<'p>(&self, place: &'p Place<'a>) -> impl Iterator<Item = &'a Feed> + use<'a, 'p> {
        let set = place.device.set(place.set);
        set.into_iter().flat_map(|set| &set.from)
    }

    /// Whether nobody noted what feeds a set, neither for itself nor for its bay.
    fn is_fed_by_anything(&self, place: &Place<'a>) -> bool {
        let bay = self.book.bay(place.device.bay);
        let known = self.feeds(place).any(|feed| match feed {
            Feed::Source(code) => self.book.live_sources().any(|s| s.code == *code),
            Feed::Set { device, set } => find(&self.places, device, set).is_some(),
        });
        !known && bay.is_none_or(|bay| bay.fed_by.is_empty())
    }
}

fn is_source(feed: &Feed, code: &Code) -> bool {
    matches!(feed, Feed::Source(source) if source == code)
}

fn places(book: &Book) -> Vec<Place<'_>> {
    let in_use =
        |device: &&Device| !device.retired && book.bay(device.bay).is_some_and(|bay| !bay.retired);
    let devices = book.devices.iter().filter(in_use);
    devices
        .flat_map(|device| {
            device.sets.iter().map(move |set| Place {
                device,
                set: &set.name,
                carries: set.system != SetSystem::Bond,
            })
        })
        .collect()
}

fn ways(places: &[Place<'_>]) -> Vec<Way> {
    let mut ways = Vec::new();
    for (to, place) in places.iter().enumerate() {
        let set = place.device.set(place.set);
        for feed in set.into_iter().flat_map(|set| &set.from) {
            let Feed::Set { device, set } = feed else {
                continue;
            };
            if let Some(from) = find(places, device, set) {
                let within = place.device.code == *device;
                ways.push(Way {
                    from,
                    to,
                    both: !within || !is_one_way(place.device.kind),
                    within,
                });
            }
        }
    }
    ways
}

fn find(places: &[Place<'_>], device: &Code, set: &str) -> Option<usize> {
    let same = |place: &Place<'_>| place.device.code == *device && place.set == set;
    places.iter().position(same)
}

/// Devices that choose or change: power passes them as they are built, not the other way.
const fn is_one_way(kind: DeviceKind) -> bool {
    matches!(
        kind,
        DeviceKind::TransferSwitch
            | DeviceKind::Inverter
            | DeviceKind::Converter
            | DeviceKind::SolarController
            | DeviceKind::DcLink
    )
}
