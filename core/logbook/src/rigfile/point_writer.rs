//! Writes the CSV file: one row a point.

use super::drives;
use super::row::COLUMNS;
use baywalk_domain::coded::Coded;
use baywalk_domain::rig::{
    Book, Fastening, Landing, Locking, Material, Nut, Point, PointKind, Recheck, Strands, Terminal,
    ThreadState, Washer,
};
use std::collections::HashMap;

/// The filled cells of a row by their headers.
type Cells = HashMap<&'static str, String>;

/// Writes the points of a book under their header, lines parted by `\n`.
pub(super) fn write(book: &Book) -> String {
    let mut table = csv::WriterBuilder::new().from_writer(Vec::new());
    // Writing to memory does not fail; a row of the header's length is always taken.
    let mut row = |cells: [&str; COLUMNS.len()]| table.write_record(cells).unwrap_or_default();
    row(COLUMNS);
    for point in &book.points {
        let cells = cells(point, book);
        row(COLUMNS.map(|header| cells.get(header).map_or("", String::as_str)));
    }
    let bytes = table.into_inner().unwrap_or_default();
    String::from_utf8(bytes).unwrap_or_default()
}

fn cells(point: &Point, book: &Book) -> Cells {
    let device = book.device(point.device);
    let mut cells = Cells::from([
        ("code", point.code.to_string()),
        ("name", point.name.clone()),
        ("place", point.place.clone()),
        ("note", point.note.clone()),
        (
            "device",
            device.map_or_else(String::new, |d| d.code.to_string()),
        ),
    ]);
    put(&mut cells, "priority", point.priority.map(word));
    yes(&mut cells, "retired", point.retired);
    match &point.kind {
        PointKind::Look(look) => {
            cells.insert("look", look.code().to_owned());
        }
        PointKind::Terminal(terminal) => self::terminal(&mut cells, terminal),
    }
    cells
}

fn terminal(cells: &mut Cells, terminal: &Terminal) {
    put(cells, "set", terminal.set.clone());
    put(cells, "conductor", terminal.conductor.map(word));
    cells.insert("role", word(terminal.role));
    fastening(cells, &terminal.fastening);
    put(
        cells,
        "wire",
        terminal.wire.size.as_ref().map(|size| size.code()),
    );
    listed(cells, "material", terminal.wire.material, Material::Copper);
    listed(cells, "strands", terminal.wire.strands, Strands::Stranded);
    cells.insert("landed", terminal.landed.to_string());
    cells.insert("allowed", terminal.allowed.to_string());
    let range = terminal.range.as_ref();
    let range = range.map(|(least, most)| format!("{} to {}", least.code(), most.code()));
    put(cells, "range", range);
    put(
        cells,
        "current",
        terminal.current.as_ref().map(|current| current.pair()),
    );
    listed(
        cells,
        "thread_state",
        terminal.thread_state,
        ThreadState::Dry,
    );
    if let Some(maker) = &terminal.maker {
        cells.insert("torque", maker.torque.pair());
        cells.insert("torque_basis", word(maker.basis));
        cells.insert("torque_source", maker.source.clone());
        listed(cells, "recheck", maker.recheck, Recheck::Unsaid);
    }
}

fn fastening(cells: &mut Cells, fastening: &Fastening) {
    cells.insert("fastening", word(fastening.kind));
    let thread = fastening.thread.as_ref();
    put(
        cells,
        "thread",
        thread.map(|thread| thread.text().to_owned()),
    );
    cells.insert("drives", drives::write(&fastening.drives));
    listed(cells, "landing", fastening.landing, Landing::Bare);
    listed(cells, "nut", fastening.nut, Nut::None);
    listed(cells, "washer", fastening.washer, Washer::None);
    listed(cells, "locking", fastening.locking, Locking::None);
    put(cells, "grade", fastening.grade.map(word));
    yes(cells, "metal_to_metal", fastening.metal_to_metal);
}

fn word<T: Coded>(value: T) -> String {
    value.code().to_owned()
}

fn put(cells: &mut Cells, header: &'static str, value: Option<String>) {
    if let Some(value) = value {
        cells.insert(header, value);
    }
}

/// Writes a word of a closed list, but for the one that an empty cell stands for.
fn listed<T: Coded>(cells: &mut Cells, header: &'static str, value: T, empty: T) {
    put(cells, header, Some(value).filter(|v| *v != empty).map(word));
}

fn yes(cells: &mut Cells, header: &'static str, value: bool) {
    put(cells, header, value.then(|| "yes".to_owned()));
}
