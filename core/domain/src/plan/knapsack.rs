//! The most that fits into so many seconds: a table by the second.
#![expect(
    clippy::indexing_slicing,
    reason = "a numeric kernel over rows of one length, indexed by checked offsets"
)]

use super::field::Item;

/// The next row: the best within each number of seconds, with one more item to take or leave.
fn with_item(row: &[u32], next: &mut [u32], item: &Item) {
    let kept = item.seconds.min(row.len());
    next[..kept].copy_from_slice(&row[..kept]);
    let taken = row.iter().zip(&row[kept..]);
    for (best, (before, left)) in next[kept..].iter_mut().zip(taken) {
        *best = (*left).max(*before + item.worth);
    }
}

/// The best within each number of seconds, on top of a row that has been reached before.
pub(super) fn most(start: &[u32], items: &[Item]) -> Vec<u32> {
    let mut row = start.to_vec();
    let mut next = start.to_vec();
    for item in items {
        with_item(&row, &mut next, item);
        std::mem::swap(&mut row, &mut next);
    }
    row
}

/// The items of a best choice within so many seconds on top of a row, and the seconds that are
/// left for what the row holds.
pub(super) fn choice(start: &[u32], items: &[Item], seconds: usize) -> (Vec<Item>, usize) {
    let mut rows = vec![start[..=seconds].to_vec()];
    for item in items {
        let mut next = vec![0; seconds + 1];
        with_item(&rows[rows.len() - 1], &mut next, item);
        rows.push(next);
    }
    let mut left = seconds;
    let mut taken = Vec::new();
    for (at, item) in items.iter().enumerate().rev() {
        if rows[at + 1][left] != rows[at][left] {
            taken.push(*item);
            left -= item.seconds;
        }
    }
    (taken, left)
}
