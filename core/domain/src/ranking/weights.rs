//! The one table of weights, read from its file.

use super::WeightBasis;
use crate::coded::Coded;
use std::sync::LazyLock;

/// A row of the table.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Weight {
    factor: &'static str,
    pub(super) case: &'static str,
    /// The largest value that falls under the row.
    pub(super) up_to: Option<f64>,
    /// How many hundredths it counts.
    pub(super) hundredths: u32,
    pub(super) basis: WeightBasis,
}

const TEXT: &str = include_str!("weights.csv");

static WEIGHTS: LazyLock<Vec<Weight>> = LazyLock::new(|| rows().filter_map(read).collect());

/// The lines of the table below its head.
fn rows() -> impl Iterator<Item = &'static str> {
    let lines = TEXT.lines().filter(|line| !line.starts_with('#'));
    lines.skip(1)
}

fn read(line: &'static str) -> Option<Weight> {
    let mut cells = line.splitn(6, ',');
    let (factor, case) = (cells.next()?, cells.next()?);
    let number = |cell: &'static str| match cell {
        "" => Some(None),
        cell => cell.parse().ok().map(Some),
    };
    let up_to = number(cells.next()?)?;
    let hundredths = match cells.next()? {
        "" => 100,
        cell => cell.parse().ok()?,
    };
    let basis = WeightBasis::from_code(cells.next()?).ok()?;
    Some(Weight {
        factor,
        case,
        up_to,
        hundredths,
        basis,
    })
}

fn of(factor: &str) -> impl Iterator<Item = &'static Weight> {
    WEIGHTS.iter().filter(move |weight| weight.factor == factor)
}

/// The weight of a case; what the table lacks counts as 1, so that nothing is lost by it.
pub(super) fn weight(factor: &'static str, case: &'static str) -> Weight {
    let found = of(factor).find(|weight| weight.case == case);
    found.copied().unwrap_or(Weight {
        factor,
        case,
        up_to: None,
        hundredths: 100,
        basis: WeightBasis::Ours,
    })
}

/// The band into which a value falls: the first whose end is not below it, else the one without an
/// end. A case that is no band, such as "never", is left out by its name.
pub(super) fn band<C: Coded>(factor: &'static str, value: f64, no_band: &[C]) -> Option<C> {
    let left_out = |case: &str| no_band.iter().any(|none| none.code() == case);
    let mut bands = of(factor).filter(|weight| !left_out(weight.case));
    let found = bands.find(|weight| weight.up_to.is_none_or(|end| value <= end))?;
    C::from_code(found.case).ok()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::ranking::{
        AgeBand, BehindBand, ConductorCase, CurrentBand, DistanceBand, HistoryCase, Nearby,
    };
    use crate::rig::{DeviceKind, FasteningKind, LookKind, Priority};
    use std::collections::BTreeSet;

    fn cases<C: Coded>(factor: &'static str) -> Vec<(&'static str, &'static str)> {
        C::ALL.iter().map(|case| (factor, case.code())).collect()
    }

    #[test]
    fn the_table_has_a_row_for_each_case_and_no_other() {
        let expected = [
            cases::<FasteningKind>("kind"),
            cases::<LookKind>("look"),
            cases::<AgeBand>("age"),
            cases::<DistanceBand>("distance"),
            cases::<HistoryCase>("history"),
            cases::<CurrentBand>("current"),
            cases::<ConductorCase>("conductor"),
            cases::<BehindBand>("behind"),
            cases::<Nearby>("nearby"),
            cases::<Priority>("priority"),
            cases::<DeviceKind>("typical"),
        ];
        let expected: BTreeSet<_> = expected.into_iter().flatten().collect();
        assert_eq!(rows().count(), WEIGHTS.len(), "a row can't be read");
        let found: BTreeSet<_> = WEIGHTS.iter().map(|row| (row.factor, row.case)).collect();
        assert_eq!(found.len(), WEIGHTS.len(), "a row stands twice");
        assert_eq!(found, expected);
        assert!(
            WEIGHTS
                .iter()
                .all(|row| (1..=300).contains(&row.hundredths))
        );
    }

    #[test]
    fn a_value_falls_into_the_first_band_that_holds_it() {
        let age = |days| band("age", days, &[AgeBand::Never]);
        assert_eq!(age(31.0), Some(AgeBand::Month));
        assert_eq!(age(31.5), Some(AgeBand::HalfYear));
        assert_eq!(age(5_000.0), Some(AgeBand::Older));
        assert_eq!(
            band::<CurrentBand>("current", 50.0, &[]),
            Some(CurrentBand::Feeder)
        );
    }
}
