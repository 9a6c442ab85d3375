//! Drawings as they cross: strokes, fills and labels, each with its role.

use baywalk_shapes as shapes;

/// A drawing in a box, its parts in order; one unit is one device-independent pixel at scale 1.
#[derive(Debug, Clone, PartialEq, uniffi::Record)]
pub struct Picture {
    /// Width of the box.
    pub width: f64,
    /// Height of the box.
    pub height: f64,
    /// What lies in it, the lowest first.
    pub parts: Vec<Part>,
}

/// One part of a drawing.
#[derive(Debug, Clone, PartialEq, uniffi::Record)]
pub struct Part {
    /// What it is painted as.
    pub role: Role,
    /// Its shape.
    pub shape: Shape,
}

/// What a part is painted as; the shell's theme has a colour for each.
#[derive(Debug, Clone, Copy, PartialEq, Eq, uniffi::Enum)]
pub enum Role {
    /// What is so.
    Ink,
    /// Lines of detail.
    Detail,
    /// Dividing hairlines.
    Hair,
    /// The ground.
    Plate,
    /// The face of what can be pressed.
    Face,
    /// Where the hand goes next.
    Next,
    /// What stands on that.
    OnNext,
    /// The ground of a caution.
    Caution,
    /// What stands on that.
    OnCaution,
}

/// The shape of a part. Strokes have butt ends and mitred corners.
#[derive(Debug, Clone, PartialEq, uniffi::Enum)]
pub enum Shape {
    /// A stroke along a path.
    Stroke {
        /// The path.
        path: Vec<Segment>,
        /// Its width.
        width: f64,
        /// How it is broken, where it is.
        dash: Option<Dash>,
    },
    /// A filled path.
    Fill {
        /// The path.
        path: Vec<Segment>,
    },
    /// A short text.
    Words {
        /// The text.
        label: Label,
    },
}

/// A step along a path: x to the right, y down, degrees clockwise from three o'clock.
#[derive(Debug, Clone, Copy, PartialEq, uniffi::Enum)]
pub enum Segment {
    /// Begins anew at a place.
    Move {
        /// To the right.
        x: f64,
        /// Down.
        y: f64,
    },
    /// Straight to a place.
    Line {
        /// To the right.
        x: f64,
        /// Down.
        y: f64,
    },
    /// Along a circle.
    Arc {
        /// Centre, to the right.
        x: f64,
        /// Centre, down.
        y: f64,
        /// Its radius.
        radius: f64,
        /// Where it begins.
        from: f64,
        /// How far it goes, clockwise.
        sweep: f64,
    },
    /// Back to where it began.
    Close,
}

/// How a stroke is broken.
#[derive(Debug, Clone, Copy, PartialEq, uniffi::Record)]
pub struct Dash {
    /// Length of a stroke.
    pub on: f64,
    /// Length of a gap.
    pub off: f64,
}

/// A short text in one line.
#[derive(Debug, Clone, PartialEq, uniffi::Record)]
pub struct Label {
    /// The text.
    pub text: String,
    /// Where its anchor lies.
    pub x: f64,
    /// Its baseline.
    pub y: f64,
    /// Which part of it lies at `x`.
    pub anchor: Anchor,
    /// Height of the type.
    pub size: f64,
    /// Weight of the type, from 100 to 900.
    pub weight: u16,
}

/// Which part of a text lies at its place.
#[derive(Debug, Clone, Copy, PartialEq, Eq, uniffi::Enum)]
pub enum Anchor {
    /// Its beginning.
    Start,
    /// Its middle.
    Middle,
    /// Its end.
    End,
}

impl From<shapes::Drawing> for Picture {
    fn from(drawing: shapes::Drawing) -> Self {
        Self {
            width: drawing.width,
            height: drawing.height,
            parts: drawing.parts.into_iter().map(Part::from).collect(),
        }
    }
}

impl From<shapes::Part> for Part {
    fn from(part: shapes::Part) -> Self {
        let shape = match part.shape {
            shapes::Shape::Stroke { path, width, dash } => Shape::Stroke {
                path: steps(&path),
                width,
                dash: dash.map(|dash| Dash {
                    on: dash.on,
                    off: dash.off,
                }),
            },
            shapes::Shape::Fill { path } => Shape::Fill { path: steps(&path) },
            shapes::Shape::Label(label) => Shape::Words {
                label: label.into(),
            },
        };
        Self {
            role: part.role.into(),
            shape,
        }
    }
}

fn steps(path: &shapes::Path) -> Vec<Segment> {
    let step = |segment: &shapes::Segment| match *segment {
        shapes::Segment::Move(at) => Segment::Move { x: at.x, y: at.y },
        shapes::Segment::Line(at) => Segment::Line { x: at.x, y: at.y },
        shapes::Segment::Arc {
            centre,
            radius,
            from,
            sweep,
        } => Segment::Arc {
            x: centre.x,
            y: centre.y,
            radius,
            from,
            sweep,
        },
        shapes::Segment::Close => Segment::Close,
    };
    path.segments().iter().map(step).collect()
}

impl From<shapes::Label> for Label {
    fn from(label: shapes::Label) -> Self {
        Self {
            x: label.x,
            y: label.y,
            anchor: match label.anchor {
                shapes::Anchor::Start => Anchor::Start,
                shapes::Anchor::Middle => Anchor::Middle,
                shapes::Anchor::End => Anchor::End,
            },
            size: label.size.height(),
            weight: label.size.weight(),
            text: label.text,
        }
    }
}

impl From<shapes::Role> for Role {
    fn from(role: shapes::Role) -> Self {
        match role {
            shapes::Role::Ink => Self::Ink,
            shapes::Role::Detail => Self::Detail,
            shapes::Role::Hair => Self::Hair,
            shapes::Role::Plate => Self::Plate,
            shapes::Role::Face => Self::Face,
            shapes::Role::Next => Self::Next,
            shapes::Role::OnNext => Self::OnNext,
            shapes::Role::Caution => Self::Caution,
            shapes::Role::OnCaution => Self::OnCaution,
        }
    }
}
