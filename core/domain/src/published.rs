//! Published tables as data: one readable file each, with a head that says where its values come
//! from.

use crate::coded::{Coded, coded};
use crate::units::{Stated, TorqueUnit};

coded! {
    /// How a published value is known to this project, which has no standard's own text.
    Known as "known" {
        /// Read in a copy or quotation of the standard.
        SecondHand = "second_hand",
        /// From memory of the published standard.
        Memory = "memory",
    }
}

coded! {
    /// How certain the values of a table are.
    Certainty as "certainty" {
        /// Several copies agree.
        High = "high",
        /// One copy, or memory with a check by formula.
        Medium = "medium",
        /// Hearsay.
        Low = "low",
    }
}

coded! {
    /// What the values of a table are good for.
    Standing as "standing" {
        /// Stands in where the part bears no figure of its own.
        Default = "default",
        /// To compare with, never to set by.
        Comparison = "comparison",
        /// Geometry and materials, for calculation.
        Geometry = "geometry",
    }
}

/// Where the values of a table come from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Head {
    /// The standard or document.
    pub standard: &'static str,
    /// The table in it.
    pub table: &'static str,
    /// Its edition.
    pub edition: &'static str,
    /// How the values are known.
    pub known: Known,
    /// How certain they are.
    pub certainty: Certainty,
    /// The unit of the values, by its code.
    pub unit: &'static str,
    /// What they are good for.
    pub standing: Standing,
    /// What else must be known to use them.
    pub note: &'static str,
}

/// A table: its head and its cells as printed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Table {
    head: Head,
    columns: Vec<&'static str>,
    rows: Vec<Vec<&'static str>>,
}

/// Why a data file is no table.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("line {line} of a table can't be read; expected {expected}")]
pub struct TableFault {
    /// The line, counted from 1.
    pub line: usize,
    /// What was expected there.
    pub expected: &'static str,
}

impl Table {
    /// Reads a table: eight head lines `# name: value`, a line of column names, then rows.
    ///
    /// # Errors
    /// [`TableFault`] at the first line that is not so.
    pub fn read(text: &'static str) -> Result<Self, TableFault> {
        let mut lines = text.lines().enumerate();
        let head = read_head(&mut lines)?;
        let fault = |line, expected| TableFault { line, expected };
        let (_, names) = lines.next().ok_or(fault(9, "the column names"))?;
        let columns: Vec<_> = names.split(',').collect();
        let mut rows = Vec::new();
        for (at, line) in lines {
            let row: Vec<_> = line.split(',').collect();
            if row.len() != columns.len() {
                return Err(fault(at + 1, "as many cells as there are columns"));
            }
            rows.push(row);
        }
        Ok(Self {
            head,
            columns,
            rows,
        })
    }

    /// Where the values come from.
    #[must_use]
    pub const fn head(&self) -> &Head {
        &self.head
    }

    /// The names of the columns; the first column names the row.
    #[must_use]
    pub fn columns(&self) -> &[&'static str] {
        &self.columns
    }

    /// The rows, each as wide as [`Table::columns`]; an empty cell is one that the table leaves out.
    pub fn rows(&self) -> impl Iterator<Item = Row<'_>> {
        self.rows.iter().map(|cells| Row { table: self, cells })
    }
}

/// One row of a table.
#[derive(Debug, Clone, Copy)]
pub struct Row<'a> {
    table: &'a Table,
    cells: &'a [&'static str],
}

impl Row<'_> {
    /// The first cell, which names the row.
    #[must_use]
    pub fn name(&self) -> &'static str {
        self.cells.first().copied().unwrap_or("")
    }

    /// The cell of a column, as printed; `None` where the table leaves it out.
    #[must_use]
    pub fn cell(&self, column: &str) -> Option<&'static str> {
        let at = self.table.columns.iter().position(|name| *name == column)?;
        self.cells.get(at).copied().filter(|cell| !cell.is_empty())
    }

    /// The cell of a column as a torque of the table's unit.
    #[must_use]
    pub fn torque(&self, column: &str) -> Option<Stated<TorqueUnit>> {
        let unit = TorqueUnit::from_code(self.table.head.unit).ok()?;
        Stated::parse(self.cell(column)?, unit).ok()
    }

    /// The cell of a column as a plain number.
    #[must_use]
    pub fn number(&self, column: &str) -> Option<f64> {
        self.cell(column)?.parse().ok()
    }
}

type Lines = std::iter::Enumerate<std::str::Lines<'static>>;

fn read_head(lines: &mut Lines) -> Result<Head, TableFault> {
    let mut field = |name: &'static str| {
        let (at, line) = lines.next().unwrap_or((0, ""));
        line.strip_prefix("# ")
            .and_then(|line| line.split_once(": "))
            .filter(|(found, _)| *found == name)
            .map(|(_, value)| (at + 1, value))
            .ok_or(TableFault {
                line: at + 1,
                expected: name,
            })
    };
    Ok(Head {
        standard: field("standard")?.1,
        table: field("table")?.1,
        edition: field("edition")?.1,
        known: code(field("known")?)?,
        certainty: code(field("certainty")?)?,
        unit: field("unit")?.1,
        standing: code(field("standing")?)?,
        note: field("note")?.1,
    })
}

fn code<C: Coded>((line, text): (usize, &str)) -> Result<C, TableFault> {
    C::from_code(text).map_err(|_| TableFault {
        line,
        expected: C::NAME,
    })
}

/// Declares tables and their data files in one place.
macro_rules! tables {
    ($(#[$meta:meta])* $list:ident as $word:literal { $($(#[$doc:meta])* $name:ident = $code:literal from $file:literal),+ $(,)? }) => {
        $crate::coded::coded! {
            $(#[$meta])*
            $list as $word { $($(#[$doc])* $name = $code),+ }
        }

        impl $list {
            /// The data file of the table, as it stands in the source.
            #[must_use]
            pub const fn text(self) -> &'static str {
                match self { $(Self::$name => include_str!($file)),+ }
            }

            /// The table. A file that can't be read gives none, and so no figure.
            #[must_use]
            pub fn table(self) -> Option<&'static $crate::published::Table> {
                use $crate::published::Table;
                use std::sync::LazyLock;
                match self {
                    $(Self::$name => {
                        static TABLE: LazyLock<Option<Table>> =
                            LazyLock::new(|| Table::read($list::$name.text()).ok());
                        TABLE.as_ref()
                    }),+
                }
            }
        }
    };
}
pub(crate) use tables;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_damaged_file_is_refused_with_its_line() {
        let fault = Table::read("# standard: x\n# tabel: y").unwrap_err();
        assert_eq!((fault.line, fault.expected), (2, "table"));
    }
}
