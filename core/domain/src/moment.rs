//! When something happened, told by two clocks.

use chrono::{DateTime, FixedOffset, NaiveDate};

/// A moment as the machine that recorded it saw it: the wall clock with its offset, and the clock
/// that runs since the machine started.
///
/// Waits and the age of a proof use the second clock, because a wall clock can be set back.
///
/// # Example
/// ```
/// use baywalk_domain::moment::{Boot, Moment};
/// use chrono::DateTime;
/// let wall = DateTime::parse_from_rfc3339("2027-03-20T09:31:00-07:00")?;
/// let one = Moment { wall, boot: Boot::new("a", 100) };
/// let two = Moment { wall, boot: Boot::new("a", 160) };
/// assert_eq!(two.boot.seconds_since(&one.boot), Some(60));
/// # Ok::<(), chrono::ParseError>(())
/// ```
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Moment {
    /// The wall clock, with the offset of the place.
    pub wall: DateTime<FixedOffset>,
    /// The clock since the machine started.
    pub boot: Boot,
}

impl Moment {
    /// The local calendar day.
    #[must_use]
    pub fn date(&self) -> NaiveDate {
        self.wall.date_naive()
    }
}

/// Seconds since one particular start of the machine.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Boot {
    id: String,
    seconds: u64,
}

impl Boot {
    /// Names a start of the machine and the whole seconds that have passed since.
    #[must_use]
    pub fn new(id: &str, seconds: u64) -> Self {
        Self {
            id: id.to_owned(),
            seconds,
        }
    }

    /// The name of the start.
    #[must_use]
    pub fn id(&self) -> &str {
        &self.id
    }

    /// Whole seconds since the start.
    #[must_use]
    pub fn seconds(&self) -> u64 {
        self.seconds
    }

    /// Seconds from an earlier reading to this one; `None` after a restart or where the clock went
    /// backwards.
    #[must_use]
    pub fn seconds_since(&self, earlier: &Self) -> Option<u64> {
        if self.id == earlier.id {
            self.seconds.checked_sub(earlier.seconds)
        } else {
            None
        }
    }
}
