//! The table of what is taken for granted until a rig's own walks tell better.

use std::sync::LazyLock;

/// A row: quicker quarter, usual, slower quarter.
pub(super) type Row = [u32; 3];

const TEXT: &str = include_str!("pace.csv");

static ROWS: LazyLock<Vec<(&'static str, Row)>> =
    LazyLock::new(|| lines().filter_map(read).collect());

fn lines() -> impl Iterator<Item = &'static str> {
    TEXT.lines().filter(|line| !line.starts_with('#')).skip(1)
}

fn read(line: &'static str) -> Option<(&'static str, Row)> {
    let mut cells = line.split(',');
    let name = cells.next()?;
    let mut number = || cells.next()?.parse().ok();
    Some((name, [number()?, number()?, number()?]))
}

/// The row of a name; a name that is not there takes a second.
pub(super) fn row(name: &str) -> Row {
    let found = ROWS.iter().find(|(known, _)| *known == name);
    found.map_or([1; 3], |(_, row)| *row)
}

/// The usual value of a name.
pub(super) fn usual(name: &str) -> u32 {
    let [_, usual, _] = row(name);
    usual
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::coded::Coded;
    use crate::pace::Step;

    #[test]
    fn each_line_reads_in_order_and_each_step_has_one() {
        assert_eq!(lines().count(), ROWS.len());
        for (name, [quick, usual, slow]) in ROWS.iter() {
            assert!(0 < *quick && quick <= usual && usual <= slow, "{name}");
        }
        for step in Step::ALL {
            assert!(
                ROWS.iter().any(|(name, _)| *name == step.code()),
                "{step:?}"
            );
        }
    }
}
