//! What is advised for one terminal, as typed values.

use super::{Action, Calculation, Caution, FoundBy, LeftBy, Missing, TableId};
use crate::coded::{Coded, coded};
use crate::rig::TorqueBasis;
use crate::units::{Stated, Torque, TorqueUnit};

coded! {
    /// Where a figure comes from.
    BasisKind as "basis-kind" {
        /// The label on the part.
        Label = "label",
        /// The maker's document.
        Document = "document",
        /// A named table of a standard.
        Table = "table",
        /// A calculation.
        Calculation = "calculation",
    }
}

/// Where a figure comes from, with what is needed to find it again.
#[derive(Debug, Clone, PartialEq)]
pub enum Basis {
    /// The maker of the part.
    Maker {
        /// Label or document.
        read: TorqueBasis,
        /// Which one, in the owner's words.
        source: String,
    },
    /// A table of a standard.
    Table {
        /// The table; its head names standard, edition, how it is known and how certain.
        table: TableId,
        /// The row that was taken, in the table's own words.
        row: String,
        /// The column that was taken.
        column: &'static str,
    },
    /// T = K·D·F.
    Calculation(Calculation),
}

impl Basis {
    /// The kind of basis.
    #[must_use]
    pub const fn kind(&self) -> BasisKind {
        match self {
            Self::Maker {
                read: TorqueBasis::Label,
                ..
            } => BasisKind::Label,
            Self::Maker {
                read: TorqueBasis::Document,
                ..
            } => BasisKind::Document,
            Self::Table { .. } => BasisKind::Table,
            Self::Calculation(_) => BasisKind::Calculation,
        }
    }

    /// The reference that is kept beside the figure: the owner's words for a label or document,
    /// standard, table, edition, row and column for a table, the short form for a calculation.
    #[must_use]
    pub fn reference(&self) -> String {
        match self {
            Self::Maker { source, .. } => source.clone(),
            Self::Table { table, row, column } => {
                let column = column.replace('_', " ");
                match table.table().map(crate::published::Table::head) {
                    Some(head) => format!(
                        "{}, {}, {}: {row}, {column}",
                        head.standard, head.table, head.edition
                    ),
                    None => format!("{}: {row}, {column}", table.code()),
                }
            }
            Self::Calculation(bolt) => format!(
                "T = K D F: K {}, D {} mm, F {:.0} N",
                bolt.factor.typical, bolt.diameter_mm, bolt.preload_n
            ),
        }
    }
}

/// The spread of a figure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Band {
    /// The lowest.
    pub lowest: Torque,
    /// The highest.
    pub highest: Torque,
}

/// The full value to which a terminal is set.
#[derive(Debug, Clone, PartialEq)]
pub struct Target {
    /// The figure in its own unit, as printed or typed.
    pub torque: Stated<TorqueUnit>,
    /// Its spread, where the basis has one.
    pub band: Option<Band>,
    /// Where it comes from.
    pub basis: Basis,
}

/// What is advised for one terminal.
///
/// `check` is there only where checking by torque is right; `target` is what to set once it is to
/// be set or was made anew, so it may be there where nothing is checked.
#[derive(Debug, Clone, PartialEq)]
pub struct Advice {
    /// What to do.
    pub action: Action,
    /// How it is looked at first.
    pub found_by: FoundBy,
    /// How it is set right, if it needs to be.
    pub left_by: LeftBy,
    /// The full value, where one can be trusted.
    pub target: Option<Target>,
    /// What the tool is set to for the check, in the unit of the target: the share that the
    /// practice names (our rule), or with [`FoundBy::FullValue`] the maker's full value.
    pub check: Option<Stated<TorqueUnit>>,
    /// What other published tables say of such a part: to compare, never to set.
    pub others: Vec<Target>,
    /// What to mind, the gravest first.
    pub cautions: Vec<Caution>,
    /// What is not known and would settle it.
    pub missing: Vec<Missing>,
}
