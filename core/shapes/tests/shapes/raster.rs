//! Drawings as dots, so that shapes can be compared without their colour.

use baywalk_shapes::{Drawing, Path, Point, Role, Segment, Shape};

/// The path as straight pieces, arcs in 48.
pub(crate) fn pieces(path: &Path) -> Vec<(Point, Point)> {
    let (mut pieces, mut at, mut start) = (Vec::new(), None, None);
    let mut go = |at: &mut Option<Point>, to: Point| {
        if let Some(from) = at.replace(to) {
            pieces.push((from, to));
        }
    };
    for segment in path.segments() {
        match *segment {
            Segment::Move(to) => (at, start) = (Some(to), Some(to)),
            Segment::Line(to) => go(&mut at, to),
            Segment::Close => go(&mut at, start.unwrap()),
            Segment::Arc {
                centre,
                radius,
                from,
                sweep,
            } => {
                for step in 0..=48 {
                    let to = centre.at(radius, from + sweep * f64::from(step) / 48.0);
                    go(&mut at, to);
                }
            }
        }
    }
    pieces
}

/// A part as straight pieces: half the width of its line, or none where it is filled.
struct Flat {
    dark: bool,
    half: Option<f64>,
    pieces: Vec<(Point, Point)>,
}

fn flat(drawing: &Drawing) -> Vec<Flat> {
    let parts = drawing.parts.iter().filter_map(|part| {
        let (half, path) = match &part.shape {
            Shape::Stroke { path, width, .. } => (Some(width / 2.0), path),
            Shape::Fill { path } => (None, path),
            Shape::Label(_) => return None,
        };
        let light = [Role::Plate, Role::Face, Role::OnNext, Role::OnCaution];
        Some(Flat {
            dark: !light.contains(&part.role),
            half,
            pieces: pieces(path),
        })
    });
    parts.collect()
}

impl Flat {
    fn covers(&self, at: Point) -> bool {
        let crossed = |(from, to): &&(Point, Point)| {
            (from.y > at.y) != (to.y > at.y)
                && at.x < from.x + (at.y - from.y) / (to.y - from.y) * (to.x - from.x)
        };
        match self.half {
            Some(half) => {
                let near = |(from, to): &(Point, Point)| distance(at, *from, *to) <= half;
                self.pieces.iter().any(near)
            }
            None => self.pieces.iter().filter(crossed).count() % 2 == 1,
        }
    }
}

fn distance(at: Point, from: Point, to: Point) -> f64 {
    let (x, y) = (to.x - from.x, to.y - from.y);
    let length = x * x + y * y;
    let share = if length > 0.0 {
        (((at.x - from.x) * x + (at.y - from.y) * y) / length).clamp(0.0, 1.0)
    } else {
        0.0
    };
    (at.x - from.x - share * x).hypot(at.y - from.y - share * y)
}

/// The drawing's box as rows of dots, one a unit, each dark or not.
pub(crate) fn dots(drawing: &Drawing) -> Vec<bool> {
    let flat = flat(drawing);
    let mut dots = Vec::new();
    let mut y = 0.5;
    while y < drawing.height {
        let mut x = 0.5;
        while x < drawing.width {
            let over = flat.iter().rev().find(|part| part.covers(Point::new(x, y)));
            dots.push(over.is_some_and(|part| part.dark));
            x += 1.0;
        }
        y += 1.0;
    }
    dots
}

/// How many dots differ.
pub(crate) fn difference(one: &[bool], other: &[bool]) -> usize {
    assert_eq!(one.len(), other.len());
    one.iter()
        .zip(other)
        .filter(|(one, other)| one != other)
        .count()
}
