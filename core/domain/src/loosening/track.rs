//! What one walk after another tells of one terminal: since when it is known to be tight, and how
//! long it stayed so.

use crate::walk::Grade;
use chrono::NaiveDate;

/// Since when a terminal is known to be tight.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Tight {
    /// The day from which its life counts.
    pub since: NaiveDate,
    /// Whether a known hand set it then. Otherwise it was found held at its check then: it was tight,
    /// but for how long before is not known.
    pub set: bool,
    /// The last day on which it was found held since.
    pub held: Option<NaiveDate>,
}

/// What is known of one point from the walks behind.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Track {
    /// The last day on which it was judged or looked at.
    pub seen: Option<NaiveDate>,
    /// Since when it is known to be tight; `None` where it never was, or has moved and was not set.
    pub tight: Option<Tight>,
}

/// A life that is over.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Ended {
    /// Since when it was tight; `None` where it was never known to be, so that it may never have
    /// been: such an end is told beside the lives and tells nothing of how long a joint holds.
    pub tight: Option<Tight>,
    /// The day on which it was found to have moved; `None` where it was undone by us.
    pub moved: Option<NaiveDate>,
}

impl Track {
    /// Takes what a walk noted: the grade, and whether the terminal was set or remade then. Gives the
    /// life that is over by it.
    ///
    /// A set terminal starts anew. Looked at and not judged tell nothing of how it is clamped.
    ///
    /// # Example
    /// ```
    /// use baywalk_domain::loosening::Track;
    /// use baywalk_domain::walk::Grade;
    /// use chrono::NaiveDate;
    /// let day = |text: &str| text.parse::<NaiveDate>();
    /// let mut track = Track::default();
    /// // Moved at the first check: it may never have been tight.
    /// let first = track.take(day("2027-03-20")?, Some(Grade::Moved), true);
    /// assert_eq!(first.map(|ended| ended.tight), Some(None));
    /// assert_eq!(track.take(day("2028-03-20")?, Some(Grade::Held), false), None);
    /// assert_eq!(track.take(day("2028-09-01")?, Some(Grade::LookedAt), false), None);
    /// let moved = track.take(day("2029-03-20")?, Some(Grade::Moved), false).ok_or("no end")?;
    /// let tight = moved.tight.ok_or("never tight")?;
    /// assert!(tight.set && tight.held == day("2028-03-20").ok());
    /// assert_eq!((track.tight, track.seen), (None, day("2029-03-20").ok()));
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    pub fn take(&mut self, on: NaiveDate, grade: Option<Grade>, set: bool) -> Option<Ended> {
        if grade.is_some_and(|grade| grade != Grade::NotJudged) {
            self.seen = self.seen.max(Some(on));
        }
        let mut ended = None;
        match grade {
            Some(Grade::Held) => {
                let began = Tight {
                    since: on,
                    set: false,
                    held: None,
                };
                self.tight.get_or_insert(began).held = Some(on);
            }
            Some(Grade::Moved | Grade::Loose | Grade::Apart) => {
                ended = Some(Ended {
                    tight: self.tight.take(),
                    moved: Some(on),
                });
            }
            Some(Grade::LookedAt | Grade::NotJudged) | None => {}
        }
        if set {
            let undone = self.tight.take().map(|tight| Ended {
                tight: Some(tight),
                moved: None,
            });
            ended = ended.or(undone);
            self.tight = Some(Tight {
                since: on,
                set: true,
                held: None,
            });
        }
        ended
    }
}
