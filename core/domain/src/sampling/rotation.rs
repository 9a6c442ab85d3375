//! Which of many like points are gone through in which year.

use super::shuffle::shuffled;

/// The most like points that are sampled.
pub const MOST_LIKE: usize = 10_000;
/// The most years within which all are seen.
pub const MOST_YEARS: u32 = 30;

/// Like points in a mixed order, so many of them a year.
///
/// Each year takes the next ones of the order and begins anew at its end, so that any run of as many
/// years sees all of them. The same seed gives the same order on every machine.
///
/// # Example
/// ```
/// use baywalk_domain::sampling::Rotation;
/// let outlets = Rotation::of(14, None, 4, 2027)?;
/// assert_eq!(outlets.each(), 4);
/// let mut seen: Vec<usize> = (0..4).flat_map(|year| outlets.of_year(year)).collect();
/// seen.sort_unstable();
/// seen.dedup();
/// assert_eq!(seen.len(), 14);
/// // One was found loose: twice as many are gone through, the next ones of the order.
/// assert_eq!(outlets.grown(0, 1).len(), 8);
/// assert!(Rotation::of(14, Some(3), 4, 2027).is_err());
/// # Ok::<(), baywalk_domain::sampling::SamplingFault>(())
/// ```
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Rotation {
    order: Vec<usize>,
    each: usize,
}

/// Why like points can't be sampled so.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum SamplingFault {
    /// No points or too many.
    #[error("{found} like points were given; expected 1 to {MOST_LIKE}")]
    Points {
        /// How many.
        found: usize,
    },
    /// No years or too many.
    #[error("{found} years were given; expected 1 to {MOST_YEARS}")]
    Years {
        /// How many.
        found: u32,
    },
    /// So many a year do not see all within the years, or there are not as many.
    #[error(
        "{found} a year were asked for; expected {least} to {most}, so that all are seen within the years"
    )]
    Each {
        /// How many.
        found: usize,
        /// How many it takes.
        least: usize,
        /// How many there are.
        most: usize,
    },
    /// More were found loose than were gone through, or more were gone through than there are.
    #[error(
        "{loose} loose of {seen} seen of {all} was given; expected no more loose than seen and no more seen than there are"
    )]
    Counts {
        /// How many there are.
        all: u32,
        /// How many were gone through.
        seen: u32,
        /// How many of those were loose.
        loose: u32,
    },
    /// The confidence is no share between a half and one.
    #[error("a confidence of {found} was given; expected 0.5 to 0.999")]
    Confidence {
        /// What was given.
        found: f64,
    },
}

impl Rotation {
    /// Puts like points into a mixed order, so many a year that all are seen within some years;
    /// where the number is left out, the smallest that does.
    ///
    /// # Errors
    /// [`SamplingFault`] naming the number that can't be.
    pub fn of(
        points: usize,
        each: Option<usize>,
        years: u32,
        seed: u64,
    ) -> Result<Self, SamplingFault> {
        if points == 0 || points > MOST_LIKE {
            return Err(SamplingFault::Points { found: points });
        }
        if years == 0 || years > MOST_YEARS {
            return Err(SamplingFault::Years { found: years });
        }
        let least = points.div_ceil(usize::try_from(years).unwrap_or(1));
        let each = each.unwrap_or(least);
        if each < least || each > points {
            let (found, most) = (each, points);
            return Err(SamplingFault::Each { found, least, most });
        }
        let order = shuffled(points, seed);
        Ok(Self { order, each })
    }

    /// How many are gone through a year.
    #[must_use]
    pub const fn each(&self) -> usize {
        self.each
    }

    /// The points of a year, counted from 0; which of the given ones, in the order of the sample.
    #[must_use]
    pub fn of_year(&self, year: u32) -> Vec<usize> {
        self.from(year, self.each)
    }

    /// The points of a year once so many were found loose: twice as many for each of them (ours),
    /// and never more than there are. The first ones are those of [`Rotation::of_year`].
    #[must_use]
    pub fn grown(&self, year: u32, loose: u32) -> Vec<usize> {
        let times = 2_usize.checked_pow(loose).unwrap_or(usize::MAX);
        self.from(year, self.each.saturating_mul(times))
    }

    fn from(&self, year: u32, count: usize) -> Vec<usize> {
        let all = self.order.len();
        let year = usize::try_from(year).unwrap_or(0) % all;
        let begin = year * self.each % all;
        let order = self.order.iter().cycle().skip(begin);
        order.take(count.min(all)).copied().collect()
    }
}
