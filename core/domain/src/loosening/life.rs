//! What one check after another tells of how long a joint held.

/// Why a life can't be so.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum LifeFault {
    /// An age is below 0, not finite, or too large to count.
    #[error("found an age of {found}, expected 0 to {most}", most = Life::MOST)]
    Age {
        /// What was found.
        found: f64,
    },
    /// The later age is not after the earlier one.
    #[error("found an end at {by} after an age of {after}, expected an end after that age")]
    Order {
        /// The last age at which it held.
        after: f64,
        /// The age by which it had moved.
        by: f64,
    },
    /// No joint, or more than can be counted.
    #[error("found {found} joints, expected 1 to {most}", most = Life::MOST_JOINTS)]
    Count {
        /// What was found.
        found: u32,
    },
}

/// How long a joint held since it was set, as checks tell it: it held at one age and had moved by a
/// later one, or it still held when last checked.
///
/// Ages are counted from the setting, in one clock throughout (months, or thousands of miles). A
/// check that found it moved tells only that it moved somewhere in the half-open interval since the
/// check before.
///
/// # Example
/// ```
/// use baywalk_domain::loosening::Life;
/// let moved = Life::moved(12.0, 24.0)?;
/// let held = Life::held(24.0)?.times(8)?;
/// assert_eq!((moved.after(), moved.by(), held.count()), (12.0, Some(24.0), 8));
/// assert!(Life::moved(24.0, 12.0).is_err());
/// # Ok::<(), baywalk_domain::loosening::LifeFault>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Life {
    after: f64,
    by: Option<f64>,
    count: u32,
}

impl Life {
    /// The highest age that is taken.
    pub const MOST: f64 = 1e6;
    /// The most joints that share one life.
    pub const MOST_JOINTS: u32 = 1_000_000;
    /// Half the width of the interval that stands for an age known exactly, as a share of that age.
    const EXACT: f64 = 1e-6;

    /// It held at one age (0 where it was not checked since it was set) and had moved by another.
    ///
    /// # Errors
    /// [`LifeFault`] where an age can't be, or the second is not after the first.
    pub fn moved(after: f64, by: f64) -> Result<Self, LifeFault> {
        check(after)?;
        check(by)?;
        if by <= after {
            return Err(LifeFault::Order { after, by });
        }
        Ok(Self {
            after,
            by: Some(by),
            count: 1,
        })
    }

    /// It moved at just this age: an interval of two millionths of it, since no age is a point.
    ///
    /// # Errors
    /// [`LifeFault`] where the age can't be, or is 0.
    pub fn moved_at(age: f64) -> Result<Self, LifeFault> {
        check(age)?;
        Self::moved(age * (1.0 - Self::EXACT), age * (1.0 + Self::EXACT))
    }

    /// It still held at this age, when last checked.
    ///
    /// # Errors
    /// [`LifeFault`] where the age can't be.
    pub fn held(after: f64) -> Result<Self, LifeFault> {
        check(after)?;
        Ok(Self {
            after,
            by: None,
            count: 1,
        })
    }

    /// So many joints with this same life.
    ///
    /// # Errors
    /// [`LifeFault::Count`] for none or too many.
    pub const fn times(self, count: u32) -> Result<Self, LifeFault> {
        if count == 0 || count > Self::MOST_JOINTS {
            return Err(LifeFault::Count { found: count });
        }
        Ok(Self { count, ..self })
    }

    /// The last age at which it held.
    #[must_use]
    pub const fn after(&self) -> f64 {
        self.after
    }

    /// The age by which it had moved; `None` where it still held.
    #[must_use]
    pub const fn by(&self) -> Option<f64> {
        self.by
    }

    /// How many joints have this life.
    #[must_use]
    pub const fn count(&self) -> u32 {
        self.count
    }
}

fn check(age: f64) -> Result<(), LifeFault> {
    if (0.0..=Life::MOST).contains(&age) {
        Ok(())
    } else {
        Err(LifeFault::Age { found: age })
    }
}

/// How many joints the lives are of, and how many of those had moved.
///
/// # Example
/// ```
/// use baywalk_domain::loosening::{Life, tally};
/// let lives = [Life::moved(0.0, 12.0)?.times(3)?, Life::held(12.0)?.times(17)?];
/// assert_eq!(tally(&lives), (20, 3));
/// # Ok::<(), baywalk_domain::loosening::LifeFault>(())
/// ```
#[must_use]
pub fn tally(lives: &[Life]) -> (u32, u32) {
    let sum = |total: u32, life: &Life| total.saturating_add(life.count);
    let moved = lives.iter().filter(|life| life.by.is_some());
    (lives.iter().fold(0, sum), moved.fold(0, sum))
}
