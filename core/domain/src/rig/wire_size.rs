//! Conductor sizes: American wire gauge, thousand circular mils, square millimetres.

use crate::units::Decimal;

/// The size of a conductor, as printed on it.
///
/// # Example
/// ```
/// use baywalk_domain::rig::WireSize;
/// assert_eq!(WireSize::parse("2/0 AWG")?, WireSize::Awg(-1));
/// assert_eq!(WireSize::parse("250 kcmil")?.code(), "250 kcmil");
/// assert_eq!(WireSize::parse("2.5 mm2")?.code(), "2.5 mm2");
/// assert!(WireSize::parse("6").is_err());
/// # Ok::<(), baywalk_domain::rig::WireSizeFault>(())
/// ```
#[derive(Debug, Clone, PartialEq)]
pub enum WireSize {
    /// American wire gauge; 1/0 to 4/0 are 0 to −3.
    Awg(i8),
    /// Thousand circular mils.
    Kcmil(u16),
    /// Square millimetres.
    SquareMillimetres(Decimal),
}

/// Why a text is no conductor size.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{found:?} is no conductor size; expected such as 6 AWG, 2/0 AWG, 250 kcmil or 2.5 mm2")]
pub struct WireSizeFault {
    /// What was found.
    pub found: String,
}

impl WireSize {
    /// Reads a size and its unit, parted by a blank.
    ///
    /// # Errors
    /// [`WireSizeFault`] outside 40 AWG to 4/0 AWG, 250 to 2,000 kcmil, 0.05 to 1,000 mm².
    pub fn parse(text: &str) -> Result<Self, WireSizeFault> {
        let read = || {
            let (number, unit) = text.trim().split_once(' ')?;
            match unit.trim() {
                "AWG" => gauge(number).map(Self::Awg),
                "kcmil" => number
                    .parse()
                    .ok()
                    .filter(|k| (250..=2000).contains(k))
                    .map(Self::Kcmil),
                "mm2" | "mm²" => Decimal::parse(number)
                    .ok()
                    .filter(|n| (0.05..=1000.0).contains(&n.value()))
                    .map(Self::SquareMillimetres),
                _ => None,
            }
        };
        read().ok_or_else(|| WireSizeFault {
            found: text.to_owned(),
        })
    }

    /// The size as text that [`WireSize::parse`] reads again.
    #[must_use]
    pub fn code(&self) -> String {
        match self {
            Self::Awg(gauge) if *gauge <= 0 => format!("{}/0 AWG", 1 - gauge),
            Self::Awg(gauge) => format!("{gauge} AWG"),
            Self::Kcmil(area) => format!("{area} kcmil"),
            Self::SquareMillimetres(area) => format!("{} mm2", area.text()),
        }
    }
}

/// Reads `6` and `2/0`.
fn gauge(text: &str) -> Option<i8> {
    match text.strip_suffix("/0") {
        Some(zeros) => zeros
            .parse::<i8>()
            .ok()
            .filter(|z| (1..=4).contains(z))
            .map(|z| 1 - z),
        None => text.parse::<i8>().ok().filter(|g| (1..=40).contains(g)),
    }
}
