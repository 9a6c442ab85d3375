//! The grades as drawings in a box of 48 by 48: a screw whose slot has turned by the angle it moved,
//! or a wire in a clamp that sits as deep as it held.
//!
//! Only the shape tells the grade; the word stands beside it.

use baywalk_domain::rig::FasteningKind;
use baywalk_domain::walk::{Angle, AsFound, Movement};

/// A drawing: strokes in the order in which they are laid.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Glyph(pub(crate) Vec<Stroke>);

/// One path of a drawing.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Stroke {
    /// The path, in the notation of SVG 1.1 section 8.3.
    pub(crate) path: String,
    /// How it is laid.
    pub(crate) pen: Pen,
    /// Where its origin lies and by how many degrees it is turned, clockwise.
    pub(crate) place: Option<Place>,
}

/// How a path is laid.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Pen {
    /// Filled.
    Fill,
    /// As a line of this width.
    Line(f64),
}

/// A shift of the origin, then a turn in degrees, clockwise.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Place {
    pub(crate) x: f64,
    pub(crate) y: f64,
    pub(crate) turn: f64,
}

/// The mark on the body, at twelve o'clock.
const MARK: &str = "M24,1.5V7.5";
/// A head of radius 15, cut by a slot 5.2 wide.
const HEAD: &str = "M2.6,-14.77A15,15 0 0 1 2.6,14.77ZM-2.6,14.77A15,15 0 0 1 -2.6,-14.77Z";
/// A small head of radius 8.6, cut by a slot 4 wide.
const SMALL_HEAD: &str = "M2,-8.36A8.6,8.6 0 0 1 2,8.36ZM-2,8.36A8.6,8.6 0 0 1 -2,-8.36Z";
/// Where the slot leans when the angle is not known, in degrees.
const UNKNOWN_LEAN: f64 = 40.0;

/// The drawing of what was found at a terminal.
pub(crate) fn found(found: &AsFound, fastening: FasteningKind) -> Glyph {
    let clamp = matches!(
        fastening,
        FasteningKind::PushIn | FasteningKind::SpringClamp | FasteningKind::Lever
    );
    match found {
        AsFound::Held(_) if clamp => clamped(7.0),
        AsFound::Moved(_) if clamp => clamped(16.0),
        AsFound::Loose if clamp => clamped(25.5),
        AsFound::Apart if clamp => clamped(38.0),
        AsFound::Held(_) => held(),
        AsFound::Moved(movement) => moved(angle_of(movement)),
        AsFound::Loose => loose(),
        AsFound::Apart => apart(),
        AsFound::LookedAt { .. } => look(),
        AsFound::OpenedByUs | AsFound::NotJudged { .. } => open(),
    }
}

/// The angle by which a joint turned, where it was seen.
pub(crate) const fn angle_of(movement: &Movement) -> Option<Angle> {
    match movement {
        Movement::Turned { angle, .. } | Movement::MarkOff { angle } => Some(*angle),
        Movement::Began { .. } | Movement::Gave => None,
    }
}

/// Held: the slot in line with the mark.
pub(crate) fn held() -> Glyph {
    Glyph(vec![line(MARK, 4.0), head(0.0)])
}

/// Moved: the slot leans the way the screw came out, and an arc tells how far.
pub(crate) fn moved(angle: Option<Angle>) -> Glyph {
    let degrees = angle.map(|angle| f64::from(angle.degrees()));
    let lean = match angle {
        Some(Angle::Turn) => 0.0,
        _ => degrees.unwrap_or(UNKNOWN_LEAN),
    };
    let mut strokes = vec![line(MARK, 4.0), head(-lean)];
    strokes.extend(degrees.map(arc));
    Glyph(strokes)
}

/// Loose: a small head that rattles in its seat.
pub(crate) fn loose() -> Glyph {
    Glyph(vec![
        line(MARK, 4.0),
        line(
            "M8.5,25A15.5,15.5 0 1 1 39.5,25A15.5,15.5 0 1 1 8.5,25Z",
            2.6,
        ),
        placed(SMALL_HEAD, 27.0, 22.5, 62.0),
    ])
}

