//! A bay's own photo, and pins where its points are.

use crate::{Core, Problem, Told};
use baywalk_domain::finding::About;
use baywalk_domain::ids::{BayId, RigId};
use baywalk_domain::rig::{BayPhoto, Book, BookChange, Code, CodeOwner, Pin};
use baywalk_domain::walk::{Act, WalkState};
use serde::Serialize;

/// The photo that shows a bay, as a shell draws it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct BayPhotoScreen {
    /// The file of the photo; none where it is missing from its folder.
    pub path: Option<String>,
    /// The digest that names it.
    pub digest: String,
    /// What it shows, for those who do not see it.
    pub words: String,
    /// The pins of the points in use.
    pub pins: Vec<PinScreen>,
    /// What can be shown in its place, where the open walk has a newer photo of the bay.
    pub newer: Option<String>,
}

/// A pin on a photo.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct PinScreen {
    /// The code of its point.
    pub code: String,
    /// Thousandths of the photo's width, from the left.
    pub across: u16,
    /// Thousandths of the photo's height, from the top.
    pub down: u16,
}

/// The photo that shows a bay: the one it was given, else the newest of the open walk.
#[must_use]
pub fn of_bay(
    core: &Core,
    (book, walk): (&Book, Option<&WalkState>),
    bay: BayId,
) -> Option<BayPhotoScreen> {
    let newest = walk.and_then(|walk| newest(walk, bay));
    let shown = shown(book, walk, bay)?;
    let pins: Vec<PinScreen> = book
        .points_of(bay)
        .iter()
        .filter_map(|point| {
            let pin = shown.pin(point.id)?;
            Some(PinScreen {
                code: point.code.to_string(),
                across: pin.across(),
                down: pin.down(),
            })
        })
        .collect();
    let codes = pins.iter().map(|pin| pin.code.as_str());
    let args = [
        ("bay", core.words.about(About::Bay(bay), book).into()),
        ("pins", codes.collect::<Vec<_>>().join(", ").into()),
        ("count", pins.len().into()),
    ];
    let path = core.logbook.photo(&shown.photo);
    Some(BayPhotoScreen {
        path: path.map(|path| path.display().to_string()),
        words: core.words.fill("photo-of-bay", &args),
        newer: newest
            .filter(|newest| *newest != shown.photo)
            .map(|_| core.words.say("photo-show-newer")),
        digest: shown.photo,
        pins,
    })
}

/// Shows a bay by the newest photo that the open walk has of it; its pins are put anew.
///
/// # Errors
/// [`Problem`] where there is no such bay, the open walk has no photo of it, or it can't be kept.
pub fn show(core: &mut Core, rig: RigId, bay: &str) -> Result<Told, Problem> {
    let photo = newer(core, rig, bay)?;
    put(core, rig, photo)
}

/// The newest photo that the open walk has of a bay, without pins.
fn newer(core: &Core, rig: RigId, bay: &str) -> Result<BayPhoto, Problem> {
    let book = core.logbook.shared_book(rig)?;
    let CodeOwner::Bay(id) = owner(core, &book, bay)? else {
        return Err(core.no_code(bay));
    };
    let walk = core.logbook.shared_walk(rig)?;
    let newest = walk.and_then(|walk| newest(&walk, id));
    let newest = newest.ok_or_else(|| no_photo(core, bay))?;
    Ok(BayPhoto::new(id, newest))
}

/// Puts the pin of a point on its bay's photo, in thousandths of width and height from the upper
/// left, or takes it out.
///
/// # Errors
/// [`Problem`] where there is no such point, its bay has no photo, the place is beside the photo, or
/// it can't be kept.
pub fn pin(
    core: &mut Core,
    rig: RigId,
    point: &str,
    at: Option<(u16, u16)>,
) -> Result<Told, Problem> {
    let photo = pinned(core, rig, point, at)?;
    put(core, rig, photo)
}

/// The photo of a point's bay with its pin put or taken out.
fn pinned(
    core: &Core,
    rig: RigId,
    point: &str,
    at: Option<(u16, u16)>,
) -> Result<BayPhoto, Problem> {
    let book = core.logbook.shared_book(rig)?;
    let CodeOwner::Point(id) = owner(core, &book, point)? else {
        return Err(core.no_code(point));
    };
    let bay = book.point(id).and_then(|point| book.bay_of(point));
    let bay = bay.ok_or_else(|| core.no_code(point))?;
    let pin = at.map(|(across, down)| {
        let args = [("across", across.into()), ("down", down.into())];
        let beside = || Problem::input(core.words.fill("photo-pin-beside", &args));
        Pin::new(id, across, down).ok_or_else(beside)
    });
    let walk = core.logbook.shared_walk(rig)?;
    let code = || book.bay(bay).map_or("", |bay| bay.code.as_str());
    let shown = shown(&book, walk.as_deref(), bay).ok_or_else(|| no_photo(core, code()))?;
    Ok(shown.with(id, pin.transpose()?))
}

/// Shows a bay that has no photo yet by the first one that was taken of it.
pub(super) fn adopt(core: &mut Core, rig: RigId, about: About) -> Result<(), Problem> {
    let About::Bay(bay) = about else {
        return Ok(());
    };
    match first(core, rig, bay)? {
        Some(photo) => put(core, rig, photo).map(drop),
        None => Ok(()),
    }
}

/// The first photo of a bay that has none yet.
fn first(core: &Core, rig: RigId, bay: BayId) -> Result<Option<BayPhoto>, Problem> {
    let book = core.logbook.shared_book(rig)?;
    if book.bay_photo(bay).is_some() {
        return Ok(None);
    }
    let walk = core.logbook.shared_walk(rig)?;
    Ok(shown(&book, walk.as_deref(), bay))
}

fn put(core: &mut Core, rig: RigId, photo: BayPhoto) -> Result<Told, Problem> {
    core.act(rig, Act::Book(BookChange::BayPhoto(Box::new(photo))))
}

/// The photo that a bay was given, else the newest of the open walk, with no pins yet.
fn shown(book: &Book, walk: Option<&WalkState>, bay: BayId) -> Option<BayPhoto> {
    let given = book.bay_photo(bay).cloned();
    given.or_else(|| Some(BayPhoto::new(bay, newest(walk?, bay)?)))
}

/// The newest photo of a bay in a walk.
fn newest(walk: &WalkState, bay: BayId) -> Option<String> {
    let mut newest_first = walk.photos.iter().rev();
    let found = newest_first.find(|(about, ..)| *about == About::Bay(bay));
    found.map(|(_, digest, _)| digest.clone())
}

fn owner(core: &Core, book: &Book, code: &str) -> Result<CodeOwner, Problem> {
    let parsed = Code::parse(code.trim()).ok();
    let found = parsed.and_then(|code| book.owners(&code).next());
    found.ok_or_else(|| core.no_code(code))
}

fn no_photo(core: &Core, bay: &str) -> Problem {
    Problem::refused(core.words.fill("photo-none-of-bay", &[("bay", bay.into())]))
}
