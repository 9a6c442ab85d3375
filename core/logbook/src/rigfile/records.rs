//! What the TOML file holds, as the table of points needs it.

use super::sink::Sink;
use super::slot::Slot;
use super::{FaultKind, RecordKind};
use baywalk_domain::ids::{BayId, DeviceId, SourceId};
use baywalk_domain::rig::{Code, ConductorSet};
use std::collections::HashMap;

/// A device's name for the machine and its sets, where these could be read.
pub(super) type KnownDevice = (DeviceId, Option<Vec<ConductorSet>>);

/// The codes that stand in the files so far, whether or not their records are sound.
pub(super) struct Codes {
    taken: HashMap<Code, (String, u32)>,
    pub(super) sources: HashMap<Code, SourceId>,
    pub(super) bays: HashMap<Code, BayId>,
    pub(super) devices: HashMap<Code, KnownDevice>,
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

    fn known<'t, T>(
        &self,
        slot: Slot<'_>,
        code: &Code,
        what: RecordKind,
        found: Option<&'t T>,
    ) -> Option<&'t T> {
        if found.is_none() && self.whole {
            let found = code.clone();
            slot.fault(FaultKind::NoSuch { what, found });
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
