//! Photos: taken in, expected of a camera, held against the ledger.

mod arrive;
mod check;
mod fault;
mod take;
mod tidy;

pub use arrive::{ArrivedLine, arrived, expect, forget};
pub use check::{PhotosScreen, check};
pub use fault::storage;
pub use take::add;
pub use tidy::{clear, keep_originals, originals, thumbnails};

pub(crate) use fault::sentence;
pub(crate) use take::take;

use crate::{Core, Problem};
use baywalk_domain::finding::About;
use baywalk_domain::ids::RigId;

/// What a person means by a code or the rig's name.
fn meant(core: &Core, rig: RigId, text: &str) -> Result<About, Problem> {
    let book = core.logbook.book(rig)?;
    let found = crate::about::about(&book, text.trim()).ok().flatten();
    found.ok_or_else(|| {
        let args = [("found", text.trim().into())];
        Problem::not_found(core.words.fill("photo-no-place", &args))
    })
}
