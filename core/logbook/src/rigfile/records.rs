//! What the TOML file holds, as the table of points needs it.

use super::sink::Sink;
use super::slot::Slot;
use super::{FaultKind, RecordKind};
use baywalk_domain::ids::{BayId, DeviceId, SourceId};
use baywalk_domain::rig::{Code, ConductorSet, Feed, Opening};
use std::collections::HashMap;

/// A device's name for the machine and its sets, where these could be read.
pub(super) type KnownDevice = (DeviceId, Option<Vec<ConductorSet>>);

/// The codes that stand in the files so far, whether or not their records are sound.
pub(super) struct Codes {
    taken: HashMap<Code, (String, u32)>,
    pub(super) sources: HashMap<Code, SourceId>,
    pub(super) bays: HashMap<Code, BayId>,
    pub(super) devices: HashMap<Code, KnownDevice>,
    /// What is wired to something, or opens it, by where that stands: it may come later in the file.
    wired: Vec<(usize, &'static str, Feed)>,
    /// Whether a code that is not there is a fault; not so where the file could not be read whole.
    pub(super) whole: bool,
}

impl Codes {
    /// No codes yet.
    pub(super) fn new(whole: bool) -> Self {
        Self {
            taken: HashMap::new(),
            sources: HashMap::new(),
            bays: HashMap::new(),
            devices: HashMap::new(),
            wired: Vec::new(),
            whole,
        }
    }

    /// Takes the code of a record, and notes a fault where another has it.
    pub(super) fn take(&mut self, slot: Slot<'_>) -> Option<Code> {
        let code = slot.code()?;
        if let Some((first_file, first_line)) = self.taken.get(&code) {
            slot.fault(FaultKind::Taken {
                code,
                first_file: first_file.clone(),
                first_line: *first_line,
            });
            return None;
        }
        let place = (slot.sink.name().to_owned(), slot.sink.line(slot.offset));
        self.taken.insert(code.clone(), place);
        Some(code)
    }

    /// The source that a slot names.
    pub(super) fn source(&self, slot: Slot<'_>) -> Option<(Code, SourceId)> {
        let code = slot.code()?;
        let id = self.known(slot, &code, RecordKind::Source, self.sources.get(&code))?;
        Some((code, *id))
    }

    /// The bay that a slot names.
    pub(super) fn bay(&self, slot: Slot<'_>) -> Option<BayId> {
        let code = slot.code()?;
        self.known(slot, &code, RecordKind::Bay, self.bays.get(&code))
            .copied()
    }

    /// The device that a slot names, with its sets.
    pub(super) fn device(&self, slot: Slot<'_>) -> Option<&KnownDevice> {
        let code = slot.code()?;
        self.known(slot, &code, RecordKind::Device, self.devices.get(&code))
    }

    /// What a slot says that a set is wired to; whether it is there is seen at the end.
    pub(super) fn feed(&mut self, slot: Slot<'_>) -> Option<Feed> {
        let feed = slot.parse(Feed::parse)?;
        self.wired.push((slot.offset, "from", feed.clone()));
        Some(feed)
    }

    /// What a slot says that opens; whether it is there is seen at the end.
    pub(super) fn opening(&mut self, slot: Slot<'_>) -> Option<Opening> {
        let opening = slot.parse(Opening::parse)?;
        let Opening { device, set } = opening.clone();
        let set = set.unwrap_or_default();
        let named = Feed::Set { device, set };
        self.wired.push((slot.offset, "opens", named));
        Some(opening)
    }

    /// Sees that all that is wired to something, or opens it, names what is there.
    pub(super) fn see_wiring(&self, sink: &Sink<'_>) {
        for (offset, field, feed) in self.wired.iter().filter(|_| self.whole) {
            let fault = match feed {
                Feed::Source(code) if self.sources.contains_key(code) => None,
                Feed::Source(code) => Some(no_such(RecordKind::Source, code)),
                Feed::Set { device, set } => self.no_set(device, set),
            };
            if let Some(fault) = fault {
                sink.fault(*offset, field, fault);
            }
        }
    }

    /// Why a device has no such set; `None` where it has, where it could not be read, and where no
    /// set is named.
    fn no_set(&self, device: &Code, set: &str) -> Option<FaultKind> {
        let Some((_, sets)) = self.devices.get(device) else {
            return Some(no_such(RecordKind::Device, device));
        };
        let sets = sets.as_ref()?;
        let there = set.is_empty() || sets.iter().any(|known| known.name == set);
        let expected = || sets.iter().map(|known| known.name.clone()).collect();
        (!there).then(|| FaultKind::NoSuchSet {
            found: set.to_owned(),
            expected: expected(),
        })
    }

    fn known<'t, T>(
        &self,
        slot: Slot<'_>,
        code: &Code,
        what: RecordKind,
        found: Option<&'t T>,
    ) -> Option<&'t T> {
        if found.is_none() && self.whole {
            slot.fault(no_such(what, code));
        }
        found
    }
}

/// Notes where a list has more records than are read.
pub(super) fn limit(found: usize, most: usize, what: super::Limit, field: &str, sink: &Sink<'_>) {
    if found > most {
        sink.fault(0, field, FaultKind::TooMany { what, found, most });
    }
}

fn no_such(what: RecordKind, code: &Code) -> FaultKind {
    let found = code.clone();
    FaultKind::NoSuch { what, found }
}
