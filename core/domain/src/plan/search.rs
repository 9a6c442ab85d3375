//! The best set of bays with the best choice in it: sets by what they hold at most, the best first,
//! until no set left can hold more.

use super::field::{Field, Item, index};
use super::knapsack::{choice, most};
use super::ranks::{Open, Range, Ranks};
use super::tour::Tours;

/// What a search found.
#[derive(Debug)]
pub(super) struct Found {
    /// The bays to open, in order; by their place in the field.
    pub(super) order: Vec<usize>,
    /// The points chosen, beside those that must be done.
    pub(super) items: Vec<Item>,
    /// What those points are worth.
    pub(super) worth: u32,
    /// What no choice of points exceeds.
    pub(super) bound: u32,
}

struct Set {
    set: usize,
    seconds: u32,
    range: Range,
}

/// Searches a field of at most 15 bays; `None` where what must be done does not fit.
///
/// `steps` is how many cells of tables may be filled; a search that is cut off tells a bound above
/// what it found.
pub(super) fn search(field: &Field<'_>, mut steps: u64) -> Option<Found> {
    let tours = Tours::of(field);
    let ranks = Ranks::of(field);
    let sets = sets(field, &tours, &ranks);
    let floor = sets.iter().map(|set| set.range.least).max()?;
    let mut best: Option<(&Set, u32)> = None;
    let mut bound = None;
    for set in &sets {
        let beaten = best.map_or(floor.checked_sub(1), |(_, worth)| Some(worth));
        if beaten.is_some_and(|beaten| set.range.most <= beaten) {
            break;
        }
        if steps == 0 && best.is_some() {
            bound = Some(set.range.most);
            break;
        }
        let worth = within(&ranks, set, beaten.unwrap_or(0), &mut steps);
        if beaten.is_none_or(|beaten| worth > beaten) {
            best = Some((set, worth));
        }
    }
    let (set, worth) = best?;
    Some(Found {
        order: tours.order(set.set),
        items: chosen(&ranks, set, worth.saturating_sub(1)),
        worth,
        bound: bound.unwrap_or(worth),
    })
}

/// Every set with what must be opened that fits, the one that may hold most first.
fn sets(field: &Field<'_>, tours: &Tours, ranks: &Ranks<'_>) -> Vec<Set> {
    let all = 0..1_usize << field.bays.len();
    let fits = |set: usize| {
        let spent = tours.fixed(set) + tours.round(set)?;
        let seconds = field.seconds.checked_sub(spent)?;
        let range = ranks.range(set, seconds);
        Some(Set {
            set,
            seconds,
            range,
        })
    };
    let wanted = |set: &usize| set & field.forced == field.forced;
    let mut sets: Vec<Set> = all.filter(wanted).filter_map(fits).collect();
    let floor = sets.iter().map(|set| set.range.least).max().unwrap_or(0);
    sets.retain(|set| set.range.most >= floor);
    sets.sort_by(|a, b| b.range.most.cmp(&a.range.most).then(a.set.cmp(&b.set)));
    sets
}

fn within(ranks: &Ranks<'_>, set: &Set, beaten: u32, steps: &mut u64) -> u32 {
    let (open, seconds) = open(ranks, set, beaten);
    let sure: u32 = open.sure.iter().map(|item| item.worth).sum();
    let Some(seconds) = seconds else {
        return 0;
    };
    let cells = (seconds + 1).saturating_mul(open.items.len() + 1);
    *steps = steps.saturating_sub(u64::try_from(cells).unwrap_or(u64::MAX));
    let row = most(&vec![0; seconds + 1], &open.items);
    sure + row.last().copied().unwrap_or(0)
}

fn chosen(ranks: &Ranks<'_>, set: &Set, beaten: u32) -> Vec<Item> {
    let (open, seconds) = open(ranks, set, beaten);
    let Some(seconds) = seconds else {
        return Vec::new();
    };
    let (mut items, _) = choice(&vec![0; seconds + 1], &open.items, seconds);
    items.extend(open.sure);
    items
}

/// The points to decide, and the seconds that those sure to be in leave; `None` where nothing can
/// beat what is beaten.
fn open(ranks: &Ranks<'_>, set: &Set, beaten: u32) -> (Open, Option<usize>) {
    let open = ranks.open(set.set, &set.range, beaten);
    let sure: usize = open.sure.iter().map(|item| item.seconds).sum();
    let all: usize = open.items.iter().map(|item| item.seconds).sum();
    let seconds = index(set.seconds).checked_sub(sure);
    (open, seconds.map(|seconds| seconds.min(all)))
}
