//! What was measured, where and with which loads.

use super::pair::PAIRS;
use super::{Fault, Meter, Pair};
use crate::coded::{Coded, coded};
use crate::rig::ServiceKind;
use crate::units::Voltage;

coded! {
    /// Where the meter was put.
    Place as "service-place" {
        /// At the supply outlet, before plugging in.
        Outlet = "outlet",
        /// In the coach, plugged in.
        Coach = "coach",
    }
}

/// The rated voltage at which a load's nameplate holds.
pub(super) const NAMEPLATE_VOLTS: f64 = 120.0;

/// The share by which a plain heater may differ from its nameplate. Common practice, no source.
const NAMEPLATE: f64 = 0.1;
/// Watts of a plain heater whose nameplate nobody read: least and most. Ours; shown as ours.
pub const ANY_HEATER: (f64, f64) = (500.0, 1800.0);

/// A plain resistive load from one line to neutral, by its nameplate at 120 V.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Load {
    siemens: f64,
    /// The share by which it may be off, either way.
    off: f64,
}

impl Load {
    /// The least that is taken, in watts.
    pub const LEAST: f64 = 5.0;
    /// The most that is taken, in watts.
    pub const MOST: f64 = 6000.0;

    /// A load by its watts.
    ///
    /// # Errors
    /// [`SurveyFault::Load`] outside 5 to 6,000 W.
    pub fn watts(watts: f64) -> Result<Self, SurveyFault> {
        if watts.is_finite() && (Self::LEAST..=Self::MOST).contains(&watts) {
            Ok(Self {
                siemens: watts / (NAMEPLATE_VOLTS * NAMEPLATE_VOLTS),
                off: NAMEPLATE,
            })
        } else {
            Err(SurveyFault::Load { watts })
        }
    }

    /// A load by its rated amperes at 120 V.
    ///
    /// # Errors
    /// [`SurveyFault::Load`] outside 5 to 6,000 W.
    pub fn amperes(amperes: f64) -> Result<Self, SurveyFault> {
        Self::watts(amperes * NAMEPLATE_VOLTS)
    }

    /// Its nameplate in watts at 120 V.
    #[must_use]
    pub const fn rated(self) -> f64 {
        self.siemens * NAMEPLATE_VOLTS * NAMEPLATE_VOLTS
    }

    /// A plain heater whose nameplate nobody read: 500 to 1,800 W, ours.
    #[must_use]
    pub fn any_heater() -> Self {
        let (least, most) = ANY_HEATER;
        let middle = (least + most) / 2.0;
        Self {
            siemens: middle / (NAMEPLATE_VOLTS * NAMEPLATE_VOLTS),
            off: (most - least) / (most + least),
        }
    }

    /// Its conductance in siemens.
    pub(super) const fn siemens(self) -> f64 {
        self.siemens
    }

    /// The share by which that may be off, either way.
    pub(super) const fn off(self) -> f64 {
        self.off
    }
}

/// One load state with what the meter showed.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct State {
    /// The load on leg 1.
    pub load_1: Option<Load>,
    /// The load on leg 2.
    pub load_2: Option<Load>,
    readings: [Option<f64>; PAIRS],
}

impl State {
    /// A state with its loads and nothing measured yet.
    #[must_use]
    pub const fn loaded(load_1: Option<Load>, load_2: Option<Load>) -> Self {
        Self {
            load_1,
            load_2,
            readings: [None; PAIRS],
        }
    }

    /// The state with one reading more; a second one of the same pair takes the place of the first.
    #[must_use]
    pub fn with(mut self, pair: Pair, volts: Voltage) -> Self {
        let cell = Pair::ALL
            .iter()
            .position(|at| *at == pair)
            .and_then(|at| self.readings.get_mut(at));
        if let Some(cell) = cell {
            *cell = Some(volts.volts());
        }
        self
    }

    /// Whether nothing is switched on.
    #[must_use]
    pub const fn is_bare(&self) -> bool {
        self.load_1.is_none() && self.load_2.is_none()
    }

    /// The load on leg 1 (0) or leg 2 (1).
    pub(super) const fn load(&self, leg: usize) -> Option<Load> {
        if leg == 0 { self.load_1 } else { self.load_2 }
    }

    /// What was read at a pair, in volts.
    #[must_use]
    pub fn read(&self, pair: Pair) -> Option<f64> {
        self.readings()
            .find(|(at, _)| *at == pair)
            .map(|(_, volts)| volts)
    }

