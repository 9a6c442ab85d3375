//! One explanation of the readings, with its figures.

use super::model::{self, Values, circuit};
use super::wiring::Wiring;
use super::{Conductor, Fault, Place, State, Survey};
use crate::supply::{CUT_OUT, SafeAct};

/// A range of values.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Span {
    /// The least.
    pub least: f64,
    /// The most.
    pub most: f64,
}

/// The circuit of one load state that meets the readings: everything needed to solve it again.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Explained {
    /// The source behind L1, L2, N and G, real and imaginary part, in volts.
    pub emf: [[f64; 2]; 4],
    /// The conductance of the way to L1, L2, N and G, in siemens; 0 is open.
    pub way: [f64; 4],
    /// What lies between L1 and N, in siemens.
    pub leg_1: f64,
    /// What lies between L2 and N, in siemens.
    pub leg_2: f64,
    /// What lies between L1 and L2, in siemens.
    pub lines: f64,
    /// What lies between N and G, in siemens.
    pub bond: f64,
}

/// A fault that is consistent with every reading.
#[derive(Debug, Clone, PartialEq)]
pub struct Candidate {
    /// What is wrong.
    pub fault: Fault,
    /// Where it sits.
    pub at: Option<Conductor>,
    /// A supply of the wrong kind beside it.
    pub also: Option<Fault>,
    /// Whether these readings can't tell it from a healthy service.
    pub hidden: bool,
    /// The service voltage, line to neutral, in volts, as the readings allow it.
    pub level: Span,
    /// The resistance of the bad joint in ohms, as the readings allow it.
    pub ohms: Option<Span>,
    /// What is done first.
    pub act: SafeAct,
    /// The largest distance of a reading from this explanation, in meter errors.
    pub worst: f64,
    /// Its weight against the first candidate, 0 to 1: by fit and by how common it is. Ours; an
    /// order, no probability.
    pub weight: f64,
    /// One circuit for each load state that meets the readings.
    pub explained: Vec<Explained>,
    /// The wiring behind it.
    pub(super) wiring: Wiring,
    /// The unknowns at its best point.
    pub(super) values: Values,
}

impl Explained {
    pub(super) fn of(wiring: &Wiring, at: usize, state: &State, values: &Values) -> Self {
        let circuit = circuit(wiring, at, state, values);
        Self {
            emf: circuit.feeds.map(|feed| feed.emf),
            way: circuit.feeds.map(|feed| feed.siemens),
            leg_1: circuit.leg_1,
            leg_2: circuit.leg_2,
            lines: circuit.lines,
            bond: circuit.bond,
        }
    }
}

/// The circuits of all load states.
pub(super) fn explained(survey: &Survey, wiring: &Wiring, values: &Values) -> Vec<Explained> {
    let states = survey.states().iter().enumerate();
    states
        .map(|(at, state)| Explained::of(wiring, at, state, values))
        .collect()
}

/// What a fault deserves to be done first, were it certain.
///
/// A sound supply of another kind or level goes on only within the common cut-outs.
pub(super) fn act(fault: Fault, level: Span, place: Place) -> SafeAct {
    let within = level.least >= CUT_OUT.least && level.most <= CUT_OUT.most;
    match (fault, place) {
        (fault, _) if fault.is_sound() && within => SafeAct::GoOn,
        (Fault::LineGroundSwapped | Fault::LineNeutralSwapped, Place::Coach) => SafeAct::DontTouch,
        (_, Place::Outlet) => SafeAct::DontPlugIn,
        (_, Place::Coach) => SafeAct::SupplyAway,
    }
}

/// How common a fault is, as the logarithm of a weight. Ours: it orders, it excludes nothing.
pub(super) const fn common(fault: Fault) -> f64 {
    match fault {
        Fault::Healthy => 0.0,
        Fault::OneLegAdapter => -1.5,
        Fault::LowService | Fault::Supply208 => -2.0,
        Fault::HighService | Fault::WeakNeutral | Fault::WeakLeg => -2.5,
        Fault::OpenNeutral | Fault::OpenLeg | Fault::LineNeutralSwapped | Fault::OpenGround => -3.0,
        Fault::NeutralGroundMixed => -4.0,
        Fault::LineGroundSwapped => -5.0,
    }
}

impl Candidate {
    /// The unknowns with a bad joint at the middle of its range, no drift, loads as rated.
    pub(super) fn typical(&self) -> Values {
        let mut values = model::at_rest(self.values);
        if let (Some(conductor), Some(ohms)) = (self.wiring.weak, self.ohms)
            && let Some(value) = values.get_mut(model::joint_of(conductor))
        {
            *value = (ohms.least * ohms.most).sqrt();
        }
        values
    }
}
