//! Paths in the notation of SVG.

use super::put;
use crate::{Path, Point, Segment};

/// Opens a path element with its data, ready for more attributes.
pub(super) fn open(text: &mut String, path: &Path) {
    text.push_str("<path d=\"");
    let mut pen = Pen::default();
    for segment in path.segments() {
        pen.draw(text, segment);
    }
    text.push('"');
}

/// Where the pen is, and where its run began.
#[derive(Default)]
struct Pen {
    at: Option<Point>,
    start: Option<Point>,
}

impl Pen {
    fn draw(&mut self, text: &mut String, segment: &Segment) {
        match *segment {
            Segment::Move(to) => {
                self.go(text, 'M', to);
                self.start = Some(to);
            }
            Segment::Line(to) => self.line(text, to),
            Segment::Close => {
                text.push('Z');
                self.at = self.start;
            }
            Segment::Arc {
                centre,
                radius,
                from,
                sweep,
            } => {
                let first = centre.at(radius, from);
                if self
                    .at
                    .is_none_or(|at| (at.x - first.x).hypot(at.y - first.y) > 0.01)
                {
                    self.line(text, first);
                }
                // A whole circle has no two ends: it is drawn in halves.
                for half in 1..=2_u8 {
                    let way = sweep * f64::from(half) / 2.0;
                    self.half(text, radius, sweep, centre.at(radius, from + way));
                }
            }
        }
    }

    fn line(&mut self, text: &mut String, to: Point) {
        if self.at.is_some() {
            self.go(text, 'L', to);
        } else {
            self.go(text, 'M', to);
            self.start = Some(to);
        }
    }

    fn half(&mut self, text: &mut String, radius: f64, sweep: f64, to: Point) {
        text.push('A');
        put(text, radius);
        text.push(' ');
        put(text, radius);
        text.push_str(if sweep < 0.0 { " 0 0 0 " } else { " 0 0 1 " });
        self.place(text, to);
    }

    fn go(&mut self, text: &mut String, letter: char, to: Point) {
        text.push(letter);
        self.place(text, to);
    }

    fn place(&mut self, text: &mut String, to: Point) {
        put(text, to.x);
        text.push(' ');
        put(text, to.y);
        self.at = Some(to);
    }
}
