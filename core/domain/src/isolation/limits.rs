//! The limits of the dead proof. No standard gives a number for "dead": these are ours.

use crate::rig::SupplyKind;
use crate::units::Voltage;

/// Dead below this many volts AC. Ours; shown as ours.
pub const DEAD_AC: f64 = 1.0;
/// Dead below this many volts DC. Ours; shown as ours.
pub const DEAD_DC: f64 = 0.5;
/// A known live AC source shows at least this many volts. Ours.
pub const KNOWN_LIVE_AC: f64 = 50.0;
/// A known live DC source shows at least this many volts. Ours.
pub const KNOWN_LIVE_DC: f64 = 5.0;
/// Only below this many volts DC is a knowing exception thinkable (29 CFR 1910.333(a)(1), second
/// hand, as method).
pub const EXCEPTION_BELOW: f64 = 50.0;
/// Seconds without an act after which a proof no longer counts. Ours.
pub const IDLE_LIMIT: u64 = 30 * 60;

/// Whether a reading counts as dead.
///
/// # Example
/// ```
/// use baywalk_domain::isolation::is_dead;
/// use baywalk_domain::rig::SupplyKind;
/// use baywalk_domain::units::Voltage;
/// assert!(is_dead(SupplyKind::Ac, Voltage::from_volts(0.9)?));
/// assert!(!is_dead(SupplyKind::Dc, Voltage::from_volts(-0.5)?));
/// # Ok::<(), baywalk_domain::units::OutOfRange>(())
/// ```
#[must_use]
pub fn is_dead(supply: SupplyKind, reading: Voltage) -> bool {
    reading.volts().abs()
        < match supply {
            SupplyKind::Ac => DEAD_AC,
            SupplyKind::Dc => DEAD_DC,
        }
}

/// Whether a reading shows that its source is live.
#[must_use]
pub fn is_known_live(supply: SupplyKind, reading: Voltage) -> bool {
    reading.volts().abs()
        >= match supply {
            SupplyKind::Ac => KNOWN_LIVE_AC,
            SupplyKind::Dc => KNOWN_LIVE_DC,
        }
}
