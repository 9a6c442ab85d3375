//! Two findings that the terminal shows by itself, before any tool.

use crate::rig::{Terminal, WireSize};
use crate::wire::area_mm2;

/// More conductors are landed than the terminal allows (NEC 110.14(A), 408.41, second hand).
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Crowded {
    /// How many are landed.
    pub landed: u8,
    /// How many are allowed.
    pub allowed: u8,
}

/// The conductor is thinner or thicker than the terminal is marked for (NEC 110.14(A), second hand).
#[derive(Debug, Clone, PartialEq)]
pub struct Outside {
    /// The size that is landed.
    pub size: WireSize,
    /// The smallest that is marked.
    pub smallest: WireSize,
    /// The largest that is marked.
    pub largest: WireSize,
    /// Whether it is too thin; else it is too thick.
    pub too_thin: bool,
}

/// By what share two areas may differ and still be one size: the rounding of printed sizes; ours.
const SAME: f64 = 0.005;

/// Whether more conductors are landed than are allowed.
///
/// # Example
/// ```
/// use baywalk_domain::rig::{Fastening, FasteningKind, Terminal};
/// use baywalk_domain::torque::crowded;
/// let mut terminal = Terminal::of(Fastening::of(FasteningKind::PressureScrew));
/// assert_eq!(crowded(&terminal), None);
/// terminal.landed = 2;
/// assert_eq!(crowded(&terminal).map(|c| (c.landed, c.allowed)), Some((2, 1)));
/// ```
#[must_use]
pub fn crowded(terminal: &Terminal) -> Option<Crowded> {
    (terminal.landed > terminal.allowed).then_some(Crowded {
        landed: terminal.landed,
        allowed: terminal.allowed,
    })
}

/// Whether the conductor is outside the sizes that the terminal is marked for.
///
/// Sizes of different systems are compared by their areas; where a size or the marking is not
/// known, nothing is found.
#[must_use]
pub fn size_outside(terminal: &Terminal) -> Option<Outside> {
    let (smallest, largest) = terminal.range.as_ref()?;
    let size = terminal.wire.size.as_ref()?;
    let area = area_mm2(size);
    let too_thin = area < area_mm2(smallest) * (1.0 - SAME);
    let too_thick = area > area_mm2(largest) * (1.0 + SAME);
    (too_thin || too_thick).then(|| Outside {
        size: size.clone(),
        smallest: smallest.clone(),
        largest: largest.clone(),
        too_thin,
    })
}
