//! The least box that holds a part.

use crate::{Anchor, Part, Path, Point, Segment, Shape, width_of};

/// A box by its edges.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bounds {
    /// Left edge.
    pub left: f64,
    /// Upper edge.
    pub top: f64,
    /// Right edge.
    pub right: f64,
    /// Lower edge.
    pub bottom: f64,
}

impl Bounds {
    /// Whether two boxes share more than an edge.
    #[must_use]
    pub fn overlaps(&self, other: &Self) -> bool {
        self.left < other.right
            && other.left < self.right
            && self.top < other.bottom
            && other.top < self.bottom
    }

    fn with(&mut self, point: Point) {
        self.left = self.left.min(point.x);
        self.top = self.top.min(point.y);
        self.right = self.right.max(point.x);
        self.bottom = self.bottom.max(point.y);
    }
}

impl Path {
    /// The least box that holds a line of a width along the path, with its butt ends; `None` where
    /// the path has no place. The point of a mitred corner may reach out of it.
    #[must_use]
    pub fn bounds(&self, width: f64) -> Option<Bounds> {
        let none = Bounds {
            left: f64::INFINITY,
            top: f64::INFINITY,
            right: f64::NEG_INFINITY,
            bottom: f64::NEG_INFINITY,
        };
        let (mut bounds, half) = (none, width / 2.0);
        let (mut at, mut start) = (None, None);
        for segment in self.segments() {
            match *segment {
                Segment::Move(to) => (at, start) = (Some(to), Some(to)),
                Segment::Line(to) => straight(&mut bounds, at.replace(to), to, half),
                Segment::Close => {
                    if let Some(to) = start {
                        straight(&mut bounds, at.replace(to), to, half);
                    }
                }
                Segment::Arc {
                    centre,
                    radius,
                    from,
                    sweep,
                } => {
                    let first = centre.at(radius, from);
                    straight(&mut bounds, at, first, half);
                    for radius in [radius - half, radius + half] {
                        arc(&mut bounds, (centre, radius), from, sweep);
                    }
                    at = Some(centre.at(radius, from + sweep));
                }
            }
        }
        (bounds != none).then_some(bounds)
    }
}

/// The four corners of a straight piece; a piece without length has none.
fn straight(bounds: &mut Bounds, from: Option<Point>, to: Point, half: f64) {
    let from = from.unwrap_or(to);
    let (x, y) = (to.x - from.x, to.y - from.y);
    let length = x.hypot(y);
    if length < 1e-9 {
        return;
    }
    let (x, y) = (y / length * half, x / length * half);
    for end in [from, to] {
        bounds.with(Point::new(end.x + x, end.y - y));
        bounds.with(Point::new(end.x - x, end.y + y));
    }
}

impl Part {
    /// The least box that holds the part, half the width of its line included; a label by the room
    /// it takes at most. `None` where there is nothing to see.
    #[must_use]
    pub fn bounds(&self) -> Option<Bounds> {
        match &self.shape {
            Shape::Stroke { path, width, .. } => path.bounds(*width),
            Shape::Fill { path } => path.bounds(0.0),
            Shape::Label(label) => {
                let width = width_of(&label.text, label.size);
                let left = match label.anchor {
                    Anchor::Start => label.x,
                    Anchor::Middle => label.x - width / 2.0,
                    Anchor::End => label.x - width,
                };
                Some(Bounds {
                    left,
                    top: label.y - label.size.height() * 0.78,
                    right: left + width,
                    bottom: label.y + label.size.height() * 0.24,
                })
            }
        }
    }
}

/// Both ends of an arc, and the extremes it passes.
fn arc(bounds: &mut Bounds, (centre, radius): (Point, f64), from: f64, sweep: f64) {
    let (low, high) = (from.min(from + sweep), from.max(from + sweep));
    bounds.with(centre.at(radius, from));
    bounds.with(centre.at(radius, from + sweep));
    let mut quarter = (low / 90.0).ceil() * 90.0;
    while quarter <= high {
        bounds.with(centre.at(radius, quarter));
        quarter += 90.0;
    }
}
