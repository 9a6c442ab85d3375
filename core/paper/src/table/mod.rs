//! Tables for spreadsheets and databases: CSV (RFC 4180), one file a table.
//!
//! Columns and codes are the same in every language, as in rig files; text of people stands as it was
//! typed, guarded against being run (see [`guard`]). A number has a point before its fraction.

mod archive;
mod cell;
mod facts;
mod findings;
mod form;
mod lives;
mod photos;
mod points;
mod readings;
mod usage;
mod walks;

pub mod guard;

pub use archive::archive;
pub use cell::Cell;
pub use facts::{RigFacts, WalkFacts, tables};

pub(crate) use points::{as_found, as_left};

/// A table: its columns, and rows of as many cells.
///
/// # Example
/// ```
/// use baywalk_paper::table::{Cell, Table};
/// let rows = vec![[Cell::from(1_u32), Cell::text("=1+1")], [Cell::from(2_u32), Cell::text("-0.5")]];
/// let table = Table::new("notes", &["number", "note"], rows);
/// assert_eq!(table.csv(), "number,note\r\n1,'=1+1\r\n2,-0.5\r\n");
/// ```
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Table {
    /// What it is called; its file is `NAME.csv`.
    pub name: &'static str,
    /// The names of its columns.
    pub columns: &'static [&'static str],
    /// Its rows, each as long as the columns are many.
    pub rows: Vec<Vec<Cell>>,
}

impl Table {
    /// A table whose rows are as long as its columns are many.
    #[must_use]
    pub fn new<const N: usize>(
        name: &'static str,
        columns: &'static [&'static str; N],
        rows: Vec<[Cell; N]>,
    ) -> Self {
        Self {
            name,
            columns,
            rows: rows.into_iter().map(Vec::from).collect(),
        }
    }

    /// The table as CSV: a header, one record a row, each ended by CR LF; UTF-8 without a mark.
    #[must_use]
    pub fn csv(&self) -> String {
        let rows = self
            .rows
            .iter()
            .map(|row| row.iter().map(Cell::written).collect());
        let header = self.columns.iter().map(|name| (*name).to_owned()).collect();
        form::records(std::iter::once(header).chain(rows))
    }
}
