//! `calc bolt`: T = K·D·F of a steel bolt or stud.

use super::shape::{BandOut, Word};
use super::{Calculate, Fault, at};
use baywalk_domain::rig::{BoltGrade, Thread};
use baywalk_domain::torque::{Finish, bolt, pitch_mm};
use baywalk_domain::units::TorqueUnit;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The calculation.
pub(super) struct Calculation;

/// A steel bolt or stud, metal on metal.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct Given {
    /// The thread, such as 1/4-20 or M8.
    thread: String,
    /// The grade by its head marks.
    grade: Word<BoltGrade>,
    /// The surface of the thread; dry plain steel where left out.
    finish: Option<Word<Finish>>,
}

/// The torque at 0.75 of proof, with all that went into it.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Found {
    diameter_mm: f64,
    pitch_mm: Option<f64>,
    stress_area_mm2: f64,
    proof_mpa: f64,
    nut_factor: f64,
    nut_factor_lowest: f64,
    nut_factor_highest: f64,
    preload_newtons: f64,
    /// Scatter of the preload under a torque wrench, as a share of it, plus and minus.
    preload_scatter: f64,
    torque_newton_metres: f64,
    torque_inch_pounds: f64,
    /// The torque over the range of the nut factor, for the same preload.
    band: BandOut,
}

impl Calculate for Calculation {
    const NAME: &'static str = "bolt";
    const ABOUT: &'static str =
        "Torque of a steel bolt or stud, metal on metal, at 0.75 of its proof stress by T = K D F.";
    type In = Given;
    type Out = Found;

    fn calculate(given: Given) -> Result<Found, Fault> {
        let thread = Thread::parse(&given.thread).map_err(at("thread"))?;
        let finish = given.finish.map_or(Finish::PlainDry, |word| word.0);
        let found = bolt(&thread, given.grade.0, finish)
            .map_err(|fault| Fault::Refused(fault.to_string()))?;
        Ok(Found {
            diameter_mm: found.diameter_mm,
            pitch_mm: pitch_mm(&thread),
            stress_area_mm2: found.stress_area_mm2,
            proof_mpa: found.proof_mpa,
            nut_factor: found.factor.typical,
            nut_factor_lowest: found.factor.lowest,
            nut_factor_highest: found.factor.highest,
            preload_newtons: found.preload_n,
            preload_scatter: found.scatter,
            torque_newton_metres: found.torque.newton_metres(),
            torque_inch_pounds: found.torque.in_unit(TorqueUnit::InchPounds),
            band: found.band.into(),
        })
    }
}
