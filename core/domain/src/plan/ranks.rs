//! How much a set of bays can hold at most: points by what a second at them is worth, the last one
//! cut where time is out (Dantzig, 1957).
#![expect(
    clippy::indexing_slicing,
    reason = "a numeric kernel over tables of 16 columns, indexed by ranks that were searched for"
)]

use super::field::{Field, Item};

const COLUMNS: usize = 16;
type Row = [u32; COLUMNS];

/// Seconds and worth of the best points of each bay, summed up rank by rank.
pub(super) struct Ranks<'a> {
    items: &'a [Item],
    seconds: Vec<Row>,
    worth: Vec<Row>,
}

/// What a set of bays holds at most and at least within so many seconds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Range {
    /// The rank at which time is out.
    rank: usize,
    /// What the points before that rank are worth.
    pub(super) least: u32,
    /// The seconds that they leave.
    left: u32,
    /// What no choice exceeds.
    pub(super) most: u32,
}

impl<'a> Ranks<'a> {
    /// Sums the points of a field up; a field of at most 16 bays.
    pub(super) fn of(field: &'a Field<'_>) -> Self {
        let mut seconds = vec![[0; COLUMNS]];
        let mut worth = vec![[0; COLUMNS]];
        for (rank, item) in field.items.iter().enumerate() {
            let (mut time, mut value) = (seconds[rank], worth[rank]);
            time[item.bay] += u32::try_from(item.seconds).unwrap_or(u32::MAX);
            value[item.bay] += item.worth;
            seconds.push(time);
            worth.push(value);
        }
        Self {
            items: &field.items,
            seconds,
            worth,
        }
    }

    /// What a set of bays holds within so many seconds.
    pub(super) fn range(&self, set: usize, seconds: u32) -> Range {
        let lanes: Row = std::array::from_fn(|bay| if set >> bay & 1 == 1 { u32::MAX } else { 0 });
        let sum =
            |row: &Row| -> u32 { row.iter().zip(&lanes).map(|(part, lane)| part & lane).sum() };
        let rank = self.seconds.partition_point(|row| sum(row) <= seconds) - 1;
        let least = sum(&self.worth[rank]);
        let left = seconds - sum(&self.seconds[rank]);
        let part = self.items.get(rank).map_or(0, |item| {
            u32::try_from(u64::from(item.worth) * u64::from(left) / item.span()).unwrap_or(u32::MAX)
        });
        Range {
            rank,
            least,
            left,
            most: least + part,
        }
    }

    /// The points of a set that have to be decided one by one to find more than `beaten`: the
    /// others are in, or out, in every choice that is worth more.
    pub(super) fn open(&self, set: usize, range: &Range, beaten: u32) -> Open {
        let mut open = Open::default();
        let Some(cut) = self.items.get(range.rank) else {
            open.sure = self.of_set(set).map(|(_, item)| *item).collect();
            return open;
        };
        let span = cut.span();
        let bound = u64::from(range.least) * span + u64::from(cut.worth) * u64::from(range.left);
        let spare = bound.checked_sub((u64::from(beaten) + 1) * span);
        for (rank, item) in self.of_set(set) {
            let own = u64::from(item.worth) * span;
            let price = u64::from(cut.worth) * item.span();
            if spare.is_some_and(|spare| own.abs_diff(price) <= spare) {
                open.items.push(*item);
            } else if rank < range.rank {
                open.sure.push(*item);
            }
        }
        open
    }

    fn of_set(&self, set: usize) -> impl Iterator<Item = (usize, &Item)> {
        let items = self.items.iter().enumerate();
        items.filter(move |(_, item)| set >> item.bay & 1 == 1)
    }
}

/// The points of a set, sorted by whether they still have to be decided.
#[derive(Debug, Default)]
pub(super) struct Open {
    /// In every better choice.
    pub(super) sure: Vec<Item>,
    /// To be decided.
    pub(super) items: Vec<Item>,
}
