//! Tags in rows: pushed apart, never overlapping, their leaders never crossing.

use crate::spread::{Span, spread};

/// Free room between two things in a row.
const GAP: f64 = 3.0;
/// Half the room of a leader that passes a row.
const LEADER: f64 = 0.5;

/// Where a tag stands, and by which way its leader goes there.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Spot {
    /// Its row, the nearest to the rig being 0.
    pub(super) row: usize,
    /// Where its leader passes each nearer row, then the middle of the tag itself.
    pub(super) way: Vec<f64>,
}

/// Arranges tags, each by where its leader starts and half its width, in as few rows as it takes.
/// Neighbours go to different rows in turn; a leader has its own place in each row it passes, so no
/// leader runs into a tag.
pub(super) fn arrange(tags: &[Span], ends: (f64, f64)) -> Vec<Spot> {
    let rows = (1..tags.len()).find(|rows| fits(tags, *rows, ends));
    let rows = rows.unwrap_or(tags.len().max(1));
    let mut spots: Vec<Spot> = (0..tags.len())
        .map(|number| Spot {
            row: number % rows,
            way: Vec::new(),
        })
        .collect();
    for row in 0..rows {
        let mut spans: Vec<Span> = Vec::new();
        for (spot, tag) in spots.iter().zip(tags).filter(|(spot, _)| spot.row >= row) {
            spans.push(Span {
                middle: spot.way.last().copied().unwrap_or(tag.middle),
                half: if spot.row == row { tag.half } else { LEADER },
            });
        }
        spread(&mut spans, ends, GAP);
        let here = spots.iter_mut().filter(|spot| spot.row >= row);
        for (spot, span) in here.zip(spans) {
            spot.way.push(span.middle);
        }
    }
    spots
}

/// Whether every row has room for its tags and for the leaders that pass it.
fn fits(tags: &[Span], rows: usize, (low, high): (f64, f64)) -> bool {
    (0..rows).all(|row| {
        let here = tags
            .iter()
            .enumerate()
            .filter(|(number, _)| number % rows >= row);
        let widths = here.map(|(number, tag)| {
            let half = if number % rows == row {
                tag.half
            } else {
                LEADER
            };
            half * 2.0 + GAP
        });
        widths.sum::<f64>() - GAP <= high - low
    })
}
