//! A quantity beside the number and unit that a person gave for it.

use super::{Decimal, DecimalFault, OutOfRange};
use crate::coded::{Coded, UnknownCode};

/// A unit of one kind of quantity.
pub trait Unit: Coded {
    /// The kind of quantity it measures.
    type Quantity: Copy + std::fmt::Debug + PartialEq;

    /// Turns a number of this unit into the quantity.
    ///
    /// # Errors
    /// [`OutOfRange`] where the quantity can't be so large, so small or no number.
    fn quantity(self, value: f64) -> Result<Self::Quantity, OutOfRange>;
}

/// A quantity as it was stated: the number as typed, its unit, and the quantity in SI.
///
/// # Example
/// ```
/// use baywalk_domain::units::{Stated, TorqueUnit};
/// let label = Stated::parse("45", TorqueUnit::InchPounds)?;
/// assert_eq!(label.text(), "45");
/// assert!((label.quantity().newton_metres() - 5.084_317_306_242_765).abs() < 1e-12);
/// assert!(Stated::parse("0", TorqueUnit::InchPounds).is_err());
/// # Ok::<(), baywalk_domain::units::StatedFault>(())
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Stated<U: Unit> {
    number: Decimal,
    unit: U,
    quantity: U::Quantity,
}

/// Why a stated quantity was not taken.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum StatedFault {
    /// The number can't be read.
    #[error(transparent)]
    Number(#[from] DecimalFault),
    /// The unit is not known.
    #[error(transparent)]
    Unit(#[from] UnknownCode),
    /// The quantity is out of the range that can be.
    #[error(transparent)]
    Range(#[from] OutOfRange),
}

impl<U: Unit> Stated<U> {
    /// Reads a number of a unit.
    ///
    /// # Errors
    /// [`StatedFault`] where the number can't be read or the quantity can't be.
    pub fn parse(number: &str, unit: U) -> Result<Self, StatedFault> {
        let number = Decimal::parse(number)?;
        let quantity = unit.quantity(number.value())?;
        Ok(Self {
            number,
            unit,
            quantity,
        })
    }

    /// Reads a number and a unit's code, parted by a blank: `45 lbf.in`.
    ///
    /// # Errors
    /// [`StatedFault`] as [`Stated::parse`], and where the unit is not known.
    pub fn parse_pair(text: &str) -> Result<Self, StatedFault> {
        let text = text.trim();
        let (number, unit) = text.split_once(char::is_whitespace).unwrap_or((text, ""));
        Self::parse(number, U::from_code(unit.trim())?)
    }

    /// The number as it was typed.
    #[must_use]
    pub fn text(&self) -> &str {
        self.number.text()
    }

    /// The number in the stated unit.
    #[must_use]
    pub fn value(&self) -> f64 {
        self.number.value()
    }

    /// The unit that was stated.
    #[must_use]
    pub fn unit(&self) -> U {
        self.unit
    }

    /// The quantity.
    #[must_use]
    pub fn quantity(&self) -> U::Quantity {
        self.quantity
    }

    /// The number and the unit's code, parted by a blank.
    #[must_use]
    pub fn pair(&self) -> String {
        format!("{} {}", self.number.text(), self.unit.code())
    }
}
