//! A decimal number, kept as the person typed it.

/// A decimal number and the exact text that was typed for it.
///
/// A point or a comma may part the fraction; there is no thousands mark and no exponent.
///
/// # Errors
/// [`DecimalFault`] where the text is no such number.
///
/// # Example
/// ```
/// use baywalk_domain::units::Decimal;
/// let typed = Decimal::parse("4,50")?;
/// assert_eq!(typed.text(), "4,50");
/// assert!((typed.value() - 4.5).abs() < 1e-12);
/// assert!(Decimal::parse("NaN").is_err());
/// assert!(Decimal::parse("1,234.5").is_err());
/// # Ok::<(), baywalk_domain::units::DecimalFault>(())
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Decimal {
    text: String,
    value: f64,
}

/// Why a text is no decimal number.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{found:?} is no decimal number; expected digits such as 45 or 0.5")]
pub struct DecimalFault {
    /// What was found.
    pub found: String,
}

/// The most digits a person types for one figure.
const MOST_DIGITS: usize = 15;

impl Decimal {
    /// Reads a decimal number; surrounding blanks are dropped.
    ///
    /// # Errors
    /// [`DecimalFault`] where the text is empty, has another character, or over 15 digits.
    pub fn parse(text: &str) -> Result<Self, DecimalFault> {
        let fault = || DecimalFault {
            found: text.to_owned(),
        };
        let trimmed = text.trim();
        let body = trimmed.strip_prefix('-').unwrap_or(trimmed);
        let (whole, fraction) = body.split_once(['.', ',']).unwrap_or((body, "0"));
        let digits = |part: &str| !part.is_empty() && part.bytes().all(|b| b.is_ascii_digit());
        if !digits(whole) || !digits(fraction) || whole.len() + fraction.len() > MOST_DIGITS {
            return Err(fault());
        }
        let value = trimmed.replace(',', ".").parse().map_err(|_| fault())?;
        Ok(Self {
            text: trimmed.to_owned(),
            value,
        })
    }

    /// The text as it was typed.
    #[must_use]
    pub fn text(&self) -> &str {
        &self.text
    }

    /// The number.
    #[must_use]
    pub fn value(&self) -> f64 {
        self.value
    }
}
