//! The line: the conductor under the header of every walk screen, with the points of the bay on it.

mod marks;
mod stretch;

pub use marks::PointMark;
pub(crate) use stretch::{blade, stretch};

use crate::label::cut;
use crate::{Anchor, Drawing, Label, Role, Size, width_of};

/// What is known of a conductor.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Power {
    /// Live, or to be treated as live until proved: thick and whole.
    Live,
    /// Dead and proved: thin, with an open blade.
    Dead,
    /// Back, and still to be measured live: hollow.
    Unmeasured,
}

/// Height of the line's box.
const HEIGHT: f64 = 40.0;
/// Where the conductor lies in it.
const MIDDLE: f64 = 25.0;
/// Where the words begin.
const WORDS: f64 = 54.0;
/// Free room at the right of the points.
const MARGIN: f64 = 16.0;

/// The line over a width of at least 200: what is known of the conductor, the caller's words for it
/// (cut where there is no room), and the points of the bay in order, `now` being the one at hand.
/// Where not all points have room, those around `now` are shown. Points stand on a dead line alone.
///
/// # Example
/// ```
/// use baywalk_shapes::line::{PointMark, Power, line};
/// let marks = [PointMark::Held, PointMark::Moved, PointMark::ToDo];
/// let dead = line(360.0, Power::Dead, "only bay F dead", &marks, Some(2));
/// let live = line(360.0, Power::Live, "treat as live", &[], None);
/// assert!(dead.parts.len() > live.parts.len());
/// ```
#[must_use]
pub fn line(
    width: f64,
    power: Power,
    words: &str,
    marks: &[PointMark],
    now: Option<usize>,
) -> Drawing {
    let width = width.max(200.0);
    let mut drawing = Drawing::new(width, HEIGHT);
    let keep = if marks.is_empty() { 24.0 } else { 100.0 };
    let text = cut(words, Size::Tag, width - WORDS - keep);
    let after = WORDS + width_of(&text, Size::Tag) + 4.0;
    match power {
        Power::Dead => blade(&mut drawing, Role::Ink, 2.0, (0.0, WORDS - 6.0), MIDDLE),
        Power::Live | Power::Unmeasured => {
            stretch(&mut drawing, power, (0.0, WORDS - 8.0), MIDDLE);
        }
    }
    drawing.label(
        Role::Ink,
        Label {
            text,
            x: WORDS,
            y: MIDDLE + 5.0,
            anchor: Anchor::Start,
            size: Size::Tag,
        },
    );
    match power {
        Power::Dead => {
            let rest = crate::Path::line((after, MIDDLE), (width, MIDDLE));
            drawing.stroke(Role::Ink, 2.0, rest);
            marks::lay(
                &mut drawing,
                marks,
                now,
                (after + 10.0, width - MARGIN),
                MIDDLE,
            );
        }
        Power::Live | Power::Unmeasured => {
            stretch(&mut drawing, power, (after, width), MIDDLE);
        }
    }
    drawing
}

/// Several stretches of one conductor side by side, as of a proof (live, dead, live again): each by
/// what is known of it and by its share of the width, at least 60 wide in all.
///
/// # Example
/// ```
/// use baywalk_shapes::line::{Power, stretches};
/// let proof = [(Power::Live, 1.0), (Power::Dead, 1.0), (Power::Unmeasured, 1.0)];
/// assert!((stretches(360.0, &proof).width - 360.0).abs() < 1e-9);
/// ```
#[must_use]
pub fn stretches(width: f64, shares: &[(Power, f64)]) -> Drawing {
    let width = width.max(60.0);
    let mut drawing = Drawing::new(width, HEIGHT);
    let whole: f64 = shares.iter().map(|(_, share)| share.max(0.0)).sum();
    let mut from = 0.0;
    for (power, share) in shares.iter().filter(|(_, share)| *share > 0.0) {
        let to = from + width * share / whole;
        stretch(&mut drawing, *power, (from, to), MIDDLE);
        from = to;
    }
    drawing
}
