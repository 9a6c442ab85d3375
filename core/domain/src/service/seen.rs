//! What the circuit says of a service, as it is kept with a reading.

use super::{Ask, Caution, Conductor, Fault, Judgement, NextReading, Pair, Standing};
use crate::supply::SafeAct;

/// A fault that explains the readings, and where it sits.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct FaultSeen {
    /// What is wrong.
    pub fault: Fault,
    /// Where it sits.
    pub at: Option<Conductor>,
}

/// What to read next.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct AskSeen {
    /// What to do.
    pub ask: Ask,
    /// The pair, where one is asked for.
    pub pair: Option<Pair>,
}

/// What the circuit said of a service after a reading.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ServiceSeen {
    /// How the service stood.
    pub standing: Standing,
    /// What was done first.
    pub act: SafeAct,
    /// What was told beside the act.
    pub cautions: Vec<Caution>,
    /// The faults that explain every reading, the likeliest first.
    pub faults: Vec<FaultSeen>,
    /// What would tell them apart, the most telling first.
    pub next: Vec<AskSeen>,
}

impl ServiceSeen {
    /// Whether only a fault explains the readings, and one that is not gone on with.
    #[must_use]
    pub fn stops(&self) -> bool {
        self.standing == Standing::Faulty && self.act.is_grave()
    }

    /// Whether something is not as it should be, though the walk goes on: a fault that is lived
    /// with, or readings that nothing known explains.
    #[must_use]
    pub fn is_odd(&self) -> bool {
        let odd = matches!(self.standing, Standing::Faulty | Standing::Unexplained);
        odd && !self.stops()
    }
}

impl From<&Judgement> for ServiceSeen {
    fn from(judgement: &Judgement) -> Self {
        let faults = judgement.consistent.iter();
        let next = judgement.apart.iter();
        Self {
            standing: judgement.standing,
            act: judgement.act,
            cautions: judgement.cautions.clone(),
            faults: faults
                .map(|one| FaultSeen {
                    fault: one.fault,
                    at: one.at,
                })
                .collect(),
            next: next
                .map(|NextReading { ask, pair, .. }| AskSeen {
                    ask: *ask,
                    pair: *pair,
                })
                .collect(),
        }
    }
}
