//! When a tool is due for calibration.

use crate::rig::Tool;
use chrono::{Months, NaiveDate};

/// Months after which a tool is due (ISO 6789, from memory).
pub const CALIBRATION_MONTHS: u32 = 12;
/// Cycles after which a tool is due (ISO 6789, from memory).
pub const CALIBRATION_CYCLES: u32 = 5_000;

/// Whether a tool's calibration still holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Calibration {
    /// Nobody knows when it was calibrated.
    Unknown,
    /// It holds.
    Holds {
        /// The first day on which it is due by time.
        due: NaiveDate,
        /// Cycles that are left.
        cycles_left: u32,
    },
    /// It is due since that day, or now by its cycles.
    Due {
        /// The day on which it fell due by time.
        since: NaiveDate,
        /// Whether the cycles are used up.
        by_cycles: bool,
    },
}

/// Whether a tool's calibration holds on a day: 12 months or 5,000 cycles, whichever comes first,
/// where the owner has no rule of his own (ISO 6789, from memory). Also due after an overload or a
/// repair, which the owner notes as a calibration day that is not known.
///
/// # Example
/// ```
/// use baywalk_domain::torque::{CALIBRATION_CYCLES, CALIBRATION_MONTHS};
/// assert_eq!((CALIBRATION_MONTHS, CALIBRATION_CYCLES), (12, 5_000));
/// ```
#[must_use]
pub fn calibration(tool: &Tool, today: NaiveDate) -> Calibration {
    let due = tool
        .calibrated
        .and_then(|day| day.checked_add_months(Months::new(CALIBRATION_MONTHS)));
    let left = CALIBRATION_CYCLES.saturating_sub(tool.cycles);
    match due {
        None => Calibration::Unknown,
        Some(due) if today < due && left > 0 => Calibration::Holds {
            due,
            cycles_left: left,
        },
        Some(since) => Calibration::Due {
            since,
            by_cycles: left == 0,
        },
    }
}
