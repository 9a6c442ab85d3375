//! Bay by bay: every point with its torque, as found and as left, then its photos.

use super::view::View;
use super::{as_found, as_left, figure};
use crate::sheet::{Block, Cell};
use baywalk_domain::finding::About;
use baywalk_domain::ids::{BayId, PointId};
use baywalk_domain::rig::{Bay, Point, PointKind, Terminal, Wire};
use baywalk_domain::walk::PointRecord;

pub(super) fn blocks(view: &View<'_>) -> Vec<Block> {
    let mut bays: Vec<&Bay> = view.facts.book.bays.iter().collect();
    bays.sort_by(|a, b| a.station.cmp(&b.station).then_with(|| a.code.cmp(&b.code)));
    let bays = bays.into_iter().flat_map(|bay| of_bay(view, bay));
    let loose = photos(view, &|about| home(view, about).is_none());
    let mut blocks: Vec<Block> = bays.collect();
    blocks.extend(loose);
    blocks
}

fn of_bay(view: &View<'_>, bay: &Bay) -> Vec<Block> {
    let points = points(view, bay.id);
    let count = points.len();
    let rows = points.into_iter().map(|point| row(view, point)).collect();
    let columns = [
        ("report-col-point", 41),
        ("report-col-torque", 26),
        ("report-col-found", 20),
        ("report-col-left", 13),
    ];
    let caption = view.count("report-bay-caption", count);
    let table = view.table(caption, &columns, rows);
    let photos = photos(view, &|about| home(view, about) == Some(bay.id));
    if table.is_none() && photos.is_none() {
        return Vec::new();
    }
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
    let blocks = [
        Some(heading),
        Some(Block::Text(place)),
        keep_out,
        table,
        photos,
    ];
    blocks.into_iter().flatten().collect()
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

fn row(view: &View<'_>, point: &Point) -> Vec<Cell> {
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
    let numbers = photo_numbers(view, point.id);
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

/// The bay that a photo belongs to.
fn home(view: &View<'_>, about: About) -> Option<BayId> {
    let book = view.facts.book;
    match about {
        About::Bay(bay) => Some(bay),
        About::Point(point) => book.point(point).and_then(|point| book.bay_of(point)),
        About::Rig | About::Source(_) | About::Reading(_) => None,
    }
}

fn photo_numbers(view: &View<'_>, point: PointId) -> Vec<String> {
    let photos = view.facts.walk.photos.iter().enumerate();
    let here = photos.filter(|(_, (about, _, _))| *about == About::Point(point));
    here.map(|(place, _)| photo_number(view, place)).collect()
}

fn photo_number(view: &View<'_>, place: usize) -> String {
    view.fill("report-photo", &[("number", &(place + 1).to_string())])
}

/// The photos of a place: number, what it shows, caption, digest.
fn photos(view: &View<'_>, here: &dyn Fn(About) -> bool) -> Option<Block> {
    let photos = view.facts.walk.photos.iter().enumerate();
    let rows = photos.filter(|(_, (about, _, _))| here(*about)).map(
        |(place, (about, digest, caption))| {
            let mut shown = view.about(*about);
            shown.lines.clear();
            vec![
                Cell::of(photo_number(view, place)),
                shown.with([caption.clone(), pins(view, *about, digest)]),
                Cell::default().with([digest.clone()]),
            ]
        },
    );
    let columns = [
        ("report-col-photo", 14),
        ("report-col-shows", 42),
        ("report-col-digest", 44),
    ];
    view.table(view.say("report-photos"), &columns, rows.collect())
}

/// The points that are pinned on a photo of their bay, where this is the one that shows it.
fn pins(view: &View<'_>, about: About, digest: &str) -> String {
    let book = view.facts.book;
    let About::Bay(bay) = about else {
        return String::new();
    };
    let shown = book.bay_photo(bay).filter(|photo| photo.photo == digest);
    let pinned = |point: &&Point| shown.is_some_and(|photo| photo.pin(point.id).is_some());
    let points = book.points_of(bay);
    let codes: Vec<&str> = points
        .iter()
        .copied()
        .filter(pinned)
        .map(|point| point.code.as_str())
        .collect();
    if codes.is_empty() {
        String::new()
    } else {
        view.fill("report-pins", &[("pins", &codes.join(", "))])
    }
}
