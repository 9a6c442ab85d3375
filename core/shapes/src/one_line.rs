//! The one-line diagram of taking power away: each source, its blade, and the bus.

use crate::count::measure;
use crate::label::cut;
use crate::line::{Power, blade};
use crate::sign::pointer;
use crate::{Anchor, Drawing, Label, Path, Role, Size};
use baywalk_domain::rig::SupplyKind;

/// A source in the diagram.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SourceLine {
    /// Alternating or direct.
    pub supply: SupplyKind,
    /// How it stands.
    pub state: SourceState,
    /// The caller's word for it; may be empty where the shell sets its own beside it.
    pub word: String,
}

/// How a source stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum SourceState {
    /// Connected, or counted as connected: the blade closed and thick.
    Connected,
    /// Taken away: the blade open.
    Away,
    /// Connected, and the next to be taken away.
    Next,
    /// It can't be taken away: no blade at all.
    Fixed,
}

/// Height of a row.
pub const ROW: f64 = 56.0;
/// Where the blades' bus stands.
const BUS: f64 = 92.0;
/// Where a source stands.
const SOURCE: f64 = 18.0;
/// Where the words begin.
const WORDS: f64 = 108.0;

/// The diagram, one row of 56 a source, over a width of at least 100. The bus is as thick as what is
/// known of it: it stays live until it is proved dead, even when the last source is away.
///
/// # Example
/// ```
/// use baywalk_domain::rig::SupplyKind;
/// use baywalk_shapes::line::Power;
/// use baywalk_shapes::one_line::{ROW, SourceLine, SourceState, one_line};
/// let shore = SourceLine { supply: SupplyKind::Ac, state: SourceState::Next, word: "Shore".into() };
/// assert!((one_line(&[shore], Power::Live, 328.0).height - ROW).abs() < 1e-9);
/// ```
#[must_use]
pub fn one_line(sources: &[SourceLine], bus: Power, width: f64) -> Drawing {
    let width = width.max(100.0);
    let height = ROW * measure(sources.len().max(1));
    let mut drawing = Drawing::new(width, height);
    rail(&mut drawing, bus, height);
    for (row, source) in sources.iter().enumerate() {
        let y = ROW * (measure(row) + 0.5);
        symbol(&mut drawing, source.supply, y);
        lead(&mut drawing, source.state, y);
        let label = Label {
            text: cut(&source.word, Size::Body, width - WORDS),
            x: WORDS,
            y: y + Size::Body.drop(),
            anchor: Anchor::Start,
            size: Size::Body,
        };
        drawing.label(Role::Ink, label);
    }
    drawing
}

fn rail(drawing: &mut Drawing, bus: Power, height: f64) {
    let (top, bottom) = (6.0, height - 6.0);
    match bus {
        Power::Live => drawing.stroke(Role::Ink, 8.0, Path::line((BUS, top), (BUS, bottom))),
        Power::Dead => drawing.stroke(Role::Ink, 2.0, Path::line((BUS, top), (BUS, bottom))),
        Power::Unmeasured => {
            let hollow = Path::rectangle(BUS - 3.25, top, 6.5, bottom - top);
            drawing.fill(Role::Plate, hollow.clone());
            drawing.stroke(Role::Ink, 1.5, hollow);
        }
    }
}

/// A circle with a wave for alternating, with a line over dashes for direct.
fn symbol(drawing: &mut Drawing, supply: SupplyKind, y: f64) {
    drawing.stroke(Role::Ink, 2.0, Path::circle(SOURCE, y, 13.0));
    match supply {
        SupplyKind::Ac => {
            let wave = Path::from((SOURCE - 8.0, y))
                .arc((SOURCE - 4.0, y), 4.0, 180.0, 180.0)
                .arc((SOURCE + 4.0, y), 4.0, 180.0, -180.0);
            drawing.stroke(Role::Ink, 2.0, wave);
        }
        SupplyKind::Dc => {
            let whole = Path::line((SOURCE - 7.0, y - 3.0), (SOURCE + 7.0, y - 3.0));
            let broken = [-7.0, -1.7, 3.6].into_iter().fold(whole, |path, x| {
                path.and(Path::line(
                    (SOURCE + x, y + 4.0),
                    (SOURCE + x + 3.4, y + 4.0),
                ))
            });
            drawing.stroke(Role::Ink, 2.2, broken);
        }
    }
}

/// From the source to the bus.
fn lead(drawing: &mut Drawing, state: SourceState, y: f64) {
    let (from, to) = (SOURCE + 13.0, BUS);
    let middle = f64::midpoint(from, to);
    let whole = Path::line((from, y), (to, y));
    match state {
        SourceState::Away => blade(drawing, Role::Ink, 2.0, (from, to), y),
        SourceState::Fixed => drawing.stroke(Role::Ink, 8.0, whole),
        SourceState::Connected | SourceState::Next => {
            drawing.stroke(Role::Ink, 8.0, whole);
            for x in [middle - 11.0, middle + 11.0] {
                drawing.fill(Role::Plate, Path::circle(x, y, 3.2));
            }
        }
    }
    if state == SourceState::Next {
        drawing.fill(Role::Next, pointer(middle, y - 6.0));
    }
}
