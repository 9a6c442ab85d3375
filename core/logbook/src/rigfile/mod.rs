//! Rig files: one TOML file for a rig and one CSV file for its points, which a person can write in
//! an editor and a spreadsheet.
//!
//! The format is described for people in `docs/rig-files.md`. Reading gives a whole book or every
//! fault at once with its file, line and column; nothing is stored either way. Writing gives files
//! that read back to the same book.

mod csv_place;
mod device_reader;
mod drives;
mod entry;
mod fault;
mod layouts;
mod patch;
mod point_reader;
mod point_writer;
mod reader;
mod records;
mod rig_reader;
mod rig_writer;
mod row;
mod sink;
mod slot;
mod text;
mod writer;

pub use fault::{Fault, FaultKind, Limit, RecordKind};
pub use layouts::{Layout, bench, layouts};
pub use patch::{PatchFault, add, fields, patch};
pub use reader::read;
pub use text::NamedText;
pub use writer::{Files, write};

/// The number of the format that is read and written.
pub const FORMAT: i64 = 2;

/// The most bytes that one file may have.
pub const MOST_BYTES: usize = 4_000_000;

/// The most points that a rig may have in files.
pub const MOST_POINTS: usize = 5_000;

/// The most sources, bays, devices and tools, each, that a rig may have in files.
pub const MOST_RECORDS: usize = 1_000;

/// The most faults that one file is told of; a file with more is no rig file.
pub const MOST_FAULTS: usize = 1_000;

/// The most columns that a table of points may have.
const MOST_COLUMNS: usize = 100;
