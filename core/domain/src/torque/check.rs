//! The torque at which a terminal is checked before anything is set.

use super::Practice;
use crate::units::{Stated, TorqueUnit};

/// The most digits that a stated number takes.
const MOST_DIGITS: usize = 15;

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
    let text = torque.text();
    let (whole, fraction) = text.split_once(['.', ',']).unwrap_or((text, ""));
    let digits: u128 = format!("{whole}{fraction}").parse().ok()?;
    let share = digits.checked_mul(u128::from(percent))?;
    Stated::parse(&written(share, fraction.len() + 2), torque.unit()).ok()
}

/// Writes digits with so many places after the point, without trailing zeros.
fn written(mut digits: u128, mut places: usize) -> String {
    while places > 0 && (digits.is_multiple_of(10) || places > MOST_DIGITS || too_long(digits)) {
        digits /= 10;
        places -= 1;
    }
    let text = format!("{digits:0>width$}", width = places + 1);
    let whole: String = text.chars().take(text.len() - places).collect();
    let fraction: String = text.chars().skip(text.len() - places).collect();
    if fraction.is_empty() {
        whole
    } else {
        format!("{whole}.{fraction}")
    }
}

fn too_long(digits: u128) -> bool {
    digits
        .checked_ilog10()
        .is_some_and(|log| usize::try_from(log).is_ok_and(|n| n >= MOST_DIGITS))
}
