//! Reads the devices with their sets, and the tools.

use super::FaultKind;
use super::entry::Entry;
use super::records::Codes;
use baywalk_domain::ids::{ActId, DeviceId, ToolId};
use baywalk_domain::rig::{Code, ConductorSet, Device, Tool};

pub(super) const DEVICE: &[&str] = &[
    "code",
    "name",
    "bay",
    "kind",
    "sets",
    "unswitched",
    "retired",
];
const SET: &[&str] = &["name", "system", "from"];
pub(super) const TOOL: &[&str] = &[
    "code",
    "name",
    "kind",
    "least",
    "most",
    "step",
    "calibrated",
    "cycles",
    "retired",
];

/// Reads a device; what can't be read is noted in its sink.
pub(super) fn device(entry: Entry<'_>, act: ActId, codes: &mut Codes) -> Option<Device> {
    let code = entry.need("code").and_then(|slot| codes.take(slot));
    let id = |code: &Code| DeviceId::made_by(act, &format!("device:{code}"));
    let sets = sets(entry, codes);
    if let Some(code) = &code {
        let known = (id(code), sets.clone());
        codes.devices.insert(code.clone(), known);
    }
    let name = entry.need("name");
    let bay = entry.need("bay").and_then(|slot| codes.bay(slot));
    let kind = entry.need("kind").and_then(|slot| slot.coded());
    let posts = entry.texts("unswitched");
    let unswitched = posts.into_iter().filter_map(|slot| codes.source(slot));
    let unswitched = unswitched.map(|(code, _)| code).collect();
    let retired = entry.flag("retired");
    let code = code?;
    Some(Device {
        id: id(&code),
        code,
        bay: bay?,
        name: name?.owned(),
        kind: kind?,
        sets: sets?,
        unswitched,
        retired,
    })
}

/// The sets of a device; `None` where one of them can't be read.
fn sets(entry: Entry<'_>, codes: &mut Codes) -> Option<Vec<ConductorSet>> {
    let mut sets: Vec<ConductorSet> = Vec::new();
    let mut sound = true;
    for entry in entry.tables("sets", SET) {
        let name = entry.need("name");
        let system = entry.need("system").and_then(|slot| slot.coded());
        let feeds = entry.texts("from").into_iter();
        let from = feeds.filter_map(|slot| codes.feed(slot)).collect();
        let (Some(name), Some(system)) = (name, system) else {
            sound = false;
            continue;
        };
        let found = name.owned();
        if sets.iter().any(|set| set.name == found) {
            name.fault(FaultKind::RepeatedSet { found });
        } else {
            sets.push(ConductorSet {
                name: found,
                system,
                from,
            });
        }
    }
    sound.then_some(sets)
}

/// Reads a tool; what can't be read is noted in its sink.
pub(super) fn tool(entry: Entry<'_>, act: ActId, codes: &mut Codes) -> Option<Tool> {
    let code = entry.need("code").and_then(|slot| codes.take(slot));
    let name = entry.need("name");
    let kind = entry.need("kind").and_then(|slot| slot.coded());
    let least = entry.need("least").and_then(|slot| slot.stated());
    let most = entry.need("most").and_then(|slot| slot.stated());
    let step = entry.need("step").and_then(|slot| slot.stated());
    let calibrated = entry.date("calibrated");
    let cycles = entry.count("cycles");
    let retired = entry.flag("retired");
    let code = code?;
    Some(Tool {
        id: ToolId::made_by(act, &format!("tool:{code}")),
        code,
        name: name?.owned(),
        kind: kind?,
        least: least?,
        most: most?,
        step: step?,
        calibrated,
        cycles: cycles?,
        retired,
    })
}
