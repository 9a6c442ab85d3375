//! The torque at which a terminal is checked before anything is set.

use super::Practice;
use super::exact::Exact;
use crate::units::{Stated, TorqueUnit};

/// The check value of a target: the share that the practice names, or the maker's full value.
///
/// `None` where the share is below what any tool tightens to.
pub(super) fn check(
    target: &Stated<TorqueUnit>,
    full_value: bool,
    practice: &Practice,
) -> Option<Stated<TorqueUnit>> {
    if full_value {
        Some(target.clone())
    } else {
        share(target, practice.check_percent())
    }
}

/// A share of a stated torque in its own unit, exact in decimals; cut (never rounded up) where the
/// number would have over 15 digits.
///
/// `None` where the share is below the least torque there is.
///
/// # Example
/// ```
/// use baywalk_domain::torque::share;
/// use baywalk_domain::units::{Stated, TorqueUnit};
/// let label = Stated::parse("45", TorqueUnit::InchPounds)?;
/// assert_eq!(share(&label, 80).map(|s| s.pair()), Some("36 lbf.in".to_owned()));
/// let comma = Stated::parse("2,25", TorqueUnit::NewtonMetres)?;
/// assert_eq!(share(&comma, 80).map(|s| s.pair()), Some("1.8 N.m".to_owned()));
/// # Ok::<(), baywalk_domain::units::StatedFault>(())
/// ```
#[must_use]
pub fn share(torque: &Stated<TorqueUnit>, percent: u8) -> Option<Stated<TorqueUnit>> {
    let share = Exact::read(torque.text())?.percent(percent)?;
    Stated::parse(&share.text(), torque.unit()).ok()
}
