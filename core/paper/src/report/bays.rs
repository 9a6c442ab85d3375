//! Bay by bay: every point with its torque, as found and as left, then its photos.

use super::view::View;
use super::{as_found, as_left, figure, photos};
use crate::sheet::{Block, Cell};
use baywalk_domain::ids::BayId;
use baywalk_domain::rig::{Bay, Point, PointKind, Terminal, Wire};
use baywalk_domain::walk::PointRecord;

/// The columns of a table of points.
pub(super) const COLUMNS: [(&str, u8); 4] = [
    ("report-col-point", 41),
    ("report-col-torque", 26),
    ("report-col-found", 20),
    ("report-col-left", 13),
];

pub(super) fn blocks(view: &View<'_>) -> Vec<Block> {
    let mut bays: Vec<&Bay> = view.facts.book.bays.iter().collect();
    bays.sort_by(|a, b| a.station.cmp(&b.station).then_with(|| a.code.cmp(&b.code)));
    let bays = bays.into_iter().flat_map(|bay| of_bay(view, bay));
    let loose = photos::blocks(view, &|about| photos::home(view, about).is_none());
    let mut blocks: Vec<Block> = bays.collect();
    blocks.extend(loose);
    blocks
}

fn of_bay(view: &View<'_>, bay: &Bay) -> Vec<Block> {
    let points = points(view, bay.id);
    let count = points.len();
    let rows = points.into_iter().map(|point| row(view, point)).collect();
    let caption = view.count("report-bay-caption", count);
    let table = view.table(caption, &COLUMNS, rows);
    let photos = photos::blocks(view, &|about| photos::home(view, about) == Some(bay.id));
    if table.is_none() && photos.is_empty() {
        return Vec::new();
    }
    let blocks = heading(view, bay).into_iter().chain(table);
    blocks.chain(photos).collect()
}

/// The bay: tag and name, side and place, and what must stay untouched.
pub(super) fn heading(view: &View<'_>, bay: &Bay) -> Vec<Block> {
    let heading = Block::Heading {
        tag: Some(bay.code.as_str().to_owned()),
        text: bay.name.clone(),
    };
    let place = view.headed(bay.side);
    let place = [place, bay.place.clone()].join("; ");
    let keep_out = (!bay.keep_out.trim().is_empty()).then(|| Block::Caution {
        title: view.say("report-keep-out"),
        lines: vec![bay.keep_out.clone()],
    });
    let blocks = [heading, Block::Text(place)];
    blocks.into_iter().chain(keep_out).collect()
}

/// The points of a bay by code; retired ones only where this walk noted something.
fn points<'a>(view: &View<'a>, bay: BayId) -> Vec<&'a Point> {
    let book = view.facts.book;
    let here = book.points.iter().filter(|point| {
        let told = !point.retired || view.record(point.id).is_some();
        told && book.bay_of(point) == Some(bay)
    });
    let mut points: Vec<&Point> = here.collect();
    points.sort_by(|a, b| a.code.cmp(&b.code));
    points
}

/// One point: what it is, its torque, as found, as left.
pub(super) fn row(view: &View<'_>, point: &Point) -> Vec<Cell> {
    let record = view.record(point.id);
    let none = PointRecord::default();
    let noted = record.unwrap_or(&none);
    let torque = match point.kind {
        PointKind::Terminal(_) => figure::cell(view, point, record),
        PointKind::Look(_) => Cell::default(),
    };
    let left = match point.kind {
        PointKind::Terminal(_) => as_left::cell(view, noted),
        PointKind::Look(_) => Cell::default(),
    };
    let numbers = photos::numbers(view, point.id);
    let found = as_found::cell(view, point, noted).with(numbers);
    vec![name(view, point), torque, found, left]
}

/// Code, name and place, what holds the conductor, and the conductor.
fn name(view: &View<'_>, point: &Point) -> Cell {
    let cell = Cell::of(&point.name)
        .point(point.code.as_str())
        .with([point.place.clone()]);
    let cell = match &point.kind {
        PointKind::Look(kind) => cell.with([view.headed(*kind)]),
        PointKind::Terminal(terminal) => cell.with(holds(view, terminal)),
    };
    let retired = point.retired.then(|| view.say("report-retired"));
    cell.with([point.note.clone()]).with(retired)
}

fn holds(view: &View<'_>, terminal: &Terminal) -> Vec<String> {
    let fastening = view.headed(terminal.fastening.kind);
    let fastening = match &terminal.fastening.thread {
        Some(thread) => format!("{fastening}, {}", thread.text()),
        None => fastening,
    };
    let landed = view.count("report-landed", usize::from(terminal.landed));
    let allowed = terminal.allowed.to_string();
    let landed = view.fill(
        "report-allowed",
        &[("landed", &landed), ("allowed", &allowed)],
    );
    vec![fastening, wire(view, &terminal.wire), landed]
}

fn wire(view: &View<'_>, wire: &Wire) -> String {
    let strands = view.code(wire.strands);
    match &wire.size {
        Some(size) => format!("{}, {}, {strands}", size.code(), view.code(wire.material)),
        None => format!("{}, {strands}", view.headed(wire.material)),
    }
}
