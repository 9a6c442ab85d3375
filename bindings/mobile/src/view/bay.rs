//! A bay: its points in rows, what must stay untouched.

use super::glyph::at;
use super::line::line;
use crate::Picture;
use baywalk_domain::ids::RigId;
use baywalk_domain::rig::{Book, Code, Point};
use baywalk_domain::walk::WalkState;
use baywalk_screens::card::{Line, LineState};
use baywalk_screens::photo::{self, BayPhotoScreen, PinScreen};
use baywalk_screens::rig::{RigScreen, rig as rig_screen};
use baywalk_screens::{Core, Named, Problem};
use baywalk_shapes::pin::{PinState, pin};
use baywalk_shapes::{mesh, sign};

/// A bay as it is shown.
#[derive(Debug, Clone, uniffi::Record)]
pub struct BayView {
    /// Its tag.
    pub tag: String,
    /// Its name.
    pub name: String,
    /// Where it is, and from where it is reached.
    pub place: String,
    /// Whether a walk is open.
    pub walking: bool,
    /// What must stay untouched; empty where nothing is noted.
    pub keep_out: String,
    /// The mesh that marks it.
    pub mesh: Picture,
    /// The line, with the points of the bay on it.
    pub line: Picture,
    /// Its points, in order.
    pub points: Vec<PointRow>,
    /// The photo that shows it, where there is one.
    pub photo: Option<BayPhotoScreen>,
    /// The pins on that photo, drawn.
    pub pins: Vec<PinView>,
}

/// A pin on the photo of a bay; its middle stands at its place.
#[derive(Debug, Clone, uniffi::Record)]
pub struct PinView {
    /// Where it stands, and for which point.
    pub pin: PinScreen,
    /// How it is drawn.
    pub glyph: Picture,
}

/// A point in the list of its bay.
#[derive(Debug, Clone, uniffi::Record)]
pub struct PointRow {
    /// Its name for the machine.
    pub id: String,
    /// Its code, as on its label.
    pub code: String,
    /// What it is called.
    pub name: String,
    /// Where it sits.
    pub place: String,
    /// What was found in this walk; none where it is to do.
    pub grade: Option<Named>,
    /// The same as a glyph in a box of 48.
    pub glyph: Picture,
}

pub(crate) fn bay(core: &Core, rig: RigId, code: &str, width: f64) -> Result<BayView, Problem> {
    let book = core.logbook.shared_book(rig)?;
    let walk = core.logbook.shared_walk(rig)?;
    let missing = || core.no_code(code);
    let named = Code::parse(code).map_err(|_| missing())?;
    let found = book
        .bays
        .iter()
        .find(|bay| bay.code == named && !bay.retired);
    let bay = found.ok_or_else(missing)?;
    let said = said(rig_screen(core, rig)?, core);
    let points = book.points_of(bay.id);
    let photo = photo::of_bay(core, (&book, walk.as_deref()), bay.id);
    let pinned = photo.iter().flat_map(|photo| &photo.pins);
    let pins = pinned.map(|pin| pin_view(pin, (&points, walk.as_deref())));
    let place = [bay.place.clone(), core.words.code(bay.side)];
    Ok(BayView {
        tag: bay.code.to_string(),
        name: bay.name.clone(),
        place: place
            .into_iter()
            .filter(|part| !part.is_empty())
            .collect::<Vec<_>>()
            .join(", "),
        walking: walk.is_some(),
        keep_out: bay.keep_out.clone(),
        mesh: mesh::swatch(48.0, 48.0).into(),
        line: line(&said, (&book, walk.as_deref()), Some(bay.id), None, width),
        points: points
            .iter()
            .map(|point| row(core, (&book, walk.as_deref()), point))
            .collect(),
        pins: pins.collect(),
        photo,
    })
}

/// A pin: filled once its point is gone through in this walk.
fn pin_view(at: &PinScreen, (points, walk): (&[&Point], Option<&WalkState>)) -> PinView {
    let point = points.iter().find(|point| point.code.as_str() == at.code);
    let record = point.and_then(|point| walk?.point(point.id));
    let state = match record {
        Some(record) if record.is_done() => PinState::Done,
        _ => PinState::ToDo,
    };
    PinView {
        glyph: pin(&at.code, state).into(),
        pin: at.clone(),
    }
}

/// What the line says; live where no walk is open.
fn said(screen: RigScreen, core: &Core) -> Line {
    screen.line.unwrap_or_else(|| Line {
        state: LineState::Live,
        words: core.words.say("caution-until-proved"),
    })
}

fn row(core: &Core, (book, walk): (&Book, Option<&WalkState>), point: &Point) -> PointRow {
    let record = walk.and_then(|walk| walk.point(point.id));
    let grade = record.and_then(|record| record.grade());
    let fastening = point.terminal().map(|terminal| terminal.fastening.kind);
    PointRow {
        id: point.id.to_string(),
        code: point.code.to_string(),
        name: core.words.point_name(point.id, book),
        place: point.place.clone(),
        grade: grade.map(|grade| Named::of(&core.words, grade)),
        glyph: grade.map_or_else(|| sign::to_do().into(), |grade| at(grade, fastening)),
    }
}
