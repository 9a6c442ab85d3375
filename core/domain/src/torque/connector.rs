//! NEC Annex I tables I.1 to I.3: listed pressure-wire connectors.

use super::{Basis, Missing, TableId, Target};
use crate::rig::{Drive, DriveKind, FasteningKind, Landing, Role, Strands, Terminal, WireSize};
use crate::units::{Length, StatedLength};

/// Width up to which a slot counts as narrow in table I.1: 0.047 in, printed as 1.2 mm beside it.
const NARROW_MM: f64 = 1.2;
/// Length up to which a slot counts as short in table I.1: 1/4 in, printed as 6.4 mm beside it.
const SHORT_MM: f64 = 6.4;
/// Width from which a slot counts as wide in table I.2: 0.047 in.
const WIDE_MM: f64 = 0.047 * 25.4;
/// How far the millimetres printed in table I.2 are from its fractions of an inch: 7.1 for 9/32 in.
const PRINTED_MM: f64 = 0.05;
/// Diameter of a No. 10 screw in millimetres: 0.190 in.
const NUMBER_TEN_MM: f64 = 4.826;
/// How far two lengths may differ and still be the same fraction of an inch, in millimetres. A
/// metric socket differs by more.
const SAME_MM: f64 = 0.01;

/// What a table gives, or what is not known that it needs.
pub(super) type Found = Result<Target, Missing>;

/// Whether the connector tables cover the terminal: a pressure-wire connector of a power or ground
/// circuit, the conductor itself under the screw, no fine strands without ferrule, no metric screw.
pub(super) fn covers(terminal: &Terminal) -> bool {
    let fastening = &terminal.fastening;
    let kind = matches!(
        fastening.kind,
        FasteningKind::PressureScrew | FasteningKind::SplitBolt
    );
    let bare_fine = terminal.wire.strands == Strands::Fine && fastening.landing == Landing::Bare;
    let landed = matches!(fastening.landing, Landing::Bare | Landing::Ferrule);
    let metric = fastening
        .thread
        .as_ref()
        .is_some_and(crate::rig::Thread::is_metric);
    kind && landed && !bare_fine && !metric && terminal.role != Role::Control
}

/// The figure that the tables give for a terminal that they cover.
pub(super) fn connector(terminal: &Terminal) -> Found {
    let size = terminal.wire.size.as_ref();
    if terminal.fastening.kind == FasteningKind::SplitBolt {
        return by_wire(size, "hex_split_bolt");
    }
    let drive = terminal.fastening.drives.first().ok_or(Missing::Drive)?;
    match drive.kind {
        DriveKind::Hex => by_wire(size, "hex_other"),
        DriveKind::Allen | DriveKind::Square => socket(drive),
        DriveKind::Slotted => slotted(terminal, drive),
        DriveKind::Cross | DriveKind::Star => Err(Missing::DriveInTable),
    }
}

/// All that is not known and that the tables need, where they give nothing yet.
pub(super) fn gaps(terminal: &Terminal) -> Vec<Missing> {
    let drive = terminal.fastening.drives.first();
    let slotted = drive.filter(|drive| drive.kind == DriveKind::Slotted);
    let socket = drive.is_some_and(|d| matches!(d.kind, DriveKind::Allen | DriveKind::Square));
    let needs = [
        (
            slotted.is_some() && terminal.fastening.thread.is_none(),
            Missing::Thread,
        ),
        (
            slotted.is_some_and(|d| d.slot_width.is_none()),
            Missing::SlotWidth,
        ),
        (
            slotted.is_some_and(|d| d.slot_length.is_none()),
            Missing::SlotLength,
        ),
        (!socket && terminal.wire.size.is_none(), Missing::WireSize),
    ];
    let unknown = needs.into_iter().filter(|(lacks, _)| *lacks);
    let mut gaps: Vec<Missing> = connector(terminal).err().into_iter().collect();
    gaps.extend(unknown.map(|(_, missing)| missing));
    gaps.sort_unstable();
    gaps.dedup();
    gaps
}

/// Slotted heads: table I.1 from No. 10 up, table I.2 below.
fn slotted(terminal: &Terminal, drive: &Drive) -> Found {
    let thread = terminal.fastening.thread.as_ref().ok_or(Missing::Thread)?;
    let size = terminal.wire.size.as_ref();
    let width = millimetres(drive.slot_width.as_ref(), Missing::SlotWidth);
    let length = millimetres(drive.slot_length.as_ref(), Missing::SlotLength);
    if thread.diameter_mm() < NUMBER_TEN_MM - SAME_MM {
        return small_slot(size, width?, length?);
    }
    let large =
        width.is_ok_and(|w| above(w, NARROW_MM)) || length.is_ok_and(|l| above(l, SHORT_MM));
    if large {
        return by_wire(size, "slot_large");
    }
    width?;
    length?;
    by_wire(size, "slot_small").or_else(|missing| match missing {
        // No column fits: the largest torque of the conductor size.
        Missing::SizeInTable => by_wire(size, "slot_large"),
        other => Err(other),
    })
}

