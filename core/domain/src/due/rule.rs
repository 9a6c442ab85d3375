//! The owner's rules of when to look again, beside the yearly one of the rig.

use super::{EventKind, YearDay};
use crate::coded::coded;
use crate::ids::{ActId, BayId, PointId, RigId, RuleId};
use crate::rig::{Book, FasteningKind, Point};
use crate::units::{DistanceUnit, HourUnit, Stated};
use chrono::NaiveDate;
use uuid::Uuid;

/// What a rule or an event is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Reach {
    /// The whole rig.
    Rig,
    /// One bay.
    Bay(BayId),
    /// All terminals of one kind.
    Kind(FasteningKind),
    /// One point.
    Point(PointId),
}

impl Reach {
    /// Whether a point of a book belongs to it.
    #[must_use]
    pub fn holds(self, book: &Book, point: &Point) -> bool {
        match self {
            Self::Rig => true,
            Self::Bay(bay) => book.bay_of(point) == Some(bay),
            Self::Kind(kind) => point
                .terminal()
                .is_some_and(|terminal| terminal.fastening.kind == kind),
            Self::Point(id) => point.id == id,
        }
    }
}

coded! {
    /// What a day of the year stands for.
    Anchor as "anchor" {
        /// Before the first trip of the season.
        FirstTrip = "first_trip",
        /// Out of storage.
        OutOfStorage = "out_of_storage",
    }
}

/// One limit of a rule; of several the one that comes first counts.
#[derive(Debug, Clone, PartialEq)]
pub enum Limit {
    /// So many months.
    Months(u8),
    /// So far on the road.
    Distance(Stated<DistanceUnit>),
    /// So many hours of the engine.
    Hours(Stated<HourUnit>),
    /// A day of each year.
    Season {
        /// What it stands for.
        anchor: Anchor,
        /// The day.
        on: YearDay,
    },
    /// So many days after an event.
    After {
        /// The event.
        event: EventKind,
        /// The days.
        days: u16,
        /// How far a bad road must have been to count.
        distance: Option<Stated<DistanceUnit>>,
    },
    /// When the chance that a critical terminal has moved passes so many percent.
    Chance(u8),
}

impl Limit {
    /// What makes two limits the same kind.
    fn kind(&self) -> (u8, Option<EventKind>) {
        match self {
            Self::Months(_) => (0, None),
            Self::Distance(_) => (1, None),
            Self::Hours(_) => (2, None),
            Self::Season { .. } => (3, None),
            Self::After { event, .. } => (4, Some(*event)),
            Self::Chance(_) => (5, None),
        }
    }
}

/// A rule of the owner.
#[derive(Debug, Clone, PartialEq)]
pub struct Rule {
    /// Its name.
    pub id: RuleId,
    /// What it is about.
    pub reach: Reach,
    /// Its limits.
    pub limits: Vec<Limit>,
    /// The owner's word on why; needed where months go beyond the yearly custom.
    pub word: String,
}

/// A change of the rules.
#[derive(Debug, Clone, PartialEq)]
pub enum RuleChange {
    /// Sets a rule, new or in place of the one with its name.
    Set(Rule),
    /// Drops a rule.
    Drop(RuleId),
}

/// The months of custom.
pub const YEAR: u8 = 12;
/// The most months that an owner's word can set. Ours.
pub const MOST_MONTHS: u8 = 36;
/// The most percent of chance that a rule may wait for. Ours.
pub const MOST_CHANCE: u8 = 50;

coded! {
    /// Why a rule can't be.
    RuleFault as "rule-fault" {
        /// It has no limit.
        NoLimit = "no_limit",
        /// It has two limits of one kind.
        Twice = "twice",
        /// Its months are none, or too many.
        Months = "months",
        /// It goes beyond a year and the owner says no word.
        NoWord = "no_word",
        /// Its distance or hours are none.
        Nothing = "nothing",
        /// Its chance is none, or too high.
        Chance = "chance",
        /// It is about something that is not in the book.
        NotThere = "not_there",
        /// A chance is asked of something that is no terminal.
        NoTerminal = "no_terminal",
    }
}

