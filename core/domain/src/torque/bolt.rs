//! The textbook short form T = K·D·F for steel bolts and studs in metal-to-metal joints.

use super::{Band, TableId};
use crate::coded::{Coded, coded};
use crate::rig::{BoltGrade, Thread};
use crate::units::{OutOfRange, Torque};
use std::f64::consts::FRAC_PI_4;

coded! {
    /// The surface of a thread, which decides its nut factor K.
    Finish as "finish" {
        /// Plain steel, dry.
        PlainDry = "plain_dry",
        /// Zinc plated, dry.
        ZincDry = "zinc_dry",
        /// Zinc plated, lightly oiled.
        ZincOiled = "zinc_oiled",
        /// Stainless on stainless, dry.
        StainlessDry = "stainless_dry",
        /// Stainless on stainless with anti-seize.
        StainlessAntiSeize = "stainless_antiseize",
    }
}

/// Share of the proof stress that a removable joint is tightened to (textbook).
pub const PRELOAD_SHARE: f64 = 0.75;
/// Scatter of preload under a torque wrench, unlubricated (NASA-STD-5020B table 3, second hand).
pub const SCATTER_DRY: f64 = 0.35;
/// Scatter of preload under a torque wrench, lubricated: K up to 0.18 (the same table).
pub const SCATTER_LUBRICATED: f64 = 0.25;
/// One thousand pounds-force a square inch, in megapascals.
const KSI: f64 = 6.894_757_293_168_361;

/// A nut factor with its range.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NutFactor {
    /// The lowest of the range.
    pub lowest: f64,
    /// The value to calculate with.
    pub typical: f64,
    /// The highest of the range.
    pub highest: f64,
}

/// A bolt's torque by the short form, with all that went into it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Calculation {
    /// Nominal diameter in millimetres.
    pub diameter_mm: f64,
    /// Stress area in square millimetres.
    pub stress_area_mm2: f64,
    /// Proof stress in megapascals; yield strength at 0.2 % for stainless.
    pub proof_mpa: f64,
    /// The nut factor.
    pub factor: NutFactor,
    /// The preload aimed at, in newtons: 0.75 of proof.
    pub preload_n: f64,
    /// Scatter of the preload about that, as a share of it.
    pub scatter: f64,
    /// The torque.
    pub torque: Torque,
    /// The torque over the range of the nut factor, for the same preload.
    pub band: Band,
}

/// Why no torque was calculated.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum BoltFault {
    /// The pitch is not in the name of the thread.
    #[error("{thread} does not tell its pitch; expected such as 1/4-20 or M8x1.25")]
    Pitch {
        /// The thread as typed.
        thread: String,
    },
    /// No calculation is made for this material.
    #[error("no torque is calculated for {}; expected a steel grade", .grade.code())]
    Grade {
        /// The grade.
        grade: BoltGrade,
    },
    /// The proof stress of the grade is not known for so large a thread.
    #[error("the proof stress of {} is known up to {most_mm} mm only", .grade.code())]
    Diameter {
        /// The grade.
        grade: BoltGrade,
        /// The largest diameter it holds for, in millimetres.
        most_mm: f64,
    },
    /// The data of the nut factor can't be read.
    #[error("no nut factor is known for {}", .finish.code())]
    Finish {
        /// The finish.
        finish: Finish,
    },
    /// The result is no torque that can be.
    #[error(transparent)]
    Range(#[from] OutOfRange),
}

