//! The best choice where opening a bay costs once and walking costs a fixed share of each bay, or
//! nothing: one table by the second, bay after bay.
#![expect(
    clippy::indexing_slicing,
    reason = "a numeric kernel over rows of one length, indexed by checked offsets"
)]

use super::field::{Field, Item, index};
use super::knapsack::{choice, most};
use super::search::Found;

/// The best choice within the seconds of a field, each bay costing its share of walking once;
/// `None` where what must be done does not fit.
///
/// With no shares it is the exact optimum of a task without walking; with shares that no round
/// undercuts, its worth is a bound for the task with walking.
pub(super) fn charge(field: &Field<'_>, share: impl Fn(usize) -> u32) -> Option<Found> {
    let costs: Vec<u32> = field
        .bays
        .iter()
        .map(|bay| bay.fixed + share(bay.at))
        .collect();
    let forced = |bay: &usize| field.is_forced(*bay);
    let spent: u32 = (0..costs.len()).filter(forced).map(|bay| costs[bay]).sum();
    let seconds = index(field.seconds.checked_sub(spent)?);
    let cost = |bay: usize| if forced(&bay) { 0 } else { index(costs[bay]) };
    let mut rows = vec![vec![0_u32; seconds + 1]];
    for bay in 0..costs.len() {
        let row = &rows[bay];
        let mut next = row.clone();
        if let Some(left) = row.len().checked_sub(cost(bay)).filter(|left| *left > 0) {
            let within = most(&row[..left], &items_of(field, bay));
            for (best, opened) in next[cost(bay)..].iter_mut().zip(&within) {
                *best = (*best).max(*opened);
            }
        }
        rows.push(next);
    }
    Some(trace(field, &rows, cost))
}

fn items_of(field: &Field<'_>, bay: usize) -> Vec<Item> {
    field
        .items
        .iter()
        .filter(|item| item.bay == bay)
        .copied()
        .collect()
}

/// Reads a best choice back, in the least time that reaches its worth.
fn trace(field: &Field<'_>, rows: &[Vec<u32>], cost: impl Fn(usize) -> usize) -> Found {
    let last = &rows[rows.len() - 1];
    let worth = last.last().copied().unwrap_or(0);
    let mut left = last.partition_point(|within| *within < worth);
    let mut order = Vec::new();
    let mut chosen = Vec::new();
    for bay in (0..rows.len() - 1).rev() {
        let forced = field.is_forced(bay);
        if !forced && rows[bay + 1][left] == rows[bay][left] {
            continue;
        }
        let (items, rest) = choice(&rows[bay], &items_of(field, bay), left - cost(bay));
        left = rest;
        order.push(bay);
        chosen.extend(items);
    }
    order.reverse();
    Found {
        order,
        items: chosen,
        worth,
        bound: worth,
    }
}
