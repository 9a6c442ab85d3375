//! What is to be planned: bays, points, ways between them, seconds at hand.

/// The most bays of one task.
pub const MOST_BAYS: usize = 60;
/// The most points of one task.
pub const MOST_POINTS: usize = 1_000;
/// The most seconds of one task or of one part of it: six hours.
pub const MOST_SECONDS: u32 = 21_600;
/// The most that all points of a task may be worth together.
pub const MOST_WORTH: u32 = 1_000_000_000;

/// A point that a plan may take in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PointTask {
    /// The seconds it takes; at least one.
    pub seconds: u32,
    /// What going through it is worth, in ranks.
    pub worth: u32,
    /// Whether it is in every plan.
    pub must: bool,
}

/// A bay that a plan may open.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct BayTask {
    /// The seconds to open and to close it together, spent once.
    pub seconds: u32,
    /// Its points, in the order in which they are gone through.
    pub points: Vec<PointTask>,
    /// Whether it is in every plan, even with nothing in it that must be done.
    pub must: bool,
}

impl BayTask {
    /// Whether every plan opens it.
    #[must_use]
    pub fn is_forced(&self) -> bool {
        self.must || self.points.iter().any(|point| point.must)
    }

    /// The seconds that every plan with it in spends there.
    #[must_use]
    pub fn fixed(&self) -> u32 {
        let must = self.points.iter().filter(|point| point.must);
        self.seconds + must.map(|point| point.seconds).sum::<u32>()
    }
}

/// The seconds to walk from each place to each other: place 0 is where the round begins and ends,
/// place 1 is the first bay of the task.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Legs {
    rows: Vec<Vec<u32>>,
}

impl Legs {
    /// Takes a square table; a way may be longer in one direction, as when a round begins at one
    /// place and ends at another.
    ///
    /// # Errors
    /// [`TaskFault::Legs`] where it is not square, or a leg is over [`MOST_SECONDS`].
    pub fn new(rows: Vec<Vec<u32>>) -> Result<Self, TaskFault> {
        let square = rows.iter().all(|row| row.len() == rows.len());
        let small = rows.iter().flatten().all(|leg| *leg <= MOST_SECONDS);
        if square && small && !rows.is_empty() {
            Ok(Self { rows })
        } else {
            Err(TaskFault::Legs)
        }
    }

    /// How many places there are, the first one among them.
    #[must_use]
    pub fn places(&self) -> usize {
        self.rows.len()
    }

    /// Seconds from one place to another; none from a place to itself.
    #[must_use]
    pub fn between(&self, from: usize, to: usize) -> u32 {
        let row = self.rows.get(from).filter(|_| from != to);
        row.and_then(|row| row.get(to)).copied().unwrap_or(0)
    }
}

/// What is to be planned; checked, so that no sum in a plan can overflow.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Task {
    bays: Vec<BayTask>,
    legs: Option<Legs>,
    seconds: u32,
}

/// Why something can't be planned.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum TaskFault {
    /// Too many bays.
    #[error("{found} bays were given; at most {MOST_BAYS} can be planned")]
    Bays {
        /// How many.
        found: usize,
    },
    /// Too many points.
    #[error("{found} points were given; at most {MOST_POINTS} can be planned")]
    Points {
        /// How many.
        found: usize,
    },
    /// A number of seconds is none or too large.
    #[error(
        "a time of {found} s was given; a point takes 1 to {MOST_SECONDS} s, all else 0 to {MOST_SECONDS} s"
    )]
    Seconds {
        /// How many.
        found: u32,
    },
    /// The points are worth too much.
    #[error("the points are worth more than {MOST_WORTH} together")]
    Worth,
    /// The table of ways is not square, too small or too large, or has a leg that is too long.
    #[error(
        "the table of ways needs one row and one column for the place where the round begins and one for each bay, each leg at most {MOST_SECONDS} s"
    )]
    Legs,
}

impl Task {
    /// Takes bays in nose-to-tail order, the ways between them where walking counts, and the
    /// seconds at hand.
    ///
    /// # Errors
    /// [`TaskFault`] naming what is too large or does not fit together.
    pub fn new(bays: Vec<BayTask>, legs: Option<Legs>, seconds: u32) -> Result<Self, TaskFault> {
        if bays.len() > MOST_BAYS {
            return Err(TaskFault::Bays { found: bays.len() });
        }
        let points = || bays.iter().flat_map(|bay| &bay.points);
        let found = points().count();
        if found > MOST_POINTS {
            return Err(TaskFault::Points { found });
        }
        let spans = bays.iter().map(|bay| bay.seconds).chain([seconds]);
        let long = |found: &u32| *found > MOST_SECONDS;
        let wrong = points()
            .map(|point| point.seconds)
            .filter(|found| *found == 0 || long(found));
        if let Some(found) = spans.filter(long).chain(wrong).next() {
            return Err(TaskFault::Seconds { found });
        }
        let worth: u64 = points().map(|point| u64::from(point.worth)).sum();
        if worth > u64::from(MOST_WORTH) {
            return Err(TaskFault::Worth);
        }
        if legs
            .as_ref()
            .is_some_and(|legs| legs.places() != bays.len() + 1)
        {
            return Err(TaskFault::Legs);
        }
        Ok(Self {
            bays,
            legs,
            seconds,
        })
    }

    /// The bays, nose to tail.
    #[must_use]
    pub fn bays(&self) -> &[BayTask] {
        &self.bays
    }

    /// The seconds at hand.
    #[must_use]
    pub const fn seconds(&self) -> u32 {
        self.seconds
    }

    /// Seconds from one place to another; none where walking does not count.
    #[must_use]
    pub fn leg(&self, from: usize, to: usize) -> u32 {
        self.legs.as_ref().map_or(0, |legs| legs.between(from, to))
    }

    /// Whether walking counts.
    #[must_use]
    pub const fn walks(&self) -> bool {
        self.legs.is_some()
    }

    /// The seconds of a round over bays in an order.
    #[must_use]
    pub fn round(&self, order: &[usize]) -> u32 {
        let mut at = 0;
        let mut sum = 0;
        for bay in order {
            sum += self.leg(at, bay + 1);
            at = bay + 1;
        }
        sum + self.leg(at, 0)
    }

    /// What all points are worth together.
    #[must_use]
    pub fn worth(&self) -> u32 {
        let points = self.bays.iter().flat_map(|bay| &bay.points);
        points.map(|point| point.worth).sum()
    }

    /// The same task with one more bay that every plan opens.
    #[must_use]
    pub fn forcing(&self, bay: usize) -> Self {
        let mut task = self.clone();
        if let Some(bay) = task.bays.get_mut(bay) {
            bay.must = true;
        }
        task
    }

    /// The same task with other seconds at hand.
    #[must_use]
    pub fn within(&self, seconds: u32) -> Self {
        Self {
            seconds: seconds.min(MOST_SECONDS),
            ..self.clone()
        }
    }
}
