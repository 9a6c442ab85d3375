//! What the advice goes by besides the terminal itself.

use crate::units::OutOfRange;

/// At what share of the target a terminal is checked.
///
/// The standard share is 80 %: a rule of this project. 90 % is quoted elsewhere, from memory. No
/// standard fixes either.
///
/// # Example
/// ```
/// use baywalk_domain::torque::Practice;
/// assert_eq!(Practice::default().check_percent(), 80);
/// assert_eq!(Practice::new(90)?.check_percent(), 90);
/// assert!(Practice::new(100).is_err());
/// # Ok::<(), baywalk_domain::units::OutOfRange>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Practice {
    check_percent: u8,
}

impl Practice {
    /// The least share of the target, in percent.
    pub const LEAST: u8 = 80;
    /// The largest share of the target, in percent.
    pub const MOST: u8 = 90;

    /// Takes the share at which terminals are checked, in percent of the target.
    ///
    /// # Errors
    /// [`OutOfRange`] below 80 or above 90 %.
    pub fn new(check_percent: u8) -> Result<Self, OutOfRange> {
        if (Self::LEAST..=Self::MOST).contains(&check_percent) {
            Ok(Self { check_percent })
        } else {
            Err(OutOfRange {
                quantity: "check-percent",
                found: f64::from(check_percent),
                least: f64::from(Self::LEAST),
                most: f64::from(Self::MOST),
                unit: "%",
            })
        }
    }

    /// The share of the target, in percent.
    #[must_use]
    pub const fn check_percent(self) -> u8 {
        self.check_percent
    }
}

impl Default for Practice {
    fn default() -> Self {
        Self {
            check_percent: Self::LEAST,
        }
    }
}

/// What is known of the terminal from earlier walks and from the look just taken.
///
/// # Example
/// ```
/// use baywalk_domain::torque::Past;
/// let moved_again = Past { moved_running: 2, ..Past::default() };
/// assert!(moved_again.asks_remake());
/// assert!(!Past::default().asks_remake());
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Past {
    /// Walks running in which it moved, up to now: before the check of this walk those of earlier
    /// walks, after a check that moved it this walk too. Making it anew does not end the row: a place
    /// that moves again after that is no better for it.
    pub moved_running: u8,
    /// Whether heat or broken strands are seen now.
    pub spoiled: bool,
    /// Whether the paint mark is seen out of line now.
    pub mark_offset: bool,
}

impl Past {
    /// From how many walks running a terminal that moved is made anew instead of set.
    pub const REMAKE_AFTER: u8 = 2;

    /// Whether setting it once more is no answer: it moved two walks running, or is spoiled.
    #[must_use]
    pub const fn asks_remake(self) -> bool {
        self.spoiled || self.moved_running >= Self::REMAKE_AFTER
    }
}
