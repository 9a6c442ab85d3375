//! Published tables of studs, bolts and metric terminal screws, each kept apart by its source.

use super::bolt::alike;
use super::{Basis, Missing, TableId, Target, bolt, pitch_mm};
use crate::published::Standing;
use crate::rig::{
    BoltGrade, Fastening, FasteningKind, Nut, Role, Terminal, Thread, ThreadState, Washer,
};

/// Which column of which table speaks of a grade.
const BY_GRADE: &[(BoltGrade, TableId, &str)] = &[
    (BoltGrade::Sae2, TableId::NetaSteel, "sae2"),
    (BoltGrade::Sae5, TableId::NetaSteel, "sae5"),
    (BoltGrade::Sae8, TableId::NetaSteel, "sae8"),
    (BoltGrade::SiliconBronze, TableId::NetaOther, "bronze_dry"),
    (
        BoltGrade::SiliconBronze,
        TableId::NemaCc1,
        "bronze_steel_stainless",
    ),
    (BoltGrade::A270, TableId::NetaOther, "stainless"),
    (BoltGrade::A270, TableId::NemaCc1, "bronze_steel_stainless"),
    (BoltGrade::Sae5, TableId::SwitchMaker, "sae5"),
    (BoltGrade::Sae2, TableId::TelecomMaker, "wire"),
];

/// Whether a bolt chart may speak of the terminal at all: a stud or bolt, metal on metal, dry,
/// with a plain nut and no spring washer, in a power or ground circuit.
pub(super) fn covers(terminal: &Terminal) -> bool {
    let fastening = &terminal.fastening;
    matches!(fastening.kind, FasteningKind::Stud | FasteningKind::Bolt)
        && fastening.metal_to_metal
        && terminal.thread_state == ThreadState::Dry
        && matches!(fastening.nut, Nut::None | Nut::Plain | Nut::OverJam)
        && fastening.washer != Washer::Spring
        && terminal.role != Role::Control
}

/// What is not known that a bolt chart needs.
pub(super) fn gaps(fastening: &Fastening) -> Vec<Missing> {
    let mut gaps = Vec::new();
    match &fastening.thread {
        None => gaps.push(Missing::Thread),
        Some(thread) if pitch_mm(thread).is_none() => gaps.push(Missing::Pitch),
        Some(_) => {}
    }
    if fastening.grade.is_none() {
        gaps.push(Missing::Grade);
    }
    gaps
}

/// What the tables of a standing say of a stud or bolt, each by itself.
pub(super) fn published(fastening: &Fastening, standing: Standing) -> Vec<Target> {
    let (Some(thread), Some(grade)) = (&fastening.thread, fastening.grade) else {
        return Vec::new();
    };
    BY_GRADE
        .iter()
        .filter(|(of, _, _)| *of == grade)
        .filter_map(|(_, table, column)| by_thread(*table, thread, column, standing))
        .collect()
}

/// What IEC says of a metric terminal screw: torques of its type test, to compare alone.
pub(super) fn metric_screw(fastening: &Fastening) -> Vec<Target> {
    let screw = matches!(
        fastening.kind,
        FasteningKind::BlockScrew | FasteningKind::BoardScrew | FasteningKind::PressureScrew
    );
    fastening
        .thread
        .iter()
        .filter(|thread| screw && thread.is_metric())
        .flat_map(|thread| {
            ["column_2", "column_3"].into_iter().filter_map(|column| {
                by_thread(TableId::IecMetric, thread, column, Standing::Comparison)
            })
        })
        .collect()
}

/// The short form, for plain dry steel of a known grade: the torque as text in a unit of the trade,
/// cut and never rounded up.
pub(super) fn calculated(fastening: &Fastening) -> Option<Target> {
    use crate::units::{Stated, TorqueUnit};
    let (thread, grade) = (fastening.thread.as_ref()?, fastening.grade?);
    if grade == BoltGrade::A270 {
        return None;
    }
    let calculation = bolt(thread, grade, super::Finish::PlainDry).ok()?;
    let (unit, places) = if thread.is_metric() {
        (TorqueUnit::NewtonMetres, 1)
    } else {
        (TorqueUnit::InchPounds, 0)
    };
    let scale = 10_f64.powi(places);
    let cut = (calculation.torque.in_unit(unit) * scale).floor() / scale;
    let text = if places == 0 {
        format!("{cut:.0}")
    } else {
        format!("{cut:.1}")
    };
    Some(Target {
        torque: Stated::parse(&text, unit).ok()?,
        band: Some(calculation.band),
        basis: Basis::Calculation(calculation),
    })
}

/// The cell of a table for a thread of its diameter and pitch.
fn by_thread(
    id: TableId,
    thread: &Thread,
    column: &'static str,
    standing: Standing,
) -> Option<Target> {
    let table = id
        .table()
        .filter(|table| table.head().standing == standing)?;
    let row = table.rows().find(|row| {
        Thread::parse(row.name()).is_ok_and(|listed| {
            alike(&listed, thread) && same_pitch(pitch_mm(&listed), pitch_mm(thread))
        })
    })?;
    Some(Target {
        torque: row.torque(column)?,
        band: None,
        basis: Basis::Table {
            table: id,
            row: row.name().to_owned(),
            column,
        },
    })
}

/// Whether two pitches are one; a metric size outside the pitch table matches by name alone.
fn same_pitch(listed: Option<f64>, found: Option<f64>) -> bool {
    match (listed, found) {
        (Some(listed), Some(found)) => (listed - found).abs() < 1e-6,
        (None, None) => true,
        _ => false,
    }
}
