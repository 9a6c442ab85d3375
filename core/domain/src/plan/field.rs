//! The part of a task that a search looks at: some of its bays, and the points that it may choose.

use super::task::Task;

/// A point to take or leave.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Item {
    /// Which bay of the field it is in.
    pub(super) bay: usize,
    /// Which point of the bay it is.
    pub(super) point: usize,
    /// The seconds it takes.
    pub(super) seconds: usize,
    /// What it is worth.
    pub(super) worth: u32,
}

impl Item {
    /// The seconds as a number to reckon with.
    pub(super) fn span(&self) -> u64 {
        u64::try_from(self.seconds).unwrap_or(u64::MAX)
    }
}

/// A bay of a field.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct FieldBay {
    /// Which bay of the task it is.
    pub(super) at: usize,
    /// The seconds that are spent in it whatever is chosen.
    pub(super) fixed: u32,
}

/// Some bays of a task.
#[derive(Debug)]
pub(super) struct Field<'a> {
    pub(super) task: &'a Task,
    pub(super) seconds: u32,
    pub(super) bays: Vec<FieldBay>,
    /// The set of bays that every plan opens, where they can be told as a set.
    pub(super) forced: usize,
    /// The points that may be chosen, by what a second at them is worth, the best first.
    pub(super) items: Vec<Item>,
}

impl<'a> Field<'a> {
    /// Takes some bays of a task, in their order.
    pub(super) fn of(task: &'a Task, which: &[usize], seconds: u32) -> Self {
        let chosen: Vec<_> = which
            .iter()
            .filter_map(|at| task.bays().get(*at).map(|bay| (*at, bay)))
            .collect();
        let mut items = Vec::new();
        let mut forced = 0;
        for (number, (_, bay)) in chosen.iter().enumerate() {
            if bay.is_forced() && number < 64 {
                forced |= 1_usize << number;
            }
            for (point, given) in bay
                .points
                .iter()
                .enumerate()
                .filter(|(_, given)| !given.must)
            {
                items.push(Item {
                    bay: number,
                    point,
                    seconds: index(given.seconds),
                    worth: given.worth,
                });
            }
        }
        let value = |a: &Item, b: &Item| u64::from(a.worth) * b.span();
        items.sort_by(|a, b| value(b, a).cmp(&value(a, b)));
        let bay = |(at, bay): &(usize, &super::task::BayTask)| FieldBay {
            at: *at,
            fixed: bay.fixed(),
        };
        Self {
            task,
            seconds,
            bays: chosen.iter().map(bay).collect(),
            forced,
            items,
        }
    }

    /// Whether every plan opens a bay of the field.
    pub(super) fn is_forced(&self, bay: usize) -> bool {
        self.forced >> bay & 1 == 1
    }

    /// The same field with nothing to choose.
    pub(super) fn without_choice(mut self) -> Self {
        self.items.clear();
        self
    }
}

/// Seconds as a place in a table.
pub(super) fn index(seconds: u32) -> usize {
    usize::try_from(seconds).unwrap_or(usize::MAX)
}