/// The torque of a steel bolt or stud at 0.75 of its proof stress.
///
/// It holds for metal on metal alone: never for a battery post, a plastic body or an insert.
///
/// # Errors
/// [`BoltFault`] where the pitch, the grade or the range does not allow it.
///
/// # Example
/// ```
/// use baywalk_domain::rig::{BoltGrade, Thread};
/// use baywalk_domain::torque::{Finish, bolt};
/// use baywalk_domain::units::TorqueUnit;
/// let stud = bolt(&Thread::parse("1/4-20")?, BoltGrade::Sae2, Finish::PlainDry)?;
/// assert_eq!(format!("{:.1}", stud.torque.in_unit(TorqueUnit::InchPounds)), "65.6");
/// assert!(bolt(&Thread::parse("1/4-20")?, BoltGrade::Brass, Finish::PlainDry).is_err());
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn bolt(thread: &Thread, grade: BoltGrade, finish: Finish) -> Result<Calculation, BoltFault> {
    let stress_area_mm2 = stress_area_mm2(thread).ok_or_else(|| BoltFault::Pitch {
        thread: thread.text().to_owned(),
    })?;
    let diameter_mm = thread.diameter_mm();
    let proof_mpa = proof_mpa(grade).ok_or(BoltFault::Grade { grade })?;
    if diameter_mm > most_diameter_mm(grade) {
        return Err(BoltFault::Diameter {
            grade,
            most_mm: most_diameter_mm(grade),
        });
    }
    let factor = nut_factor(finish).ok_or(BoltFault::Finish { finish })?;
    let preload_n = PRELOAD_SHARE * proof_mpa * stress_area_mm2;
    let torque = |k: f64| Torque::from_newton_metres(k * diameter_mm / 1000.0 * preload_n);
    Ok(Calculation {
        diameter_mm,
        stress_area_mm2,
        proof_mpa,
        factor,
        preload_n,
        scatter: if factor.typical > 0.18 {
            SCATTER_DRY
        } else {
            SCATTER_LUBRICATED
        },
        torque: torque(factor.typical)?,
        band: Band {
            lowest: torque(factor.lowest)?,
            highest: torque(factor.highest)?,
        },
    })
}

/// Stress area of a thread in square millimetres: π/4·(d − 0.938194·P)² for ISO (ISO 898-1),
/// 0.7854·(D − 0.9743/n)² for unified threads (ASME B1.1), both from memory.
///
/// A metric thread named without pitch is the coarse one; a unified one named without is `None`.
#[must_use]
pub fn stress_area_mm2(thread: &Thread) -> Option<f64> {
    let pitch = pitch_mm(thread)?;
    let reduced = if thread.is_metric() {
        0.938_194
    } else {
        0.974_3
    };
    let root = thread.diameter_mm() - reduced * pitch;
    (root > 0.0).then_some(FRAC_PI_4 * root * root)
}

/// The pitch in millimetres: the one named, or the coarse one of a metric thread.
#[must_use]
pub fn pitch_mm(thread: &Thread) -> Option<f64> {
    thread.pitch_mm().or_else(|| {
        TableId::Threads
            .table()?
            .rows()
            .filter_map(|row| Thread::parse(row.name()).ok())
            .find(|listed| thread.is_metric() && alike(listed, thread))
            .and_then(|listed| listed.pitch_mm())
    })
}

/// Whether two threads have one system and one diameter.
pub(super) fn alike(one: &Thread, other: &Thread) -> bool {
    one.is_metric() == other.is_metric() && (one.diameter_mm() - other.diameter_mm()).abs() < 1e-6
}

/// Proof stress of a grade in megapascals; `None` for bronze, brass and copper.
#[must_use]
pub fn proof_mpa(grade: BoltGrade) -> Option<f64> {
    let table = TableId::ProofStress.table()?;
    let row = table.rows().find(|row| row.name() == grade.code())?;
    let value = row.number("value")?;
    Some(if row.cell("unit") == Some("ksi") {
        value * KSI
    } else {
        value
    })
}

/// The largest diameter that the proof stress of a grade holds for: 16 mm for class 8.8 (above it
/// the class has another value), 1 in for SAE J429 grade 5, 3/4 in for grade 2 (from memory).
const fn most_diameter_mm(grade: BoltGrade) -> f64 {
    match grade {
        BoltGrade::Iso88 => 16.0,
        BoltGrade::Sae2 => 19.05,
        BoltGrade::Sae5 => 25.4,
        _ => 30.0,
    }
}

/// The nut factor of a finish with its range.
#[must_use]
pub fn nut_factor(finish: Finish) -> Option<NutFactor> {
    let table = TableId::NutFactors.table()?;
    let row = table.rows().find(|row| row.name() == finish.code())?;
    Some(NutFactor {
        lowest: row.number("lowest")?,
        typical: row.number("typical")?,
        highest: row.number("highest")?,
    })
}
