//! What the rig's own past tells of its terminals: by kind, and the day by which one is likely to have
//! moved.

use super::course::{add_days, days};
use super::{Courses, Known, Limit};
use crate::ids::PointId;
use crate::loosening::{
    CONFIDENCE, Cloud, FEWEST_MOVED, Life, Member, Pool, PoolPrior, Proportion, Tight, pool,
    proportion, tally,
};
use crate::rig::{Book, FasteningKind, Material, Point, Role, Terminal};
use chrono::NaiveDate;

/// Days of a month, on the average of the calendar.
pub const MONTH: f64 = 30.436_875;
/// The chance of having moved, in percent, that asks for a walk where no rule says otherwise. Ours.
pub const CHANCE: u8 = 10;
/// The furthest that is looked ahead, in days: what is learned only ever shortens a year.
const AHEAD: f64 = 3.0 * 366.0;
/// The least pace that is told apart, in kilometres a month.
const SLOWEST: f64 = 10.0;

/// What is told of one kind of terminal.
#[derive(Debug, Clone, PartialEq)]
pub struct KindTold {
    /// The kind.
    pub kind: FasteningKind,
    /// How many lives of its terminals are known.
    pub joints: u32,
    /// How many of them ended by moving.
    pub moved: u32,
    /// Their share with its interval.
    pub proportion: Option<Proportion>,
    /// The chance that one has moved a year after it was set, with its interval; `None` where fewer
    /// than five had moved.
    pub in_a_year: Option<Proportion>,
}

/// What the rig's own past tells.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Learned {
    /// Kind by kind.
    pub kinds: Vec<KindTold>,
    /// How many had moved that were never known to be tight, and tell nothing of how long one holds.
    pub never_tight: u32,
    /// The first day by which a critical terminal has moved with more than the chosen chance, and
    /// which; `None` where no kind tells a law, or none does so in three years.
    pub first: Option<(NaiveDate, PointId)>,
}

/// A life of a terminal of a kind.
pub(super) struct Seen<'a> {
    pub(super) point: PointId,
    pub(super) terminal: &'a Terminal,
    pub(super) tight: Tight,
    pub(super) moved: Option<NaiveDate>,
    pub(super) life: Life,
    /// Kilometres a month.
    pace: Option<f64>,
}

/// What the rig's own past tells of its terminals.
///
/// A law is told of a kind of which five had moved; kinds are fitted together. Metal of the conductor,
/// whether the terminal was set by a known hand or only found held, and the kilometres a month are
/// taken in: with the last, the law stands between one in months and one in miles, as the lives will
/// have it. A terminal that carries power is critical.
#[must_use]
pub fn learned(book: &Book, known: &Known) -> Learned {
    let courses = known.courses();
    let seen = seen(book, known, &courses);
    let never_tight = known
        .ended
        .iter()
        .filter(|(_, ended)| ended.tight.is_none())
        .count();
    let mut kinds: Vec<FasteningKind> = seen
        .iter()
        .map(|life| life.terminal.fastening.kind)
        .collect();
    kinds.sort_unstable();
    kinds.dedup();
    let mut told: Vec<KindTold> = kinds.iter().map(|kind| counted(*kind, &seen)).collect();
    let lawful = told.iter().any(|kind| kind.moved >= FEWEST_MOVED);
    let fitted = lawful
        .then(|| Fitted::of(&kinds, &seen, &courses))
        .flatten();
    if let Some(fitted) = &fitted {
        for kind in told.iter_mut().filter(|kind| kind.moved >= FEWEST_MOVED) {
            kind.in_a_year = fitted.in_a_year(kind.kind);
        }
    }
    Learned {
        first: fitted.and_then(|fitted| fitted.first(book, known, &told)),
        kinds: told,
        never_tight: u32::try_from(never_tight).unwrap_or(u32::MAX),
    }
}

/// The lives that the walks tell, over and running.
pub(super) fn seen<'a>(book: &'a Book, known: &Known, courses: &Courses) -> Vec<Seen<'a>> {
    let over = known
        .ended
        .iter()
        .filter_map(|(point, ended)| Some((*point, ended.tight?, ended.moved)));
    let running = known
        .tracks
        .iter()
        .filter_map(|(point, track)| Some((*point, track.tight?, None)));
    over.chain(running)
        .filter_map(|(point, tight, moved)| {
            let terminal = book.point(point)?.terminal()?;
            let held = tight.held.map_or(0.0, |held| months(tight.since, held));
            let life = match moved {
                Some(moved) => Life::moved(held, months(tight.since, moved)),
                None => Life::held(held),
            };
            let life = life
                .ok()
                .filter(|life| life.by().is_some() || life.after() > 0.0)?;
            let pace = pace(courses, tight.since, moved.or(tight.held)?);
            Some(Seen {
                point,
                terminal,
                tight,
                moved,
                life,
                pace,
            })
        })
        .collect()
}

fn months(from: NaiveDate, to: NaiveDate) -> f64 {
    days(from, to) / MONTH
}

/// The kilometres a month between two days.
fn pace(courses: &Courses, from: NaiveDate, to: NaiveDate) -> Option<f64> {
    let road = &courses.road;
    let far = road.at(to)? - road.at(from)?;
    Some(far / months(from, to)).filter(|pace| pace.is_finite())
}

