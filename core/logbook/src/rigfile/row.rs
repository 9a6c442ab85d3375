//! The table of points: its header and its rows.

use super::FaultKind;
use super::csv_place::cells;
use super::sink::Sink;
use super::slot::Slot;
use super::{Limit, MOST_COLUMNS, MOST_POINTS};
use std::collections::HashMap;

/// The headers that are known, in the order in which they are written.
pub(super) const COLUMNS: [&str; 32] = [
    "code",
    "device",
    "name",
    "place",
    "look",
    "set",
    "conductor",
    "role",
    "fastening",
    "thread",
    "drives",
    "landing",
    "nut",
    "washer",
    "locking",
    "grade",
    "metal_to_metal",
    "wire",
    "material",
    "strands",
    "landed",
    "allowed",
    "range",
    "current",
    "thread_state",
    "torque",
    "torque_basis",
    "torque_source",
    "recheck",
    "priority",
    "note",
    "retired",
];

/// The headers, from `set` to `recheck`, that say something of a terminal and nothing of a look.
pub(super) const TERMINAL: &[&str] = COLUMNS.split_at(5).1.split_at(24).0;

/// The headers that must be there.
const NEEDED: [&str; 3] = ["code", "device", "name"];

/// Which column has which header.
type Header = HashMap<&'static str, usize>;

/// One row of the table.
pub(super) struct Row<'a> {
    header: &'a Header,
    cells: &'a csv::StringRecord,
    starts: &'a [usize],
    sink: &'a Sink<'a>,
}

impl<'a> Row<'a> {
    /// A cell that is filled.
    pub(super) fn cell(&'a self, header: &'static str) -> Option<Slot<'a>> {
        let index = *self.header.get(header)?;
        let text = self.cells.get(index)?.trim();
        let offset = self.starts.get(index).copied().unwrap_or_default();
        (!text.is_empty()).then_some(Slot {
            field: header,
            offset,
            text,
            sink: self.sink,
        })
    }

    /// A cell that must be filled.
    pub(super) fn need(&'a self, header: &'static str) -> Option<Slot<'a>> {
        let cell = self.cell(header);
        let is_column = self.header.contains_key(header) || !NEEDED.contains(&header);
        if cell.is_none() && is_column {
            self.fault(header, FaultKind::Missing);
        }
        cell
    }

    /// A text that is shown as it stands.
    pub(super) fn words(&'a self, header: &'static str) -> String {
        self.cell(header)
            .map(|slot| slot.owned())
            .unwrap_or_default()
    }

    /// Notes a fault of a cell that may be empty or not there.
    pub(super) fn fault(&self, header: &str, kind: FaultKind) {
        let index = self.header.get(header).copied().unwrap_or_default();
        let start = self.starts.get(index).or(self.starts.first());
        self.sink
            .fault(start.copied().unwrap_or_default(), header, kind);
    }
}

/// Goes through the rows of the table; faults of the table itself are noted in its sink.
pub(super) fn rows(sink: &Sink<'_>, mut each: impl FnMut(&Row<'_>)) {
    let mut reader = csv::ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .from_reader(sink.text().as_bytes());
    let mut cells = csv::StringRecord::new();
    let Some(starts) = next(&mut reader, &mut cells, sink) else {
        NEEDED
            .iter()
            .for_each(|name| sink.fault(0, name, FaultKind::Missing));
        return;
    };
    let Some(header) = header(&cells, &starts, sink) else {
        return;
    };
    let width = cells.len();
    let mut found = 0;
    while let Some(starts) = next(&mut reader, &mut cells, sink) {
        if cells.iter().all(|cell| cell.trim().is_empty()) {
            continue;
        }
        found += 1;
        if found > MOST_POINTS {
            continue;
        }
        if let Some(start) = starts.get(width) {
            let found = cells.len();
            let expected = width;
            sink.fault(*start, "", FaultKind::TooManyCells { found, expected });
        }
        each(&Row {
            header: &header,
            cells: &cells,
            starts: &starts,
            sink,
        });
    }
    super::records::limit(found, MOST_POINTS, Limit::Points, "", sink);
}

/// Reads the next row and finds its cells; `None` at the end.
fn next(
    reader: &mut csv::Reader<&[u8]>,
    record: &mut csv::StringRecord,
    sink: &Sink<'_>,
) -> Option<Vec<usize>> {
    // Text in memory can be read and is UTF-8, so that an error here is the end as well.
    if !reader.read_record(record).unwrap_or(false) {
        return None;
    }
    let from = record.position().map_or(0, csv::Position::byte);
    let found = cells(sink.text(), usize::try_from(from).unwrap_or_default());
    if found.open_quote {
        let last = found.starts.last().copied().unwrap_or_default();
        sink.fault(last, "", FaultKind::OpenQuote);
    }
    Some(found.starts)
}

/// Reads the header; `None` where the rows behind it can't be read by it.
fn header(cells: &csv::StringRecord, starts: &[usize], sink: &Sink<'_>) -> Option<Header> {
    let only = cells.get(0).filter(|_| cells.len() == 1);
    let separator = only.and_then(|line| line.chars().find(|c| matches!(c, ';' | '\t')));
    if let Some(found) = separator {
        sink.fault(0, "", FaultKind::Separator { found });
        return None;
    }
    if cells.len() > MOST_COLUMNS {
        let (what, found, most) = (Limit::Columns, cells.len(), MOST_COLUMNS);
        sink.fault(0, "", FaultKind::TooMany { what, found, most });
        return None;
    }
    let mut header = Header::new();
    for (index, (cell, start)) in cells.iter().zip(starts).enumerate() {
        let cell = cell.trim();
        match COLUMNS.iter().find(|name| **name == cell) {
            None => sink.fault(*start, cell, FaultKind::UnknownField { expected: &COLUMNS }),
            Some(name) if header.contains_key(name) => {
                sink.fault(*start, cell, FaultKind::RepeatedField);
            }
            Some(name) => {
                header.insert(name, index);
            }
        }
    }
    let missing = NEEDED.iter().filter(|name| !header.contains_key(**name));
    missing.for_each(|name| sink.fault(0, name, FaultKind::Missing));
    Some(header)
}
