//! The figure of a dead proof: conductors as nodes, the pairs to read as edges.

use crate::{Anchor, Dash, Drawing, Label, Path, Point, Role, Size, width_of};

/// How a pair stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Pair {
    /// Read dead: a whole line.
    Done,
    /// The one to read now: thick, in the colour of what is next, its nodes filled.
    Now,
    /// Still to read: dotted.
    Open,
}

/// How the nodes stand.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Layout {
    /// The conductors of one set: two side by side, three in a triangle, four in a square, more in
    /// a ring.
    Around,
    /// The lines of two sets, the first so many at the left and the others at the right.
    Facing(usize),
}

/// The figure of the pairs of a set, or of the lines between two sets. `nodes` are the caller's short
/// words for the conductors, in order; `edges` name two of them by their place and tell how the pair
/// stands. An edge to a node that is not there is left out.
///
/// # Example
/// ```
/// use baywalk_shapes::proof::{Layout, Pair, proof};
/// let edges = [(0, 1, Pair::Done), (0, 2, Pair::Now), (1, 2, Pair::Open)];
/// let single_phase = proof(&["L", "N", "G"], &edges, Layout::Around);
/// assert_eq!(single_phase.parts.len(), 3 + 3 * 3);
/// ```
#[must_use]
pub fn proof(nodes: &[&str], edges: &[(usize, usize, Pair)], layout: Layout) -> Drawing {
    let widest = nodes.iter().map(|word| width_of(word, Size::Body));
    let radius = widest.fold(17.0, |radius, width| f64::max(radius, width / 2.0 + 4.0));
    let places = places(nodes.len(), layout, radius);
    let far = |pick: fn(&Point) -> f64| places.iter().map(pick).fold(0.0, f64::max);
    let room = radius + 2.0;
    let mut drawing = Drawing::new(far(|at| at.x) + room, far(|at| at.y) + room);
    // The pair to read now lies over the others.
    let order = [Pair::Open, Pair::Done, Pair::Now];
    for wanted in order {
        for (from, to, pair) in edges.iter().filter(|(_, _, pair)| *pair == wanted) {
            if let (Some(from), Some(to)) = (places.get(*from), places.get(*to)) {
                edge(&mut drawing, *pair, *from, *to);
            }
        }
    }
    for (place, (word, at)) in nodes.iter().zip(&places).enumerate() {
        let now = |(from, to, pair): &(usize, usize, Pair)| {
            *pair == Pair::Now && (*from == place || *to == place)
        };
        node(&mut drawing, word, *at, radius, edges.iter().any(now));
    }
    drawing
}

fn edge(drawing: &mut Drawing, pair: Pair, from: Point, to: Point) {
    let path = Path::line((from.x, from.y), (to.x, to.y));
    match pair {
        Pair::Done => drawing.stroke(Role::Ink, 2.0, path),
        Pair::Now => drawing.stroke(Role::Next, 5.0, path),
        Pair::Open => drawing.dashed(Role::Ink, 2.0, Dash { on: 2.0, off: 5.0 }, path),
    }
}

fn node(drawing: &mut Drawing, word: &str, at: Point, radius: f64, now: bool) {
    let (face, edge, text) = if now {
        (Role::Next, Role::Next, Role::OnNext)
    } else {
        (Role::Face, Role::Ink, Role::Ink)
    };
    drawing.fill(face, Path::circle(at.x, at.y, radius));
    drawing.stroke(edge, 2.0, Path::circle(at.x, at.y, radius));
    let label = Label {
        text: word.to_owned(),
        x: at.x,
        y: at.y + Size::Body.drop(),
        anchor: Anchor::Middle,
        size: Size::Body,
    };
    drawing.label(text, label);
}

/// Where the nodes stand, the first at the upper left.
fn places(count: usize, layout: Layout, radius: f64) -> Vec<Point> {
    let edge = radius + 2.0;
    let (wide, high) = (radius * 2.0 + 50.0, radius * 2.0 + 40.0);
    let spot = |x: f64, y: f64| Point::new(edge + x * wide, edge + y * high);
    match (layout, count) {
        (Layout::Facing(left), _) => {
            let right = count.saturating_sub(left);
            let rows = crate::count::measure(left.max(right).max(1)) - 1.0;
            let column = |x: f64, count: usize| {
                let first = (rows - crate::count::measure(count) + 1.0) / 2.0;
                (0..count).map(move |row| spot(x, first + crate::count::measure(row)))
            };
            column(0.0, left.min(count))
                .chain(column(1.0, right))
                .collect()
        }
        (Layout::Around, 0) => Vec::new(),
        (Layout::Around, 1) => vec![spot(0.0, 0.0)],
        (Layout::Around, 2) => vec![spot(0.0, 0.0), spot(1.0, 0.0)],
        (Layout::Around, 3) => vec![spot(0.0, 0.0), spot(1.0, 0.0), spot(0.5, 0.87)],
        (Layout::Around, 4) => {
            let square = [(0.0, 0.0), (1.0, 0.0), (0.0, 1.0), (1.0, 1.0)];
            square.map(|(x, y)| spot(x, y)).to_vec()
        }
        (Layout::Around, count) => {
            let share = 360.0 / crate::count::measure(count);
            let ring = wide / 2.0 / (share / 2.0).to_radians().sin();
            let middle = Point::new(edge + ring, edge + ring);
            let turn = |place: usize| -90.0 + share * crate::count::measure(place);
            (0..count)
                .map(|place| middle.at(ring, turn(place)))
                .collect()
        }
    }
}