/// Table I.1: the row of a conductor size.
fn by_wire(size: Option<&WireSize>, column: &'static str) -> Found {
    let size = rank(size.ok_or(Missing::WireSize)?).ok_or(Missing::SizeInTable)?;
    let table = TableId::AnnexI1.table().ok_or(Missing::MakerTorque)?;
    let row = table
        .rows()
        .find(|row| {
            let end = |column| row.cell(column).and_then(ranked);
            end("smallest").is_some_and(|least| least <= size)
                && end("largest").is_some_and(|most| size <= most)
        })
        .ok_or(Missing::SizeInTable)?;
    Ok(Target {
        torque: row.torque(column).ok_or(Missing::SizeInTable)?,
        band: None,
        basis: Basis::Table {
            table: TableId::AnnexI1,
            row: match row.cell("largest") {
                Some(largest) if largest != row.name() => format!("{} to {largest}", row.name()),
                _ => row.name().to_owned(),
            },
            column,
        },
    })
}

/// Table I.2: screws smaller than No. 10; a length between rows takes the next shorter row.
fn small_slot(size: Option<&WireSize>, width_mm: f64, length_mm: f64) -> Found {
    let smallest = ranked("8 AWG").zip(rank(size.ok_or(Missing::WireSize)?));
    if smallest.is_none_or(|(most, size)| size > most) {
        return Err(Missing::SizeInTable);
    }
    let column = if width_mm < WIDE_MM - 1e-9 {
        "narrow"
    } else {
        "wide"
    };
    let table = TableId::AnnexI2.table().ok_or(Missing::MakerTorque)?;
    let row = table
        .rows()
        .filter(|row| starts_at(row.name()).is_some_and(|start| start(length_mm)))
        .last()
        .ok_or(Missing::SlotLength)?;
    Ok(Target {
        torque: row.torque(column).ok_or(Missing::DriveInTable)?,
        band: None,
        basis: Basis::Table {
            table: TableId::AnnexI2,
            row: row.name().to_owned(),
            column,
        },
    })
}

/// Whether a slot length reaches a row of table I.2.
fn starts_at(name: &str) -> Option<impl Fn(f64) -> bool> {
    let (from, strictly) = match (name.strip_prefix("under "), name.strip_prefix("over ")) {
        (Some(_), _) => (0.0, false),
        (_, Some(text)) => (StatedLength::parse(text).ok()?.length().millimetres(), true),
        _ => (
            StatedLength::parse(name).ok()?.length().millimetres(),
            false,
        ),
    };
    Some(move |length: f64| {
        if strictly {
            length > from + PRINTED_MM
        } else {
            length >= from - PRINTED_MM
        }
    })
}

/// Table I.3: sockets by their size across flats.
fn socket(drive: &Drive) -> Found {
    let across = millimetres(drive.across.as_ref(), Missing::SocketSize)?;
    let table = TableId::AnnexI3.table().ok_or(Missing::MakerTorque)?;
    let row = table
        .rows()
        .find(|row| {
            StatedLength::parse(row.name())
                .is_ok_and(|listed| (listed.length().millimetres() - across).abs() < SAME_MM)
        })
        .ok_or(Missing::DriveInTable)?;
    Ok(Target {
        torque: row.torque("torque").ok_or(Missing::DriveInTable)?,
        band: None,
        basis: Basis::Table {
            table: TableId::AnnexI3,
            row: row.name().to_owned(),
            column: "torque",
        },
    })
}

fn millimetres(length: Option<&StatedLength>, missing: Missing) -> Result<f64, Missing> {
    length
        .map(StatedLength::length)
        .map(Length::millimetres)
        .ok_or(missing)
}

/// Whether a length is above a limit by more than the noise of conversion.
fn above(length_mm: f64, limit_mm: f64) -> bool {
    length_mm > limit_mm + 1e-9
}

/// Orders American sizes by thickness: gauges count down, then circular mils count up.
fn rank(size: &WireSize) -> Option<i32> {
    match size {
        WireSize::Awg(gauge) => Some(-i32::from(*gauge)),
        WireSize::Kcmil(area) => Some(i32::from(*area)),
        WireSize::SquareMillimetres(_) => None,
    }
}

fn ranked(text: &str) -> Option<i32> {
    rank(&WireSize::parse(text).ok()?)
}
