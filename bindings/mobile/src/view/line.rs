//! The line under the header, with the points of the bay on it.

use crate::Picture;
use baywalk_domain::ids::BayId;
use baywalk_domain::rig::Book;
use baywalk_domain::walk::WalkState;
use baywalk_screens::card::{Line, LineState};
use baywalk_shapes::line::{PointMark, Power, line as draw};

/// More marks than these can't be told apart: those around the point at hand are drawn.
const MOST_MARKS: usize = 40;

/// The line as a drawing; its words stand beside it, since they grow with the text.
pub(super) fn line(
    said: &Line,
    (book, walk): (&Book, Option<&WalkState>),
    bay: Option<BayId>,
    now: Option<&str>,
    width: f64,
) -> Picture {
    let points = bay.map(|bay| book.points_of(bay)).unwrap_or_default();
    let now = now.and_then(|now| points.iter().position(|point| point.id.to_string() == now));
    let last = points.len().saturating_sub(MOST_MARKS);
    let first = now.unwrap_or(0).saturating_sub(MOST_MARKS / 2).min(last);
    let marks: Vec<PointMark> = points
        .iter()
        .skip(first)
        .take(MOST_MARKS)
        .map(|point| {
            let record = walk.and_then(|walk| walk.point(point.id));
            record
                .and_then(|record| record.grade())
                .map_or(PointMark::ToDo, PointMark::from)
        })
        .collect();
    let now = now.map(|now| now - first);
    draw(width, power(said.state), "", &marks, now).into()
}

pub(super) const fn power(state: LineState) -> Power {
    match state {
        LineState::Live | LineState::Unproved => Power::Live,
        LineState::Dead => Power::Dead,
    }
}
