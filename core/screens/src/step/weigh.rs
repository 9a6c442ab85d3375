//! A reading judged while it is typed: what a key would bring, were it pressed now.

use super::act;
use crate::here::Here;
use crate::{Core, Problem, ProblemKind};
use baywalk_domain::ids::RigId;
use baywalk_domain::supply::{Measured, Reading, drift};
use baywalk_domain::walk::{Act, WalkState};
use baywalk_logbook::ActFault;
use serde::Serialize;

/// What a key would bring.
#[derive(Debug, Clone, PartialEq, Default, Serialize)]
pub struct Weighed {
    /// What would be told; nothing where what is typed is no whole answer yet.
    pub sentences: Vec<String>,
    /// Whether it would be refused.
    pub refused: bool,
    /// Volts by which the neutral would stand off the middle, below zero towards line 1; none where
    /// the other line was not read.
    pub drift: Option<f64>,
}

/// What a key of the card that stands would bring with what is typed so far. Nothing is recorded.
///
/// # Errors
/// [`Problem`] where no walk is open or the logbook can't be read.
pub fn weigh(core: &Core, rig: RigId, key: &str, typed: &[String]) -> Result<Weighed, Problem> {
    let here = Here::read(core, rig)?;
    let act = match act(&here, key, typed) {
        Ok(act) => act,
        Err(problem) if problem.kind == ProblemKind::Input => return Ok(Weighed::default()),
        Err(problem) => return Err(problem),
    };
    let drift = match &act {
        Act::Measure(reading) => drifted(&here.walk, reading),
        _ => None,
    };
    match core.logbook.foresee(rig, act) {
        Ok(entry) => {
            let nothing = core.words.say("told-recorded");
            let mut sentences = core.sentences(rig, &entry);
            sentences.retain(|sentence| *sentence != nothing);
            Ok(Weighed {
                sentences,
                refused: false,
                drift,
            })
        }
        Err(ActFault::Refused(refusal)) => Ok(Weighed {
            sentences: vec![core.words.refusal(&refusal, &*here.book)],
            refused: true,
            drift: None,
        }),
        Err(ActFault::Storage(fault)) => Err(core.storage(&fault)),
        Err(_) => Ok(Weighed::default()),
    }
}

/// The neutral's drift by a reading that is typed and the one of the other line that stands.
fn drifted(walk: &WalkState, typed: &Reading) -> Option<f64> {
    let (line_1, line_2) = typed.step.legs()?;
    let of = |step| -> Option<&Measured> {
        if step == typed.step {
            return Some(&typed.measured);
        }
        walk.reading(step).map(|(reading, _)| &reading.measured)
    };
    drift(of(line_1)?, of(line_2)?)
}
