//! The advice for one terminal.

use super::caution::cautions;
use super::check::check;
use super::figure::figure;
use super::policy::way;
use super::{Action, Advice, FoundBy, Past, Practice};
use crate::rig::Terminal;

/// Says what to do at a terminal, with which torque, from which source, and what to mind.
///
/// The maker's figure always wins; a table of a standard stands in for listed pressure-wire
/// connectors and for studs and bolts that are metal on metal; a calculation only for steel of a
/// known grade; everything else asks the maker and gets no number.
///
/// # Example
/// ```
/// use baywalk_domain::rig::{Drive, DriveKind, Fastening, FasteningKind, Terminal};
/// use baywalk_domain::torque::{Action, BasisKind, Past, Practice, advise};
/// use baywalk_domain::units::StatedLength;
///
/// let mut terminal = Terminal::of(Fastening::of(FasteningKind::PressureScrew));
/// terminal.fastening.drives.push(Drive {
///     across: Some(StatedLength::parse("3/16 in")?),
///     ..Drive::unsized_of(DriveKind::Allen)
/// });
/// let advice = advise(&terminal, Past::default(), &Practice::default());
/// assert_eq!(advice.action, Action::CheckThenSet);
/// let target = advice.target.ok_or("a socket of 3/16 in stands in table I.3")?;
/// assert_eq!(target.torque.pair(), "120 lbf.in");
/// assert_eq!(target.basis.kind(), BasisKind::Table);
/// assert_eq!(advice.check.map(|check| check.pair()), Some("96 lbf.in".to_owned()));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn advise(terminal: &Terminal, past: Past, practice: &Practice) -> Advice {
    let figure = figure(terminal);
    let way = way(terminal, past, figure.target.is_some());
    let checked = figure
        .target
        .as_ref()
        .filter(|_| way.0 == Action::CheckThenSet)
        .and_then(|target| check(&target.torque, way.1 == FoundBy::FullValue, practice));
    Advice {
        action: way.0,
        found_by: way.1,
        left_by: way.2,
        check: checked,
        cautions: cautions(terminal, past, &figure),
        target: figure.target,
        others: figure.others,
        missing: figure.missing,
    }
}
