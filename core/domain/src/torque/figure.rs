//! The full value of a terminal, by precedence: label, maker's document, table, calculation
//! (NEC 110.3(B) and 110.14(D), second hand).

use super::{Basis, Missing, Target, connector, stud};
use crate::published::Standing;
use crate::rig::{MakerTorque, Terminal, ThreadState};

/// What is found for a terminal.
#[derive(Debug, Default)]
pub(super) struct Figure {
    /// The full value.
    pub(super) target: Option<Target>,
    /// What else is published, to compare.
    pub(super) others: Vec<Target>,
    /// What would settle it.
    pub(super) missing: Vec<Missing>,
}

/// Finds the full value.
pub(super) fn figure(terminal: &Terminal) -> Figure {
    if !terminal.fastening.kind.takes_torque() {
        return Figure::default();
    }
    if terminal.thread_state == ThreadState::Greased {
        let maker = terminal.maker.is_none().then_some(Missing::MakerTorque);
        return Figure {
            missing: maker.into_iter().chain([Missing::DryThread]).collect(),
            ..Figure::default()
        };
    }
    let (tables, missing) = published(terminal);
    let mut others = comparisons(terminal);
    if let Some(maker) = &terminal.maker {
        others.splice(0..0, tables);
        return Figure {
            target: Some(by_maker(maker)),
            others,
            missing: Vec::new(),
        };
    }
    let (target, rest) = lowest(tables);
    others.splice(0..0, rest);
    let calculated = || {
        stud::covers(terminal)
            .then(|| stud::calculated(&terminal.fastening))
            .flatten()
    };
    let target = target.or_else(calculated);
    Figure {
        missing: unsettled(target.as_ref(), missing),
        target,
        others,
    }
}

fn by_maker(maker: &MakerTorque) -> Target {
    Target {
        torque: maker.torque.clone(),
        band: None,
        basis: Basis::Maker {
            read: maker.basis,
            source: maker.source.clone(),
        },
    }
}

/// What tables give that stand in for a missing figure, and what they would need.
fn published(terminal: &Terminal) -> (Vec<Target>, Vec<Missing>) {
    if connector::covers(terminal) {
        return match connector::connector(terminal) {
            Ok(target) => (vec![target], Vec::new()),
            Err(_) => (Vec::new(), connector::gaps(terminal)),
        };
    }
    if stud::covers(terminal) {
        let tables = stud::published(&terminal.fastening, Standing::Default);
        return (tables, stud::gaps(&terminal.fastening));
    }
    (Vec::new(), Vec::new())
}

/// What makers and type tests say of such parts.
fn comparisons(terminal: &Terminal) -> Vec<Target> {
    if stud::covers(terminal) {
        stud::published(&terminal.fastening, Standing::Comparison)
    } else {
        stud::metric_screw(&terminal.fastening)
    }
}

/// The lowest of several tables, and the others; they are never blended.
fn lowest(mut tables: Vec<Target>) -> (Option<Target>, Vec<Target>) {
    tables.sort_by(|one, other| {
        let torque = |target: &Target| target.torque.quantity().newton_metres();
        torque(one).total_cmp(&torque(other))
    });
    let mut tables = tables.into_iter();
    (tables.next(), tables.collect())
}

/// What would settle the figure: the maker's own, and what the tables lack.
fn unsettled(target: Option<&Target>, tables: Vec<Missing>) -> Vec<Missing> {
    match target.map(|target| &target.basis) {
        Some(Basis::Calculation(_)) => vec![Missing::MakerTorque],
        Some(_) => Vec::new(),
        None => [Missing::MakerTorque].into_iter().chain(tables).collect(),
    }
}
