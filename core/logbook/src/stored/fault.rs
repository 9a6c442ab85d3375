//! Why a stored shape is no value of the domain.

use baywalk_domain::coded::UnknownCode;
use baywalk_domain::rig::{CodeFault, TerminalFault, ThreadFault, WireSizeFault};
use baywalk_domain::units::{DecimalFault, LengthFault, StatedFault};

/// What is wrong, and where in the shape.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("at {at}: {cause}")]
pub struct ShapeFault {
    /// The path of fields, parted by points, such as `found.held.at`.
    pub at: String,
    /// What is wrong there.
    pub cause: ShapeCause,
}

/// What can be wrong with one value.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum ShapeCause {
    /// A word is not in its list.
    #[error(transparent)]
    Word(#[from] UnknownCode),
    /// A quantity can't be read or can't be.
    #[error(transparent)]
    Quantity(#[from] StatedFault),
    /// A decimal number can't be read.
    #[error(transparent)]
    Decimal(#[from] DecimalFault),
    /// A people's code can't be read.
    #[error(transparent)]
    Code(#[from] CodeFault),
    /// A thread can't be read.
    #[error(transparent)]
    Thread(#[from] ThreadFault),
    /// A conductor size can't be read.
    #[error(transparent)]
    WireSize(#[from] WireSizeFault),
    /// A length can't be read.
    #[error(transparent)]
    Length(#[from] LengthFault),
    /// A terminal can't be so.
    #[error(transparent)]
    Terminal(#[from] TerminalFault),
    /// A text has not the form it should.
    #[error("{found:?} is no {expected}")]
    Form {
        /// What was found.
        found: String,
        /// What was expected.
        expected: &'static str,
    },
    /// A whole number is too large.
    #[error("{found} is too large; expected at most {most}")]
    Number {
        /// What was found.
        found: u64,
        /// The most there can be.
        most: u64,
    },
}

impl ShapeFault {
    /// Names the field or variant around.
    #[must_use]
    pub fn within(mut self, field: &str) -> Self {
        self.at = if self.at.is_empty() {
            field.to_owned()
        } else {
            format!("{field}.{}", self.at)
        };
        self
    }
}

impl<C: Into<ShapeCause>> From<C> for ShapeFault {
    fn from(cause: C) -> Self {
        Self {
            at: String::new(),
            cause: cause.into(),
        }
    }
}
