//! What can be wrong with a rig file, as data.

use baywalk_domain::coded::UnknownCode;
use baywalk_domain::rig::{
    BookFault, Code, CodeFault, FeedFault, TerminalFault, ThreadFault, WireSizeFault,
};
use baywalk_domain::units::{LengthFault, StatedFault};

/// One fault of a rig file and where it stands.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{file}:{line}:{column}: {field}: {kind}")]
pub struct Fault {
    /// The name of the file.
    pub file: String,
    /// The line, from 1.
    pub line: u32,
    /// The column in characters, from 1; of a table's cell, where the cell begins.
    pub column: u32,
    /// The key or the header of the column that it is about; empty where it is about none.
    pub field: String,
    /// What is wrong.
    pub kind: FaultKind,
}

/// The kinds of record that others name by code.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RecordKind {
    /// A source.
    Source,
    /// A bay.
    Bay,
    /// A device.
    Device,
}

/// What there is too much of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Limit {
    /// Bytes of a file.
    Bytes,
    /// Sources, bays, devices or tools.
    Records,
    /// Points of a rig.
    Points,
    /// Columns of the table.
    Columns,
    /// Faults: there are more than were told.
    Faults,
}

/// What is wrong at one place of a rig file: what was found and what was expected.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum FaultKind {
    /// There is more than is read.
    #[error("too many {what:?}: {found}; expected at most {most}")]
    TooMany {
        /// What there is too much of.
        what: Limit,
        /// How many were found; of what is cut off, how many at least.
        found: usize,
        /// How many are read.
        most: usize,
    },
    /// The file is not UTF-8 text.
    #[error("not UTF-8 text")]
    NotUtf8,
    /// The file is not TOML here.
    #[error("not TOML: {detail}")]
    Syntax {
        /// What the TOML parser says, for developers.
        detail: String,
    },
    /// The cells are parted by something else than commas.
    #[error("cells are parted by {found:?}; expected a comma")]
    Separator {
        /// What parts them.
        found: char,
    },
    /// A quotation mark is opened and never closed.
    #[error("a quotation mark is never closed")]
    OpenQuote,
    /// A newer version of the format.
    #[error("format {found}; this reads up to {known}")]
    Newer {
        /// The number found.
        found: i64,
        /// The newest that is known.
        known: i64,
    },
    /// A key or header that is not known here.
    #[error("not known here; expected one of {expected:?}")]
    UnknownField {
        /// The keys or headers that are known here.
        expected: &'static [&'static str],
    },
    /// A header that stands there twice.
    #[error("stands there twice")]
    RepeatedField,
    /// A key, a header or a needed value is not there.
    #[error("missing")]
    Missing,
    /// None of several cells is filled, and one is needed.
    #[error("one of {expected:?} must be filled")]
    MissingOneOf {
        /// The cells of which one is needed.
        expected: &'static [&'static str],
    },
    /// A row has more cells than the header.
    #[error("{found} cells; the header has {expected}")]
    TooManyCells {
        /// The cells of the row.
        found: usize,
        /// The cells of the header.
        expected: usize,
    },
    /// A value of another type than is expected.
    #[error("found {found}; expected {expected}")]
    Type {
        /// The TOML type found.
        found: &'static str,
        /// The TOML type expected.
        expected: &'static str,
    },
    /// A word that is not in the list.
    #[error(transparent)]
    Unknown(#[from] UnknownCode),
    /// A text that is no code of a record.
    #[error(transparent)]
    Code(#[from] CodeFault),
    /// A text that names nothing that a set can be wired to.
    #[error(transparent)]
    Feed(#[from] FeedFault),
    /// A number with its unit that can't be taken.
    #[error(transparent)]
    Quantity(#[from] StatedFault),
    /// A length that can't be taken.
    #[error(transparent)]
    Length(#[from] LengthFault),
    /// A text that names no thread.
    #[error(transparent)]
    Thread(#[from] ThreadFault),
    /// A text that is no conductor size.
    #[error(transparent)]
    WireSize(#[from] WireSizeFault),
    /// A text that is no pair of conductor sizes.
    #[error("{found:?} is no range; expected such as 14 AWG to 6 AWG")]
    Range {
        /// What was found.
        found: String,
    },
    /// A text that is no whole number, or one out of its bounds.
    #[error("{found:?}; expected a whole number from {least} to {most}")]
    Whole {
        /// What was found.
        found: String,
        /// The least that is taken.
        least: i64,
        /// The most that is taken.
        most: i64,
    },
    /// A text that is neither yes nor no.
    #[error("{found:?}; expected yes or no")]
    YesNo {
        /// What was found.
        found: String,
    },
    /// A value that is no day of the calendar.
    #[error("{found:?} is no date; expected such as 2027-03-20")]
    Date {
        /// What was found.
        found: String,
    },
    /// A code that another record has.
    #[error("{code} is taken in {first_file}, line {first_line}")]
    Taken {
        /// The code.
        code: Code,
        /// The file where it stands first.
        first_file: String,
        /// The line where it stands first.
        first_line: u32,
    },
    /// The code of a record that is not there.
    #[error("there is no {what:?} {found}")]
    NoSuch {
        /// What kind of record.
        what: RecordKind,
        /// The code.
        found: Code,
    },
    /// A set that the device does not have.
    #[error("the device has no set {found:?}; it has {expected:?}")]
    NoSuchSet {
        /// What was found.
        found: String,
        /// The sets of the device.
        expected: Vec<String>,
    },
    /// A set's name that stands twice in one device.
    #[error("the device has two sets {found:?}")]
    RepeatedSet {
        /// The name.
        found: String,
    },
    /// A cell is filled that says nothing without another.
    #[error("needs {other:?} beside it")]
    Needs {
        /// The header of the other cell.
        other: &'static str,
    },
    /// A cell is filled that can't stand beside another.
    #[error("can't stand beside {other:?}")]
    Clashes {
        /// The header of the other cell.
        other: &'static str,
    },
    /// A terminal that can't be so.
    #[error(transparent)]
    Terminal(#[from] TerminalFault),
    /// A book that can't be so, in a way that no other fault told.
    #[error(transparent)]
    Book(#[from] BookFault),
}
