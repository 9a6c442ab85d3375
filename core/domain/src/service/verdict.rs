//! How a service stands, and what is done first: the gravest thought that the readings leave.

use super::candidate::Candidate;
use super::missing::missing;
use super::{Ask, Fault, Place, Survey};
use crate::coded::coded;
use crate::rig::ServiceKind;
use crate::supply::SafeAct;

coded! {
    /// How a service stands after its readings.
    Standing as "service-standing" {
        /// Each leg was loaded and the ground read, and no fault shows by more than the meter's error.
        Sound = "sound",
        /// Nothing shows so far; what could still show it was not read or not loaded.
        SoFar = "so_far",
        /// Healthy explains the readings, and so does a fault that a plain reading tells apart.
        Open = "open",
        /// Only a fault explains them.
        Faulty = "faulty",
        /// Nothing that is known here explains them.
        Unexplained = "unexplained",
    }
}

coded! {
    /// What is told beside the first act.
    Caution as "service-caution" {
        /// 240 V loads have no voltage on one hot conductor.
        LineLoadsOff = "line_loads_off",
        /// 240 V loads get 208 V.
        LineLoadsAt208 = "line_loads_at_208",
        /// A line may be dead behind its break and live through a load between the lines.
        BackFed = "back_fed",
        /// What a bad joint does without tripping anything.
        GlowingJoint = "glowing_joint",
    }
}

/// From this weight on a candidate's own act counts beside a sound one's. Ours.
const DOUBT: f64 = 0.2;

/// Sound is said only where everything was read that a fault needs to show.
pub(super) fn standing(survey: &Survey, consistent: &[Candidate]) -> Standing {
    let Some(first) = consistent.first() else {
        return Standing::Unexplained;
    };
    let healthy = consistent.iter().any(|one| one.fault == Fault::Healthy);
    let mut others = consistent.iter().skip(1);
    let level = |fault| matches!(fault, Fault::LowService | Fault::HighService);
    let plain = others.any(|one| one.fault.shows_unloaded() || level(one.fault));
    if !healthy {
        Standing::Faulty
    } else if !first.fault.is_sound() || plain || doubtful(consistent).next().is_some() {
        Standing::Open
    } else if missing(survey).is_empty() {
        Standing::Sound
    } else {
        Standing::SoFar
    }
}

/// The faults that weigh nearly as much as the first candidate.
fn doubtful(consistent: &[Candidate]) -> impl Iterator<Item = &Candidate> {
    consistent
        .iter()
        .filter(|one| !one.fault.is_sound() && one.weight >= DOUBT)
}

/// The safe act.
///
/// Where the supply is sound by the likeliest candidate, a fault that weighs little does not stop the
/// measuring that would rule it out; but a live body keeps hands off, and nothing is plugged in, until
/// it is ruled out. Going on needs every reading that a fault needs to show.
pub(super) fn first_act(survey: &Survey, consistent: &[Candidate]) -> SafeAct {
    let outlet = survey.place() == Place::Outlet;
    let Some(first) = consistent.first() else {
        return if outlet {
            SafeAct::DontPlugIn
        } else {
            SafeAct::DontTouch
        };
    };
    if first.act != SafeAct::GoOn {
        return gravest(consistent.iter());
    }
    let doubt = gravest(doubtful(consistent));
    if doubt != SafeAct::GoOn {
        return doubt;
    }
    let shows = |one: &&Candidate| one.fault.shows_unloaded() || one.fault.is_sound();
    let kinds = consistent
        .iter()
        .skip(1)
        .any(|one| one.fault.shows_unloaded());
    match gravest(consistent.iter().filter(shows)) {
        SafeAct::DontTouch => SafeAct::DontTouchYet,
        SafeAct::DontPlugIn => SafeAct::DontPlugInYet,
        SafeAct::GoOn if !kinds && !lacks(survey) => SafeAct::GoOn,
        _ => SafeAct::MeasureOn,
    }
}

/// Whether something is still to be read before going on. Loads come after plugging in: at an outlet
/// the pairs are all that can be read.
fn lacks(survey: &Survey) -> bool {
    let outlet = survey.place() == Place::Outlet;
    let later = |ask: Ask| outlet && matches!(ask, Ask::LoadLeg1 | Ask::LoadLeg2);
    missing(survey).into_iter().any(|(ask, _)| !later(ask))
}

fn gravest<'a>(all: impl Iterator<Item = &'a Candidate>) -> SafeAct {
    all.map(|one| one.act)
        .max_by_key(|act| gravity(*act))
        .unwrap_or(SafeAct::GoOn)
}

/// How grave an act is; the greater goes first.
const fn gravity(act: SafeAct) -> u8 {
    match act {
        SafeAct::DontTouch => 5,
        SafeAct::SupplyAway | SafeAct::DontPlugIn | SafeAct::BatteryOff => 4,
        SafeAct::OutOfService => 3,
        SafeAct::DontTouchYet | SafeAct::DontPlugInYet => 2,
        SafeAct::MeasureLater | SafeAct::MeasureOn => 1,
        SafeAct::GoOn => 0,
    }
}

/// What else is told: of candidates that a healthy service does not explain as well.
pub(super) fn cautions(survey: &Survey, consistent: &[Candidate]) -> Vec<Caution> {
    let split = survey.service() == ServiceKind::Amp50;
    let told = |fault: fn(Fault) -> bool| {
        consistent.iter().any(|one| {
            (fault(one.fault) || one.also.is_some_and(fault))
                && (!one.hidden || one.weight >= DOUBT)
        })
    };
    [
        (
            Caution::LineLoadsOff,
            told(|one| one == Fault::OneLegAdapter),
        ),
        (Caution::LineLoadsAt208, told(|one| one == Fault::Supply208)),
        (
            Caution::BackFed,
            split && survey.place() == Place::Coach && told(|one| one == Fault::OpenLeg),
        ),
        (Caution::GlowingJoint, told(Fault::is_joint)),
    ]
    .into_iter()
    .filter_map(|(caution, told)| told.then_some(caution))
    .collect()
}
