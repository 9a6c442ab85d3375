//! The frame of a number, which tells where the number comes from.

use crate::mesh::mesh;
use crate::{Dash, Drawing, Path, Role};
use baywalk_domain::torque::{Action, Advice, BasisKind};

/// Where a number comes from, or why there is none.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Frame {
    /// The label on the part: a plate with a double line and two rivets.
    Label,
    /// The maker's document: a sheet with a turned corner.
    Document,
    /// A table of a standard: ruled head and stub.
    Table,
    /// A calculation: dotted.
    Calculation,
    /// Nothing is known: dashed, rivet holes, no figure.
    Unknown,
    /// Leave alone: a border of mesh.
    LeaveAlone,
}

impl Frame {
    /// Every frame.
    pub const ALL: [Self; 6] = [
        Self::Label,
        Self::Document,
        Self::Table,
        Self::Calculation,
        Self::Unknown,
        Self::LeaveAlone,
    ];

    /// The frame of what is advised for a terminal.
    #[must_use]
    pub fn of(advice: &Advice) -> Self {
        if matches!(advice.action, Action::LeaveAlone | Action::Refer) {
            return Self::LeaveAlone;
        }
        let target = advice.target.as_ref();
        target.map_or(Self::Unknown, |target| target.basis.kind().into())
    }
}

impl From<BasisKind> for Frame {
    fn from(basis: BasisKind) -> Self {
        match basis {
            BasisKind::Label => Self::Label,
            BasisKind::Document => Self::Document,
            BasisKind::Table => Self::Table,
            BasisKind::Calculation => Self::Calculation,
        }
    }
}

/// A frame of a size, at least 64 by 40. `foot` is the height of the strip for the words of the
/// basis at its lower edge; 0 for none.
///
/// # Example
/// ```
/// use baywalk_shapes::frame::{Frame, frame};
/// assert_ne!(frame(Frame::Label, 96.0, 48.0, 0.0), frame(Frame::Table, 96.0, 48.0, 0.0));
/// ```
#[must_use]
pub fn frame(kind: Frame, width: f64, height: f64, foot: f64) -> Drawing {
    let (width, height) = (width.max(64.0), height.max(40.0));
    let foot = foot.clamp(0.0, height - 20.0);
    let mut drawing = Drawing::new(width, height);
    let whole = || Path::rectangle(1.0, 1.0, width - 2.0, height - 2.0);
    let rivets = || rivets(width, (height - foot) / 2.0);
    let ink = Role::Ink;
    match kind {
        Frame::Label => {
            drawing.stroke(ink, 2.0, rounded_box(width, height));
            let inner = Path::rectangle(5.0, 5.0, width - 10.0, height - 10.0);
            drawing.stroke(ink, 1.0, inner);
            drawing.stroke(ink, 1.5, rivets());
        }
        Frame::Document => drawing.stroke(ink, 2.0, turned_corner(width, height)),
        Frame::Table => {
            drawing.stroke(ink, 2.0, whole());
            let head = Path::line((1.0, 13.0), (width - 1.0, 13.0));
            let stub = Path::line((28.0, 1.0), (28.0, height - 1.0 - foot));
            drawing.stroke(ink, 1.0, head.and(stub));
        }
        Frame::Calculation => {
            let dots = Dash { on: 2.0, off: 4.0 };
            drawing.dashed(ink, 2.0, dots, whole());
        }
        Frame::Unknown => {
            let dashes = Dash { on: 7.0, off: 5.0 };
            drawing.dashed(ink, 2.0, dashes, rounded_box(width, height));
            drawing.stroke(ink, 1.5, rivets());
        }
        Frame::LeaveAlone => meshed(&mut drawing),
    }
    if foot > 0.0 && kind != Frame::LeaveAlone {
        let inset = if kind == Frame::Label { 5.0 } else { 1.0 };
        let y = height - 1.0 - foot;
        drawing.stroke(ink, 1.0, Path::line((inset, y), (width - inset, y)));
    }
    drawing
}

/// A sheet with its upper right corner turned.
fn turned_corner(width: f64, height: f64) -> Path {
    let (right, bottom, fold) = (width - 1.0, height - 1.0, 16.0);
    let sheet = Path::from((1.0, 1.0))
        .to(right - fold, 1.0)
        .to(right, 1.0 + fold)
        .to(right, bottom)
        .to(1.0, bottom)
        .close();
    let corner = Path::from((right - fold, 1.0))
        .to(right - fold, 1.0 + fold)
        .to(right, 1.0 + fold);
    sheet.and(corner)
}

/// A border of mesh around a free middle.
fn meshed(drawing: &mut Drawing) {
    let (width, height) = (drawing.width, drawing.height);
    let border = if width < 160.0 { 8.0 } else { 13.0 };
    let outer = (1.0, 1.0, width - 2.0, height - 2.0);
    let hole = (border, border, width - border * 2.0, height - border * 2.0);
    let path = mesh(outer, Some(hole), if width < 160.0 { 7.0 } else { 9.0 });
    drawing.stroke(Role::Ink, 1.1, path);
    for (x, y, width, height) in [outer, hole] {
        drawing.stroke(Role::Ink, 2.0, Path::rectangle(x, y, width, height));
    }
}

/// Two rivets, or their holes, left and right.
fn rivets(width: f64, y: f64) -> Path {
    Path::circle(13.0, y, 3.4).and(Path::circle(width - 13.0, y, 3.4))
}

/// The edge of a plate, its corners rounded by 3.
fn rounded_box(width: f64, height: f64) -> Path {
    let (left, top, right, bottom) = (1.0, 1.0, width - 1.0, height - 1.0);
    let middle = (width / 2.0, top);
    let corners = [(right, top), (right, bottom), (left, bottom), (left, top)];
    let corners = corners.map(|corner| (corner, 3.0));
    let mut places = vec![(middle, 0.0)];
    places.extend(corners);
    places.push((middle, 0.0));
    Path::rounded(&places).close()
}