fn counted(kind: FasteningKind, seen: &[Seen<'_>]) -> KindTold {
    let own = seen
        .iter()
        .filter(|life| life.terminal.fastening.kind == kind);
    let lives: Vec<Life> = own.map(|seen| seen.life).collect();
    let (joints, moved) = tally(&lives);
    KindTold {
        kind,
        joints,
        moved,
        proportion: proportion(joints, moved, CONFIDENCE),
        in_a_year: None,
    }
}

/// Kinds fitted together.
pub(super) struct Fitted<'a> {
    kinds: &'a [FasteningKind],
    pool: Pool,
    /// The middle of the paces, on the scale of logarithms.
    middle: f64,
    /// The pace that is expected from now on.
    ahead: Option<f64>,
}

impl<'a> Fitted<'a> {
    pub(super) fn of(
        kinds: &'a [FasteningKind],
        seen: &[Seen<'_>],
        courses: &Courses,
    ) -> Option<Self> {
        let paces = || {
            seen.iter()
                .filter_map(|life| life.pace)
                .map(|pace| pace.max(SLOWEST).ln())
        };
        let count: f64 = paces().map(|_| 1.0).sum();
        let middle = if count > 0.0 {
            paces().sum::<f64>() / count
        } else {
            0.0
        };
        let mut members = Vec::with_capacity(seen.len());
        for life in seen {
            members.push(Member {
                group: group(kinds, life.terminal)?,
                traits: traits(life.terminal, life.tight.set, life.pace, middle),
                life: life.life,
            });
        }
        let ahead = courses.pace.as_ref().map(|pace| pace.per_day() * MONTH);
        let pool = pool(&members, &PoolPrior::WEAK).ok()?;
        Some(Self {
            kinds,
            pool,
            middle,
            ahead,
        })
    }

    /// The chance that a copper terminal, set by a known hand, has moved in a year at the pace of the
    /// middle.
    fn in_a_year(&self, kind: FasteningKind) -> Option<Proportion> {
        let told = self.moved_by(kind, std::iter::once(12.0))?;
        told.into_iter().next().map(|(_, chance)| chance)
    }

    /// The same chance by some ages, in months.
    pub(super) fn moved_by(
        &self,
        kind: FasteningKind,
        ages: impl Iterator<Item = f64>,
    ) -> Option<Vec<(f64, Proportion)>> {
        let group = self.kinds.iter().position(|other| *other == kind)?;
        let cloud = self.pool.cloud(group, &[0.0; 3]).ok()?;
        let told = ages.map(|age| {
            let chance = |law: &crate::loosening::Law| law.moved_by(age);
            let (least, most) = cloud.interval(CONFIDENCE, chance);
            let share = cloud.mean(chance);
            (age, Proportion { share, least, most })
        });
        Some(told.collect())
    }

    /// The first day by which a critical terminal is likely to have moved.
    fn first(&self, book: &Book, known: &Known, told: &[KindTold]) -> Option<(NaiveDate, PointId)> {
        let lawful = |kind| {
            told.iter()
                .any(|told| told.kind == kind && told.moved >= FEWEST_MOVED)
        };
        let mut first: Option<(NaiveDate, PointId)> = None;
        for point in book.points.iter().filter(|point| !point.retired) {
            let Some(terminal) = point
                .terminal()
                .filter(|terminal| terminal.role == Role::Power)
            else {
                continue;
            };
            let tight = known.tracks.get(&point.id).and_then(|track| track.tight);
            let Some(tight) = tight.filter(|_| lawful(terminal.fastening.kind)) else {
                continue;
            };
            let level = level(book, known, point);
            let day = self.passes(terminal, tight, level, first.map(|(day, _)| day));
            first = day.map(|day| (day, point.id)).or(first);
        }
        first
    }

    /// The day on which the chance that a terminal has moved passes a level, where that is before
    /// another day.
    fn passes(
        &self,
        terminal: &Terminal,
        tight: Tight,
        level: f64,
        before: Option<NaiveDate>,
    ) -> Option<NaiveDate> {
        let traits = traits(terminal, tight.set, self.ahead, self.middle);
        let cloud: Cloud = self
            .pool
            .cloud(group(self.kinds, terminal)?, &traits)
            .ok()?;
        let held = tight.held.unwrap_or(tight.since);
        let age = months(tight.since, held);
        let over = |ahead: f64| cloud.mean(|law| law.moved_next(age, age + ahead / MONTH)) > level;
        let end = before.map_or(AHEAD, |before| days(held, before) - 1.0);
        if end < 0.0 || !over(end) {
            return None;
        }
        let (mut least, mut most) = (0.0, end);
        while most - least > 1.0 {
            let middle = (0.5 * (least + most)).floor();
            if over(middle) {
                most = middle
            } else {
                least = middle
            }
        }
        add_days(held, most)
    }
}

fn group(kinds: &[FasteningKind], terminal: &Terminal) -> Option<usize> {
    kinds
        .iter()
        .position(|kind| *kind == terminal.fastening.kind)
}

/// Aluminium, found held and not set, and the pace against the middle.
fn traits(terminal: &Terminal, set: bool, pace: Option<f64>, middle: f64) -> Vec<f64> {
    let yes = |so: bool| if so { 1.0 } else { 0.0 };
    vec![
        yes(terminal.wire.material == Material::Aluminium),
        yes(!set),
        pace.map_or(0.0, |pace| pace.max(SLOWEST).ln() - middle),
    ]
}

/// The chance that asks for a look at a point: the least of the rules that hold it, ours where none.
fn level(book: &Book, known: &Known, point: &Point) -> f64 {
    let rules = known
        .rules
        .iter()
        .filter(|rule| rule.reach.holds(book, point));
    let said = rules
        .flat_map(|rule| &rule.limits)
        .filter_map(|limit| match limit {
            Limit::Chance(percent) => Some(*percent),
            _ => None,
        });
    f64::from(said.min().unwrap_or(CHANCE)) / 100.0
}
