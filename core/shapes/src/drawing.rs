//! A drawing: a box and the parts that lie in it, in order.

use crate::{Label, Path, Role};

/// A drawing.
///
/// # Example
/// ```
/// use baywalk_shapes::{Drawing, Path, Role};
/// let mut drawing = Drawing::new(10.0, 10.0);
/// drawing.stroke(Role::Ink, 2.0, Path::line((0.0, 5.0), (10.0, 5.0)));
/// assert_eq!(drawing.parts.len(), 1);
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Drawing {
    /// Width of the box.
    pub width: f64,
    /// Height of the box.
    pub height: f64,
    /// The parts; later ones lie over earlier ones.
    pub parts: Vec<Part>,
}

/// A part of a drawing.
#[derive(Debug, Clone, PartialEq)]
pub struct Part {
    /// What it is there for.
    pub role: Role,
    /// What is drawn.
    pub shape: Shape,
}

/// What is drawn.
#[derive(Debug, Clone, PartialEq)]
pub enum Shape {
    /// A line along a path, with butt ends and mitred corners.
    Stroke {
        /// The path.
        path: Path,
        /// How wide the line is.
        width: f64,
        /// How it is broken, where it is.
        dash: Option<Dash>,
    },
    /// The inside of a path, each of its runs closed.
    Fill {
        /// The path.
        path: Path,
    },
    /// A short text in one line.
    Label(Label),
}

/// How a line is broken: so long a piece, so long a gap, again and again.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Dash {
    /// Length of a piece.
    pub on: f64,
    /// Length of a gap.
    pub off: f64,
}

impl Drawing {
    /// An empty box.
    #[must_use]
    pub const fn new(width: f64, height: f64) -> Self {
        Self {
            width,
            height,
            parts: Vec::new(),
        }
    }

    /// Adds a whole line; none along a path without segments.
    pub fn stroke(&mut self, role: Role, width: f64, path: Path) {
        self.line(role, width, None, path);
    }

    /// Adds a broken line.
    pub fn dashed(&mut self, role: Role, width: f64, dash: Dash, path: Path) {
        self.line(role, width, Some(dash), path);
    }

    /// Adds a filled path; none for a path without segments.
    pub fn fill(&mut self, role: Role, path: Path) {
        if !path.segments().is_empty() {
            let shape = Shape::Fill { path };
            self.parts.push(Part { role, shape });
        }
    }

    /// Adds a label; none without a text.
    pub fn label(&mut self, role: Role, label: Label) {
        if !label.text.is_empty() {
            let shape = Shape::Label(label);
            self.parts.push(Part { role, shape });
        }
    }

    /// Adds all parts of another drawing with its origin at a place, as large as it is.
    pub fn add(&mut self, other: &Self, x: f64, y: f64) {
        self.parts.extend(other.parts.iter().map(|part| Part {
            role: part.role,
            shape: part.shape.moved(x, y),
        }));
    }

    fn line(&mut self, role: Role, width: f64, dash: Option<Dash>, path: Path) {
        if !path.segments().is_empty() {
            let shape = Shape::Stroke { path, width, dash };
            self.parts.push(Part { role, shape });
        }
    }
}

impl Shape {
    fn moved(&self, x: f64, y: f64) -> Self {
        match self {
            Self::Stroke { path, width, dash } => Self::Stroke {
                path: path.placed(x, y, 1.0),
                width: *width,
                dash: *dash,
            },
            Self::Fill { path } => Self::Fill {
                path: path.placed(x, y, 1.0),
            },
            Self::Label(label) => Self::Label(Label {
                x: label.x + x,
                y: label.y + y,
                ..label.clone()
            }),
        }
    }
}