    /// All readings, in the order of the pairs.
    pub fn readings(&self) -> impl Iterator<Item = (Pair, f64)> {
        Pair::ALL
            .iter()
            .copied()
            .zip(self.readings)
            .filter_map(|(pair, volts)| Some((pair, volts?)))
    }
}

/// The most load states that one judgement takes.
pub const MOST_STATES: usize = 4;

/// Everything that a service is judged by.
#[derive(Debug, Clone, PartialEq)]
pub struct Survey {
    service: ServiceKind,
    place: Place,
    meter: Meter,
    states: Vec<State>,
    ruled_out: Vec<Fault>,
}

/// Why readings can't be judged.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum SurveyFault {
    /// The rig has no AC service.
    #[error("the rig has no AC service; expected a 30 A or 50 A one")]
    NoService,
    /// Nothing was measured.
    #[error("no reading; expected at least one")]
    NoReading,
    /// Too many load states.
    #[error("{found} load states; expected 1 to {MOST_STATES}")]
    States {
        /// How many were found.
        found: usize,
    },
    /// A pair that this service has not.
    #[error("{pair:?} was read on a 120 V service, which has no line 2")]
    NoLine2 {
        /// The pair.
        pair: Pair,
    },
    /// A load on leg 2 of a service that has one leg.
    #[error("a load on leg 2 of a 120 V service, which has one leg")]
    NoLeg2,
    /// A reading that AC volts can't be.
    #[error("{pair:?} read {volts} V; AC volts are 0 to 600")]
    Reading {
        /// The pair.
        pair: Pair,
        /// What was found.
        volts: f64,
    },
    /// A load that is no plain test load.
    #[error("a load of {watts} W; expected 5 to 6000 W")]
    Load {
        /// What was found.
        watts: f64,
    },
}

/// The highest AC reading that is taken, in volts.
const MOST_VOLTS: f64 = 600.0;

impl Survey {
    /// Takes the readings of a service.
    ///
    /// # Errors
    /// [`SurveyFault`] where the service has no such pair or load, or nothing was measured.
    pub fn new(
        service: ServiceKind,
        place: Place,
        meter: Meter,
        states: Vec<State>,
    ) -> Result<Self, SurveyFault> {
        if service == ServiceKind::None {
            return Err(SurveyFault::NoService);
        }
        if states.is_empty() || states.len() > MOST_STATES {
            return Err(SurveyFault::States {
                found: states.len(),
            });
        }
        if states.iter().all(|state| state.readings().next().is_none()) {
            return Err(SurveyFault::NoReading);
        }
        let one_leg = service == ServiceKind::Amp30;
        for state in &states {
            if one_leg && state.load_2.is_some() {
                return Err(SurveyFault::NoLeg2);
            }
            for (pair, volts) in state.readings() {
                if one_leg && pair.needs_line_2() {
                    return Err(SurveyFault::NoLine2 { pair });
                }
                if !(0.0..=MOST_VOLTS).contains(&volts) {
                    return Err(SurveyFault::Reading { pair, volts });
                }
            }
        }
        Ok(Self {
            service,
            place,
            meter,
            states,
            ruled_out: Vec::new(),
        })
    }

    /// The same survey with a fault that is known not to be there by other means, such as a line on
    /// the equipment ground once body metal read dead against the soil.
    #[must_use]
    pub fn without(mut self, fault: Fault) -> Self {
        self.ruled_out.push(fault);
        self
    }

    /// Whether a fault may be there.
    pub(super) fn may_be(&self, fault: Fault) -> bool {
        !self.ruled_out.contains(&fault)
    }

    /// The service that the rig is made for.
    #[must_use]
    pub const fn service(&self) -> ServiceKind {
        self.service
    }

    /// Where the meter was put.
    #[must_use]
    pub const fn place(&self) -> Place {
        self.place
    }

    /// The meter.
    #[must_use]
    pub const fn meter(&self) -> &Meter {
        &self.meter
    }

    /// Whether a pair was read with nothing switched on.
    pub(super) fn read_bare(&self, pair: Pair) -> bool {
        let mut states = self.states.iter();
        states.any(|state| state.is_bare() && state.read(pair).is_some())
    }

    /// What the readings were taken with, and where.
    pub(super) const fn by(&self) -> (&Meter, Place) {
        (&self.meter, self.place)
    }

    /// The load states, in the order given.
    #[must_use]
    pub fn states(&self) -> &[State] {
        &self.states
    }
}
