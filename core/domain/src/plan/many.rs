//! More bays than can be searched whole: a good plan, and a bound that tells how good at least.

use super::charge::charge;
use super::field::Field;
use super::search::{Found, search};
use super::task::Task;
use super::tour::MOST_EXACT;

/// Searches the fifteen bays that promise most; the bound covers all of them.
///
/// Half the shortest way into each bay and half the shortest way out of it are spent in any round,
/// so a plan that pays just those shares is worth at least as much as any plan.
///
/// Where more than fifteen bays must be opened, they alone are opened, on a round that is short but
/// not proved to be the shortest.
pub(super) fn many(task: &Task, which: &[usize], steps: u64) -> Option<(Vec<usize>, Found)> {
    let all = Field::of(task, which, task.seconds());
    let share = |bay: usize| {
        let into = nearest(which, bay, |from| task.leg(from, bay + 1));
        let out = nearest(which, bay, |to| task.leg(bay + 1, to));
        (into + out) / 2
    };
    let relaxed = charge(&all, share)?;
    let must = (0..which.len()).filter(|bay| all.is_forced(*bay)).count();
    let kept = if must > MOST_EXACT {
        (0..which.len()).filter(|bay| all.is_forced(*bay)).collect()
    } else {
        promising(&all, &relaxed)
    };
    let kept: Vec<usize> = kept
        .iter()
        .filter_map(|bay| which.get(*bay).copied())
        .collect();
    let mut found = if must > MOST_EXACT {
        along(task, &kept)?
    } else {
        search(&Field::of(task, &kept, task.seconds()), steps)?
    };
    found.bound = relaxed.worth.max(found.worth);
    Some((kept, found))
}

/// The bays that must be opened, then those of the relaxed plan, then the rest by what is in them.
fn promising(all: &Field<'_>, relaxed: &Found) -> Vec<usize> {
    let worth = |bay: usize| -> u32 {
        let items = all.items.iter().filter(|item| item.bay == bay);
        items.map(|item| item.worth).sum()
    };
    let mut bays: Vec<usize> = (0..all.bays.len()).collect();
    bays.sort_by_key(|bay| {
        let chosen = relaxed.order.contains(bay);
        (
            !all.is_forced(*bay),
            !chosen,
            std::cmp::Reverse(worth(*bay)),
        )
    });
    bays.truncate(MOST_EXACT);
    bays.sort_unstable();
    bays
}

/// All of some bays, on a round made shorter by turning parts of it round as long as that helps.
fn along(task: &Task, kept: &[usize]) -> Option<Found> {
    let order = short_round(task, kept);
    let spent = task.round(&order);
    let seconds = task.seconds().checked_sub(spent)?;
    let field = Field::of(task, kept, seconds);
    let mut found = charge(&field, |_| 0)?;
    found.order = order
        .iter()
        .filter_map(|bay| kept.iter().position(|other| other == bay))
        .collect();
    Some(found)
}

/// A round over bays that no turning round of a part makes shorter.
pub(super) fn short_round(task: &Task, bays: &[usize]) -> Vec<usize> {
    let mut order = bays.to_vec();
    let mut length = task.round(&order);
    let pairs = |count: usize| {
        (0..count).flat_map(move |from| (from + 2..=count).map(move |to| (from, to)))
    };
    loop {
        let better = pairs(order.len()).find_map(|(from, to)| {
            let mut turned = order.clone();
            turned.get_mut(from..to)?.reverse();
            let shorter = task.round(&turned);
            (shorter < length).then_some((turned, shorter))
        });
        match better {
            Some((turned, shorter)) => (order, length) = (turned, shorter),
            None => return order,
        }
    }
}

/// The shortest leg between a bay and another of the round, or where the round begins.
fn nearest(which: &[usize], bay: usize, leg: impl Fn(usize) -> u32) -> u32 {
    let others = which
        .iter()
        .filter(|other| **other != bay)
        .map(|other| other + 1);
    others.chain([0]).map(leg).min().unwrap_or(0)
}
