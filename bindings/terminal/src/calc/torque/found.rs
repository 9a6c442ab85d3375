//! The advice that comes out.

use crate::calc::shape::{BandOut, HeadOut, TorqueOut, Word};
use baywalk_domain::rig::Terminal;
use baywalk_domain::torque::{
    Action, Advice, Basis, BasisKind, Caution, FoundBy, LeftBy, Missing, TableId, Target, crowded,
    size_outside,
};
use schemars::JsonSchema;
use serde::Serialize;

/// What to do, with which torque, from which source.
#[derive(Debug, Serialize, JsonSchema)]
pub(in crate::calc) struct Found {
    action: Word<Action>,
    found_by: Word<FoundBy>,
    left_by: Word<LeftBy>,
    /// The full value; null where no figure can be trusted.
    target: Option<TargetOut>,
    /// What the tool is set to for the check; null where nothing is checked by torque.
    check: Option<TorqueOut>,
    /// What other tables say: to compare, never to set.
    others: Vec<TargetOut>,
    cautions: Vec<Word<Caution>>,
    missing: Vec<Word<Missing>>,
    /// Whether more conductors are landed than are allowed.
    crowded: bool,
    /// `too_thin` or `too_thick` for the sizes that the terminal is marked for.
    size_outside: Option<&'static str>,
}

/// A torque with its source.
#[derive(Debug, Serialize, JsonSchema)]
struct TargetOut {
    torque: TorqueOut,
    band: Option<BandOut>,
    basis: BasisOut,
}

/// Where a torque comes from.
#[derive(Debug, Serialize, JsonSchema)]
struct BasisOut {
    kind: Word<BasisKind>,
    /// The reference in one line.
    reference: String,
    table: Option<TableOut>,
}

/// The place in a table.
#[derive(Debug, Serialize, JsonSchema)]
struct TableOut {
    id: Word<TableId>,
    head: Option<HeadOut>,
    row: String,
    column: &'static str,
}

impl Found {
    /// Puts an advice in its shape, and beside it what the terminal shows by itself.
    pub(super) fn of(terminal: &Terminal, advice: &Advice) -> Self {
        Self {
            action: Word(advice.action),
            found_by: Word(advice.found_by),
            left_by: Word(advice.left_by),
            target: advice.target.as_ref().map(TargetOut::from),
            check: advice.check.as_ref().map(TorqueOut::from),
            others: advice.others.iter().map(TargetOut::from).collect(),
            cautions: advice.cautions.iter().copied().map(Word).collect(),
            missing: advice.missing.iter().copied().map(Word).collect(),
            crowded: crowded(terminal).is_some(),
            size_outside: size_outside(terminal).map(|found| {
                if found.too_thin {
                    "too_thin"
                } else {
                    "too_thick"
                }
            }),
        }
    }
}

impl From<&Target> for TargetOut {
    fn from(target: &Target) -> Self {
        let table = match &target.basis {
            Basis::Table { table, row, column } => Some(TableOut {
                id: Word(*table),
                head: table.table().map(|table| table.head().into()),
                row: row.clone(),
                column,
            }),
            Basis::Maker { .. } | Basis::Calculation(_) => None,
        };
        Self {
            torque: (&target.torque).into(),
            band: target.band.map(BandOut::from),
            basis: BasisOut {
                kind: Word(target.basis.kind()),
                reference: target.basis.reference(),
                table,
            },
        }
    }
}