/// Apart: the seat empty, the wire lying at its lower left.
pub(crate) fn apart() -> Glyph {
    Glyph(vec![
        line("M30,1.5V7.5", 4.0),
        line(
            "M15.5,25A14.5,14.5 0 1 1 44.5,25A14.5,14.5 0 1 1 15.5,25Z",
            2.6,
        ),
        line("M15,48L9,35", 8.0),
        line("M10.6,35L10.4,24M9,35L5.4,23M7.4,35.6L1,26.5", 2.0),
    ])
}

/// Looked at: a lens.
pub(crate) fn look() -> Glyph {
    Glyph(vec![
        line("M10,22A12,12 0 1 1 34,22A12,12 0 1 1 10,22Z", 2.6),
        line("M31,31L41,41", 4.0),
    ])
}

/// Not judged: a small open ring.
pub(crate) fn open() -> Glyph {
    Glyph(vec![line("M18,25A6,6 0 1 1 30,25A6,6 0 1 1 18,25Z", 2.6)])
}

/// A wire in a clamp, its tip at a depth from 7 (held) to 38 (out).
fn clamped(tip: f64) -> Glyph {
    Glyph(vec![
        line("M14.5,30H7.5V3H40.5V30H33.5", 2.6),
        line("M7.5,9H15M33,9H40.5", 4.0),
        line(&format!("M24,48V{tip}"), 9.0),
    ])
}

/// The arc from the mark to where the slot stands, anticlockwise.
fn arc(degrees: f64) -> Stroke {
    const RADIUS: f64 = 20.5;
    let start = if degrees > 15.0 { 9.0 } else { 3.0 };
    let at = |degrees: f64| {
        let turn = degrees.to_radians();
        (-RADIUS * turn.sin(), -RADIUS * turn.cos())
    };
    let ((x0, y0), (x1, y1)) = (at(start), at(degrees));
    let big = u8::from(degrees - start > 180.0);
    let path = format!("M{x0:.2},{y0:.2}A{RADIUS},{RADIUS} 0 {big} 0 {x1:.2},{y1:.2}");
    Stroke {
        place: Some(Place {
            x: 24.0,
            y: 25.0,
            turn: 0.0,
        }),
        ..line(&path, 3.4)
    }
}

fn head(turn: f64) -> Stroke {
    placed(HEAD, 24.0, 25.0, turn)
}

fn placed(path: &str, x: f64, y: f64, turn: f64) -> Stroke {
    Stroke {
        path: path.to_owned(),
        pen: Pen::Fill,
        place: Some(Place { x, y, turn }),
    }
}

fn line(path: &str, width: f64) -> Stroke {
    Stroke {
        path: path.to_owned(),
        pen: Pen::Line(width),
        place: None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use baywalk_domain::coded::Coded;

    #[test]
    fn the_slot_leans_anticlockwise_by_the_angle_it_moved() {
        for angle in Angle::ALL {
            let Glyph(strokes) = moved(Some(*angle));
            let lean = strokes[1].place.unwrap().turn;
            let told = match angle {
                Angle::Turn => 0.0,
                other => -f64::from(other.degrees()),
            };
            assert!((lean - told).abs() < 1e-9, "{angle:?}");
            assert_eq!(strokes.len(), 3, "the arc tells none from half a turn");
        }
    }

    #[test]
    fn an_angle_that_was_not_seen_is_drawn_without_an_arc() {
        assert_eq!(moved(None).0.len(), 2);
    }

    #[test]
    fn the_arc_of_a_quarter_ends_at_nine_o_clock() {
        let Glyph(strokes) = moved(Some(Angle::Quarter));
        assert!(
            strokes[2].path.ends_with("-20.50,-0.00"),
            "{}",
            strokes[2].path
        );
    }
}
