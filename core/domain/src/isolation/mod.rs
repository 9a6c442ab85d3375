//! Taking power away: what feeds what, the order of the sources, the pairs that must read dead, the
//! proof.

mod behind;
mod checks;
mod limits;
mod meter;
mod order;
mod proof;
mod reach;
mod wiring;

pub use behind::Behind;
pub use checks::checks_of;
pub use limits::{
    DEAD_AC, DEAD_DC, EXCEPTION_BELOW, IDLE_LIMIT, KNOWN_LIVE_AC, KNOWN_LIVE_DC, is_dead,
    is_known_live,
};
pub use meter::{Meter, MeterCategory, MeterKind};
pub use order::{away_order, restore_order};
pub use proof::{KnownLive, Lapse, Proof, Read};
pub use reach::{Passing, Reach};
pub use wiring::Wiring;
