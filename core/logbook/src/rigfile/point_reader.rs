//! Reads one row of the table: a terminal or a look.

use super::FaultKind;
use super::drives;
use super::records::{Codes, KnownDevice};
use super::row::{Row, TERMINAL};
use super::slot::Slot;
use baywalk_domain::coded::{Coded, UnknownCode};
use baywalk_domain::ids::{ActId, PointId};
use baywalk_domain::rig::{
    Conductor, Fastening, Landing, Locking, MakerTorque, Material, Nut, Point, PointKind, Recheck,
    Strands, Terminal, Thread, ThreadState, Washer, Wire, WireSize,
};

/// Reads a row; what can't be read is noted in its sink.
pub(super) fn read(row: &Row<'_>, act: ActId, codes: &mut Codes) -> Option<Point> {
    let code = row.need("code").and_then(|slot| codes.take(slot));
    let name = row.need("name");
    let device = row.need("device").and_then(|slot| codes.device(slot));
    let kind = kind(row, device);
    let retired = row.cell("retired").and_then(|slot| slot.yes_no());
    let code = code?;
    Some(Point {
        id: PointId::made_by(act, &format!("point:{code}")),
        code,
        device: device?.0,
        name: name?.owned(),
        place: row.words("place"),
        kind: kind?,
        priority: row.cell("priority").and_then(|slot| slot.coded()),
        note: row.words("note"),
        retired: retired.unwrap_or(false),
    })
}

fn kind(row: &Row<'_>, device: Option<&KnownDevice>) -> Option<PointKind> {
    let Some(look) = row.cell("look") else {
        let terminal = terminal(row, device)?;
        return Some(PointKind::Terminal(Box::new(terminal)));
    };
    for header in TERMINAL {
        if let Some(cell) = row.cell(header) {
            cell.fault(FaultKind::Clashes { other: "look" });
        }
    }
    look.coded().map(PointKind::Look)
}

fn terminal(row: &Row<'_>, device: Option<&KnownDevice>) -> Option<Terminal> {
    let (set, conductor) = landing_place(row, device);
    let fastening = fastening(row);
    let role = row.need("role").and_then(|slot| slot.coded());
    let wire = wire(row);
    let landed = row.cell("landed").map(|slot| slot.whole(0, 255));
    let allowed = row.cell("allowed").map(|slot| slot.whole(1, 255));
    let range = row.cell("range").and_then(|slot| slot.parse(range));
    let current = row.cell("current").and_then(|slot| slot.stated());
    let thread_state = listed(row, "thread_state", ThreadState::Dry);
    let maker = maker(row);
    let terminal = Terminal {
        set,
        conductor,
        role: role?,
        fastening: fastening?,
        wire,
        landed: landed.unwrap_or(Some(1))?,
        allowed: allowed.unwrap_or(Some(1))?,
        range,
        current,
        thread_state,
        maker,
    };
    let checked = terminal.checked();
    checked
        .map_err(|fault| row.fault("torque", fault.into()))
        .ok()
}

/// Reads the set of the device and the conductor of the set that lands here.
fn landing_place(
    row: &Row<'_>,
    device: Option<&KnownDevice>,
) -> (Option<String>, Option<Conductor>) {
    let (set, conductor) = (row.cell("set"), row.cell("conductor"));
    match (set, conductor) {
        (Some(set), None) => set.fault(FaultKind::Needs { other: "conductor" }),
        (None, Some(conductor)) => conductor.fault(FaultKind::Needs { other: "set" }),
        _ => {}
    }
    let landed = conductor.and_then(|slot| slot.coded());
    if let (Some(set), Some((_, Some(sets)))) = (set, device) {
        match sets.iter().find(|known| known.name == set.text) {
            Some(known) => of_set(conductor, landed, known.system.conductors()),
            None => set.fault(FaultKind::NoSuchSet {
                found: set.owned(),
                expected: sets.iter().map(|known| known.name.clone()).collect(),
            }),
        }
    }
    (set.map(|slot| slot.owned()), landed)
}

/// Notes where a conductor is none of the set's.
fn of_set(slot: Option<Slot<'_>>, landed: Option<Conductor>, of_set: &[Conductor]) {
    let Some((slot, landed)) = slot.zip(landed) else {
        return;
    };
    if !of_set.contains(&landed) {
        slot.fault(UnknownCode {
            list: Conductor::NAME,
            found: slot.owned(),
            expected: of_set.iter().map(|member| member.code()).collect(),
        });
    }
}

fn fastening(row: &Row<'_>) -> Option<Fastening> {
    let kind = row.cell("fastening");
    if kind.is_none() {
        let expected = &["fastening", "look"];
        row.fault("fastening", FaultKind::MissingOneOf { expected });
    }
    let thread = row
        .cell("thread")
        .and_then(|slot| slot.parse(Thread::parse));
    let drives = row.cell("drives").and_then(|slot| slot.parse(drives::read));
    let landing = listed(row, "landing", Landing::Bare);
    let nut = listed(row, "nut", Nut::None);
    let washer = listed(row, "washer", Washer::None);
    let locking = listed(row, "locking", Locking::None);
    let grade = row.cell("grade").and_then(|slot| slot.coded());
    let metal = row.cell("metal_to_metal").and_then(|slot| slot.yes_no());
    Some(Fastening {
        kind: kind?.coded()?,
        thread,
        drives: drives.unwrap_or_default(),
        landing,
        nut,
        washer,
        locking,
        grade,
        metal_to_metal: metal.unwrap_or(false),
    })
}

fn wire(row: &Row<'_>) -> Wire {
    Wire {
        size: row
            .cell("wire")
            .and_then(|slot| slot.parse(WireSize::parse)),
        material: listed(row, "material", Material::Copper),
        strands: listed(row, "strands", Strands::Stranded),
    }
}

fn maker(row: &Row<'_>) -> Option<MakerTorque> {
    let Some(torque) = row.cell("torque") else {
        for header in ["torque_basis", "torque_source", "recheck"] {
            if let Some(cell) = row.cell(header) {
                cell.fault(FaultKind::Needs { other: "torque" });
            }
        }
        return None;
    };
    let torque = torque.stated();
    let basis = row.need("torque_basis").and_then(|slot| slot.coded());
    let recheck = listed(row, "recheck", Recheck::Unsaid);
    Some(MakerTorque {
        torque: torque?,
        basis: basis?,
        source: row.words("torque_source"),
        recheck,
    })
}

/// Reads a word of a closed list; an empty cell stands for one of them.
fn listed<T: Coded>(row: &Row<'_>, header: &'static str, empty: T) -> T {
    let found = row.cell(header).and_then(|slot| slot.coded());
    found.unwrap_or(empty)
}

/// Reads the smallest and the largest size of a terminal: `14 AWG to 6 AWG`.
fn range(text: &str) -> Result<(WireSize, WireSize), FaultKind> {
    let (least, most) = text.split_once(" to ").ok_or_else(|| FaultKind::Range {
        found: text.to_owned(),
    })?;
    Ok((WireSize::parse(least)?, WireSize::parse(most)?))
}
