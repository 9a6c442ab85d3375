//! What had moved, each with its angle drawn.

use super::counts::heading;
use super::view::View;
use super::{as_found, as_left};
use crate::sheet::{Block, Cell};
use baywalk_domain::ids::PointId;
use baywalk_domain::rig::Point;
use baywalk_domain::walk::{Grade, PointRecord};

pub(super) fn blocks(view: &View<'_>) -> Vec<Block> {
    let moved = moved(view);
    let rows: Vec<Vec<Cell>> = moved
        .into_iter()
        .map(|(point, record)| {
            vec![
                view.point(point.id),
                as_found::cell(view, point, record),
                as_left::cell(view, record),
            ]
        })
        .collect();
    let caption = view.count("report-moved-caption", rows.len());
    let columns = [
        ("report-col-point", 34),
        ("report-col-found", 36),
        ("report-col-left", 30),
    ];
    let table = view.table(caption, &columns, rows);
    let none = || Block::Text(view.say("report-moved-none"));
    let mut blocks = vec![heading(view, "report-moved"), table.unwrap_or_else(none)];
    blocks.extend(before(view));
    blocks
}

/// The points that moved, in the order of the bays, retired ones last.
pub(super) fn moved<'a>(view: &View<'a>) -> Vec<(&'a Point, &'a PointRecord)> {
    let book = view.facts.book;
    let bays = book.bays_in_order();
    let place = |point: &Point| {
        let bay = book.bay_of(point);
        let at = bays.iter().position(|known| Some(known.id) == bay);
        at.unwrap_or(bays.len())
    };
    let mut list: Vec<_> = book
        .points
        .iter()
        .filter_map(|point| Some((point, view.record(point.id)?)))
        .filter(|(_, record)| has_moved(record))
        .collect();
    list.sort_by_key(|(point, _)| (place(point), &point.code));
    list
}

fn has_moved(record: &PointRecord) -> bool {
    let grade = record.found.as_ref().map(|found| found.found.grade());
    matches!(grade, Some(Grade::Moved | Grade::Loose | Grade::Apart))
}

/// Points that moved in earlier walks and held in this one, or were not judged.
fn before(view: &View<'_>) -> Option<Block> {
    let again = |point: &PointId| view.record(*point).is_some_and(has_moved);
    let only_then = view.facts.moved_before.iter().filter(|point| !again(point));
    let names: Vec<String> = only_then.map(|point| view.point_name(*point)).collect();
    let points = names.join("; ");
    (!names.is_empty())
        .then(|| Block::Text(view.fill("report-moved-before", &[("points", &points)])))
}