impl Rule {
    /// Sees that a rule can be, for the rig of a book.
    ///
    /// # Errors
    /// [`RuleFault`] with the first thing that can't be.
    ///
    /// # Example
    /// ```
    /// use baywalk_domain::due::{Limit, Reach, Rule, RuleFault};
    /// use baywalk_domain::ids::RuleId;
    /// # use baywalk_domain::rig::{Book, Rig, RigKind, ServiceKind, YearlyRule};
    /// # let id = "0190f0c4-0000-7000-8000-000000000001";
    /// # let rig = Rig { id: id.parse()?, name: "Wren".to_owned(), kind: RigKind::Motorhome,
    /// #     service: ServiceKind::Amp30, rule: YearlyRule { months: 12, distance: None },
    /// #     note: String::new() };
    /// # let book = Book::new(rig);
    /// let mut rule = Rule {
    ///     id: id.parse::<RuleId>()?,
    ///     reach: Reach::Rig,
    ///     limits: vec![Limit::Months(18)],
    ///     word: String::new(),
    /// };
    /// assert_eq!(rule.check(&book), Err(RuleFault::NoWord));
    /// rule.word = "Stands in a heated hall and is never driven.".to_owned();
    /// assert_eq!(rule.check(&book), Ok(()));
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    pub fn check(&self, book: &Book) -> Result<(), RuleFault> {
        if self.limits.is_empty() {
            return Err(RuleFault::NoLimit);
        }
        let kinds: Vec<_> = self.limits.iter().map(Limit::kind).collect();
        if kinds
            .iter()
            .enumerate()
            .any(|(n, kind)| kinds.iter().skip(n + 1).any(|k| k == kind))
        {
            return Err(RuleFault::Twice);
        }
        self.limits
            .iter()
            .try_for_each(|limit| self.check_limit(limit))?;
        self.reach_is_there(book)
    }

    fn check_limit(&self, limit: &Limit) -> Result<(), RuleFault> {
        match limit {
            Limit::Months(months) if !(1..=MOST_MONTHS).contains(months) => Err(RuleFault::Months),
            Limit::Months(months) if *months > YEAR && self.word.trim().is_empty() => {
                Err(RuleFault::NoWord)
            }
            Limit::Distance(far) if far.quantity().kilometres() <= 0.0 => Err(RuleFault::Nothing),
            Limit::Hours(long) if long.quantity().hours() <= 0.0 => Err(RuleFault::Nothing),
            Limit::Chance(percent) if !(1..=MOST_CHANCE).contains(percent) => {
                Err(RuleFault::Chance)
            }
            _ => Ok(()),
        }
    }

    fn reach_is_there(&self, book: &Book) -> Result<(), RuleFault> {
        let asks_chance = self
            .limits
            .iter()
            .any(|limit| matches!(limit, Limit::Chance(_)));
        let there = |found: bool| {
            if found {
                Ok(())
            } else {
                Err(RuleFault::NotThere)
            }
        };
        match self.reach {
            Reach::Rig | Reach::Kind(_) => Ok(()),
            Reach::Bay(id) => there(book.bay(id).is_some_and(|bay| !bay.retired)),
            Reach::Point(id) => {
                let point = book.point(id).filter(|point| !point.retired);
                there(point.is_some())?;
                let terminal = point.and_then(Point::terminal).is_some();
                if asks_chance && !terminal {
                    Err(RuleFault::NoTerminal)
                } else {
                    Ok(())
                }
            }
        }
    }
}

/// What is asked to be looked at again.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Asked {
    /// The whole walk.
    Walk,
    /// The second look at what was disturbed.
    SecondLook,
    /// What a rule is about.
    Rule(RuleId),
    /// What an event is about, by the act that noted it.
    Event(ActId),
}

impl Asked {
    /// Its name in a rig, the same for as long as it is asked.
    #[must_use]
    pub fn name(self, rig: RigId) -> Uuid {
        let label = match self {
            Self::Walk => "walk".to_owned(),
            Self::SecondLook => "second look".to_owned(),
            Self::Rule(id) => format!("rule {id}"),
            Self::Event(id) => format!("event {id}"),
        };
        Uuid::new_v5(&rig.uuid(), label.as_bytes())
    }
}

/// Something that is due was put off.
#[derive(Debug, Clone, PartialEq)]
pub struct PutOff {
    /// When it was said.
    pub on: NaiveDate,
    /// What.
    pub asked: Asked,
    /// Until when.
    pub until: NaiveDate,
    /// Why.
    pub why: String,
}

/// The most days by which something is put off at once. Ours.
pub const MOST_PUT_OFF: i64 = 92;
