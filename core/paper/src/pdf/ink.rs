//! Painting drawings: the parts of core/shapes as paths of a page, in black, grey and white.

use super::size::points;
use baywalk_shapes::{Drawing, Path, Point, Role, Segment, Shape};
use krilla::color::luma;
use krilla::geom::PathBuilder;
use krilla::num::NormalizedF32;
use krilla::paint::{Fill, FillRule, Stroke, StrokeDash};
use krilla::surface::Surface;

/// Black, as text has it.
pub(super) const INK: u8 = 0;
const WHITE: u8 = 255;

/// How dark a role is. A page has no next act: that role is ink.
pub(super) const fn shade(role: Role) -> u8 {
    match role {
        Role::Ink | Role::Next | Role::Caution => INK,
        Role::Detail => 0x41,
        Role::Hair => 0x80,
        Role::Plate | Role::Face | Role::OnNext | Role::OnCaution => WHITE,
    }
}

/// The inside of a path in a shade.
pub(super) fn fill(shade: u8) -> Fill {
    Fill {
        paint: luma::Color::new(shade).into(),
        opacity: NormalizedF32::ONE,
        rule: FillRule::NonZero,
    }
}

/// A line of a width in a shade.
pub(super) fn stroke(shade: u8, width: f32) -> Stroke {
    Stroke {
        paint: luma::Color::new(shade).into(),
        width,
        ..Stroke::default()
    }
}

/// Paints all but the labels of a drawing at the origin, so many points a unit.
pub(super) fn paint(surface: &mut Surface<'_>, drawing: &Drawing, scale: f32) {
    for part in &drawing.parts {
        let shade = shade(part.role);
        let (path, line) = match &part.shape {
            Shape::Fill { path } => (path, None),
            Shape::Stroke { path, width, dash } => {
                let mut line = stroke(shade, points(*width) * scale);
                line.dash = dash.map(|dash| StrokeDash {
                    array: vec![points(dash.on) * scale, points(dash.off) * scale],
                    offset: 0.0,
                });
                (path, Some(line))
            }
            Shape::Label(_) => continue,
        };
        if let Some(path) = outline(path, scale) {
            surface.set_fill(line.is_none().then(|| fill(shade)));
            surface.set_stroke(line);
            surface.draw_path(&path);
        }
    }
}

/// A path in points.
fn outline(path: &Path, scale: f32) -> Option<krilla::geom::Path> {
    let mut pen = Pen {
        builder: PathBuilder::new(),
        at: None,
        start: None,
        scale,
    };
    for segment in path.segments() {
        pen.draw(segment);
    }
    pen.builder.finish()
}

/// Where the pen is, and where its run began.
struct Pen {
    builder: PathBuilder,
    at: Option<Point>,
    start: Option<Point>,
    scale: f32,
}

impl Pen {
    fn draw(&mut self, segment: &Segment) {
        match *segment {
            Segment::Move(to) => self.jump(to),
            Segment::Line(to) => self.line(to),
            Segment::Close => {
                self.builder.close();
                self.at = self.start;
            }
            Segment::Arc {
                centre,
                radius,
                from,
                sweep,
            } => {
                self.line(centre.at(radius, from));
                // Four cubic curves keep within 0.03 % of the radius.
                for quarter in 0..4_u8 {
                    let begin = from + sweep * f64::from(quarter) / 4.0;
                    self.curve(centre, radius, begin, sweep / 4.0);
                }
            }
        }
    }

    fn jump(&mut self, to: Point) {
        let (x, y) = self.place(to);
        self.builder.move_to(x, y);
        self.at = Some(to);
        self.start = Some(to);
    }

    fn line(&mut self, to: Point) {
        let Some(at) = self.at else {
            return self.jump(to);
        };
        if (at.x - to.x).hypot(at.y - to.y) > 0.01 {
            let (x, y) = self.place(to);
            self.builder.line_to(x, y);
            self.at = Some(to);
        }
    }

    /// An arc of at most a quarter of a circle.
    fn curve(&mut self, centre: Point, radius: f64, from: f64, sweep: f64) {
        let reach = (sweep.to_radians() / 4.0).tan() * 4.0 / 3.0 * radius;
        let ends = [from, from + sweep].map(|angle| (centre.at(radius, angle), angle.to_radians()));
        let [(begin, first), (end, last)] = ends;
        let one = Point::new(begin.x - reach * first.sin(), begin.y + reach * first.cos());
        let two = Point::new(end.x + reach * last.sin(), end.y - reach * last.cos());
        let [one, two, to] = [one, two, end].map(|point| self.place(point));
        self.builder
            .cubic_to(one.0, one.1, two.0, two.1, to.0, to.1);
        self.at = Some(end);
    }

    fn place(&self, point: Point) -> (f32, f32) {
        (points(point.x) * self.scale, points(point.y) * self.scale)
    }
}
