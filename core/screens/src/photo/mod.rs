//! Photos: taken in, expected of a camera, held against the ledger.

mod arrive;
mod check;
mod fault;
mod pin;
mod take;
mod tidy;

pub use arrive::{ArrivedLine, arrived, expect, forget};
pub use check::{PhotosScreen, check};
pub use fault::storage;
pub use pin::{BayPhotoScreen, PinScreen, of_bay, pin, show};
pub use take::add;
pub use tidy::{clear, keep_originals, originals, thumbnails};

pub(crate) use fault::sentence;
pub(crate) use take::take;

use crate::{Core, Problem};
use baywalk_domain::finding::About;
use baywalk_domain::ids::{PointId, RigId};

/// What is meant by a code, the rig's name, or the name of a point for the machine, as cards have it.
fn meant(core: &Core, rig: RigId, text: &str) -> Result<About, Problem> {
    let book = core.logbook.shared_book(rig)?;
    let point = text.parse::<PointId>().ok();
    let point = point.filter(|point| book.point(*point).is_some());
    let named = || crate::about::about(&book, text.trim()).ok().flatten();
    let found = point.map(About::Point).or_else(named);
    found.ok_or_else(|| {
        let args = [("found", text.trim().into())];
        Problem::not_found(core.words.fill("photo-no-place", &args))
    })
}
