//! Exact sums of decimal texts, so that a setting is written as a person would write it.

/// The most digits that a stated number takes.
const MOST_DIGITS: u32 = 15;

/// A number that is not negative: `digits` over ten to the power of `places`.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Exact {
    digits: u128,
    places: u32,
}

impl Exact {
    /// Reads digits with a point or comma; `None` for anything else.
    pub(super) fn read(text: &str) -> Option<Self> {
        let (whole, fraction) = text.split_once(['.', ',']).unwrap_or((text, ""));
        Some(Self {
            digits: format!("{whole}{fraction}").parse().ok()?,
            places: u32::try_from(fraction.len()).ok()?,
        })
    }

    /// So many hundredths of the number.
    pub(super) fn percent(self, percent: u8) -> Option<Self> {
        Some(Self {
            digits: self.digits.checked_mul(u128::from(percent))?,
            places: self.places + 2,
        })
    }

    /// The number and so many steps more.
    pub(super) fn plus_steps(self, step: Self, count: u32) -> Option<Self> {
        let places = self.places.max(step.places);
        let at = |number: Self| {
            let scale = 10_u128.checked_pow(places.checked_sub(number.places)?)?;
            number.digits.checked_mul(scale)
        };
        let more = at(step)?.checked_mul(u128::from(count))?;
        Some(Self {
            digits: at(self)?.checked_add(more)?,
            places,
        })
    }

    /// The number as text with a point and no trailing zeros; cut, never rounded up, where it would
    /// have over 15 digits.
    pub(super) fn text(self) -> String {
        let Self {
            mut digits,
            mut places,
        } = self;
        let long = |digits: u128| {
            digits
                .checked_ilog10()
                .is_some_and(|log| log >= MOST_DIGITS)
        };
        while places > 0 && (digits.is_multiple_of(10) || long(digits)) {
            digits /= 10;
            places -= 1;
        }
        let places = usize::try_from(places).unwrap_or(0);
        let text = format!("{digits:0>width$}", width = places + 1);
        let split = text.len() - places;
        let whole: String = text.chars().take(split).collect();
        let fraction: String = text.chars().skip(split).collect();
        if fraction.is_empty() {
            whole
        } else {
            format!("{whole}.{fraction}")
        }
    }
}
