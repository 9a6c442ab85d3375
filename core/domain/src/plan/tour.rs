//! Shortest rounds over every set of bays (Held and Karp, 1962), cut off where time is out.
#![expect(
    clippy::indexing_slicing,
    reason = "a numeric kernel over tables of 2^n rows and 16 columns, indexed by sets and members"
)]

use super::field::Field;

/// The most bays of an exact round.
pub const MOST_EXACT: usize = 15;
const COLUMNS: usize = 16;
const NEVER: u32 = u32::MAX / 4;
type Row = [u32; COLUMNS];

/// The shortest way from each first bay through the rest of a set to the end, for every set.
pub(super) struct Tours {
    from: Vec<Row>,
    start: Row,
    ways: Vec<Row>,
    fixed: Vec<u32>,
}

/// The members of a set of bays.
pub(super) fn members(set: usize) -> impl Iterator<Item = usize> {
    std::iter::successors(Some(set), |left| Some(left & left.wrapping_sub(1)))
        .take_while(|left| *left != 0)
        .map(|left| left.trailing_zeros() as usize)
}

impl Tours {
    /// Works the table out; a way that can't fit within the seconds of the field is never gone on.
    pub(super) fn of(field: &Field<'_>) -> Self {
        let count = field.bays.len();
        let way = |from: usize| {
            let mut row = [NEVER; COLUMNS];
            for (to, bay) in field.bays.iter().enumerate() {
                row[to] = field.task.leg(from, bay.at + 1);
            }
            row
        };
        let mut tours = Self {
            from: vec![[NEVER; COLUMNS]; 1 << count],
            start: way(0),
            ways: field.bays.iter().map(|bay| way(bay.at + 1)).collect(),
            fixed: vec![0; 1 << count],
        };
        for set in 1_usize..1 << count {
            let first = set.trailing_zeros() as usize;
            tours.fixed[set] = tours.fixed[set & (set - 1)] + field.bays[first].fixed;
        }
        for set in 1_usize..1 << count {
            tours.fill(field, set);
        }
        tours
    }

    fn fill(&mut self, field: &Field<'_>, set: usize) {
        let needed = self.fixed[set | field.forced];
        let Some(left) = field.seconds.checked_sub(needed) else {
            return;
        };
        for first in members(set) {
            let rest = set & !(1 << first);
            let way = if rest == 0 {
                field.task.leg(field.bays[first].at + 1, 0)
            } else {
                let ways = self.ways[first].iter().zip(&self.from[rest]);
                ways.map(|(leg, on)| leg + on).fold(NEVER, u32::min)
            };
            if way <= left {
                self.from[set][first] = way;
            }
        }
    }

    /// The shortest round over a set; `None` where none fits.
    pub(super) fn round(&self, set: usize) -> Option<u32> {
        if set == 0 {
            return Some(0);
        }
        let ways = self.start.iter().zip(&self.from[set]);
        let least = ways.map(|(leg, on)| leg + on).fold(NEVER, u32::min);
        (least < NEVER).then_some(least)
    }

    /// The seconds that a set spends whatever is chosen in it.
    pub(super) fn fixed(&self, set: usize) -> u32 {
        self.fixed[set]
    }

    /// A shortest round: of several, the one that takes the bays nearest the nose first.
    pub(super) fn order(&self, set: usize) -> Vec<usize> {
        let mut order = Vec::new();
        let mut legs = &self.start;
        let mut left = set;
        while left != 0 {
            let length = |next: &usize| legs[*next] + self.from[left][*next];
            let Some(next) = members(left).min_by_key(length) else {
                break;
            };
            order.push(next);
            legs = &self.ways[next];
            left &= !(1 << next);
        }
        order
    }
}
