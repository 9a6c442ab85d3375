//! Small lengths as the trade writes them: `3/16 in`, `0.047 in`, `5 mm`.

use super::{Decimal, OutOfRange};
use crate::coded::{Coded, UnknownCode, coded};

/// A length of a part, from 0.01 mm to 10 m.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Length(f64);

coded! {
    /// The units of small lengths.
    LengthUnit as "length-unit" {
        /// Millimetres.
        Millimetres = "mm",
        /// Inches.
        Inches = "in",
    }
}

/// A length with the text that was typed for it.
///
/// # Example
/// ```
/// use baywalk_domain::units::StatedLength;
/// let socket = StatedLength::parse("3/16 in")?;
/// assert!((socket.length().millimetres() - 4.7625).abs() < 1e-12);
/// assert_eq!(socket.text(), "3/16 in");
/// assert!(StatedLength::parse("3/0 in").is_err());
/// # Ok::<(), baywalk_domain::units::LengthFault>(())
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct StatedLength {
    text: String,
    length: Length,
}

/// Why a length was not taken.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum LengthFault {
    /// The number can't be read.
    #[error("{found:?} is no length; expected a number or fraction and a unit, such as 3/16 in")]
    Form {
        /// What was found.
        found: String,
    },
    /// The unit is not known.
    #[error(transparent)]
    Unit(#[from] UnknownCode),
    /// No part is so small or so large.
    #[error(transparent)]
    Range(#[from] OutOfRange),
}

impl Length {
    /// Takes millimetres.
    ///
    /// # Errors
    /// [`OutOfRange`] below 0.01 mm or above 10 m.
    pub fn from_millimetres(value: f64) -> Result<Self, OutOfRange> {
        if value.is_finite() && (0.01..=10_000.0).contains(&value) {
            Ok(Self(value))
        } else {
            Err(OutOfRange {
                quantity: "length",
                found: value,
                least: 0.01,
                most: 10_000.0,
                unit: "mm",
            })
        }
    }

    /// The length in millimetres.
    #[must_use]
    pub const fn millimetres(self) -> f64 {
        self.0
    }

    /// The length in inches.
    #[must_use]
    pub fn inches(self) -> f64 {
        self.0 / 25.4
    }
}

impl StatedLength {
    /// Reads a number or common fraction and a unit, parted by a blank.
    ///
    /// # Errors
    /// [`LengthFault`] where number or unit can't be read or the length can't be.
    pub fn parse(text: &str) -> Result<Self, LengthFault> {
        let trimmed = text.trim();
        let form = || LengthFault::Form {
            found: text.to_owned(),
        };
        let (number, unit) = trimmed.rsplit_once(' ').ok_or_else(form)?;
        let scale = match LengthUnit::from_code(unit)? {
            LengthUnit::Millimetres => 1.0,
            LengthUnit::Inches => 25.4,
        };
        let value = fraction(number).ok_or_else(form)?;
        Ok(Self {
            text: trimmed.to_owned(),
            length: Length::from_millimetres(value * scale)?,
        })
    }

    /// The text as it was typed.
    #[must_use]
    pub fn text(&self) -> &str {
        &self.text
    }

    /// The length.
    #[must_use]
    pub fn length(&self) -> Length {
        self.length
    }
}

/// Reads `5`, `0.047` or `3/16`.
fn fraction(text: &str) -> Option<f64> {
    match text.split_once('/') {
        Some((over, under)) => {
            let whole = |part: &str| part.trim().parse::<u16>().ok().map(f64::from);
            whole(under)
                .filter(|value| *value > 0.0)
                .and_then(|under| whole(over).map(|over| over / under))
        }
        None => Decimal::parse(text).ok().map(|number| number.value()),
    }
}
