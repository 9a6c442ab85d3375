//! What the circuit said of a service.

use super::Word;
use super::shape::record;
use baywalk_domain::service::{self, Ask, Caution, Conductor, Fault, Pair, Standing};
use baywalk_domain::supply::SafeAct;

record! {
    /// A fault that explains the readings.
    FaultSeen = service::FaultSeen {
        fault: Word<Fault>,
        at: Option<Word<Conductor>>,
    }
}

record! {
    /// What to read next.
    AskSeen = service::AskSeen {
        ask: Word<Ask>,
        pair: Option<Word<Pair>>,
    }
}

record! {
    /// What the circuit said after a reading.
    ServiceSeen = service::ServiceSeen {
        standing: Word<Standing>,
        act: Word<SafeAct>,
        cautions: Vec<Word<Caution>>,
        faults: Vec<FaultSeen>,
        next: Vec<AskSeen>,
    }
}
