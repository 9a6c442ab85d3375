//! A card with its pictures.

use super::glyph::glyphs;
use super::line::line;
use super::places::places;
use super::proof::proof;
use super::sources::sources;
use crate::{Glyph, Picture, ShownPair};
use baywalk_domain::coded::Coded;
use baywalk_domain::ids::{BayId, RigId};
use baywalk_domain::rig::{Book, FasteningKind};
use baywalk_domain::torque::BasisKind;
use baywalk_domain::walk::{Next, Outlook, WalkState};
use baywalk_screens::card::{Card, Figure};
use baywalk_screens::step::How;
use baywalk_screens::{Core, Problem, Told};
use baywalk_shapes::frame::{Frame, frame};
use baywalk_shapes::{Size, width_of};

/// A card as it is shown.
#[derive(Debug, Clone, uniffi::Record)]
pub struct CardView {
    /// What it says and the keys that answer it.
    pub card: Card,
    /// The line, with the points of the bay on it.
    pub line: Picture,
    /// The frame of the number, over the width; none where there is no number plate.
    pub plate: Option<Picture>,
    /// The glyphs of keys and answers.
    pub glyphs: Vec<Glyph>,
    /// What the step is about as a drawing: the sources and their bus, or the pairs of a proof.
    pub diagram: Option<Picture>,
    /// The pairs of a proof in rows.
    pub pairs: Vec<ShownPair>,
    /// Where its point is among those of the bay, as on the bay's photo; none where it has no pin.
    pub places: Option<Picture>,
}

/// What became of a pressed key, and the card that stands now.
#[derive(Debug, Clone, uniffi::Record)]
pub struct PressedView {
    /// What became of it.
    pub how: How,
    /// What is told of it; nothing where the card had passed.
    pub told: Option<Told>,
    /// The card that stands now; none where the walk has ended.
    pub view: Option<CardView>,
}

/// Over how much room a card is drawn.
#[derive(Debug, Clone, Copy, PartialEq, uniffi::Record)]
pub struct Room {
    /// Its width, in device-independent pixels.
    pub width: f64,
    /// How much larger than usual the person has text, from 1 on.
    pub scale: f64,
}

/// The margin at both sides of a screen, together.
const MARGINS: f64 = 32.0;
/// Height of the number plate above its strip, and of one line of the words of the basis in that.
const PLATE: (f64, f64) = (124.0, 20.0);
/// Free room beside the words, and above and below them.
const BESIDE: (f64, f64) = (60.0, 12.0);

pub(crate) fn card(core: &Core, rig: RigId, card: Card, room: Room) -> Result<CardView, Problem> {
    let book = core.logbook.shared_book(rig)?;
    let walk = core.logbook.shared_walk(rig)?;
    let next = match &walk {
        Some(walk) => Some(next(core, rig, (&book, walk))?),
        None => None,
    };
    let bay = walk.as_ref().and_then(|walk| walk.open_bays().next());
    let bay = bay.filter(|bay| card.tag.is_some() && is_of(&book, *bay, card.tag.as_deref()));
    let shown = (&*book, walk.as_deref());
    let (diagram, pairs) = match (&walk, &next) {
        (Some(walk), Some(next)) => diagram(core, (&book, walk), next, room.width - MARGINS),
        _ => (None, Vec::new()),
    };
    Ok(CardView {
        line: line(&card.line, shown, bay, card.point.as_deref(), room.width),
        plate: card.figure.as_ref().map(|figure| plate(figure, room)),
        glyphs: glyphs(&card, fastening(&book, card.point.as_deref())),
        places: card.point.as_deref().and_then(|point| places(shown, point)),
        diagram,
        pairs,
        card,
    })
}

fn next(core: &Core, rig: RigId, (book, walk): (&Book, &WalkState)) -> Result<Next, Problem> {
    let moved_running = core.logbook.moved_running(rig)?;
    let practice = core.logbook.practice()?;
    let outlook = Outlook {
        moved_running: &moved_running,
        practice: &practice,
    };
    Ok(walk.next(book, &outlook))
}

fn diagram(
    core: &Core,
    (book, walk): (&Book, &WalkState),
    next: &Next,
    width: f64,
) -> (Option<Picture>, Vec<ShownPair>) {
    match next {
        Next::Isolate(_) | Next::Restore(_) | Next::PowerUp => {
            (Some(sources(core, (book, walk), next, width)), Vec::new())
        }
        Next::Read { device, check } => match book.device(*device) {
            Some(device) => {
                let (picture, pairs) = proof(core, walk, device, check);
                (Some(picture), pairs)
            }
            None => (None, Vec::new()),
        },
        _ => (None, Vec::new()),
    }
}

fn plate(figure: &Figure, room: Room) -> Picture {
    let width = room.width - MARGINS;
    let wanted = width_of(&figure.basis, Size::Tag) * room.scale;
    let lines = (wanted / (width - BESIDE.0)).ceil().clamp(1.0, 8.0);
    let foot = lines * PLATE.1 * room.scale + BESIDE.1;
    let kind = match (figure.frame.as_str(), BasisKind::from_code(&figure.frame)) {
        (_, Ok(basis)) => Frame::from(basis),
        ("leave_alone", _) => Frame::LeaveAlone,
        _ => Frame::Unknown,
    };
    frame(kind, width, PLATE.0 + foot, foot).into()
}

fn fastening(book: &Book, point: Option<&str>) -> Option<FasteningKind> {
    let id = point?.parse().ok()?;
    Some(book.point(id)?.terminal()?.fastening.kind)
}

fn is_of(book: &Book, bay: BayId, tag: Option<&str>) -> bool {
    let code = book.bay(bay).map(|bay| bay.code.as_str());
    code == tag
}
