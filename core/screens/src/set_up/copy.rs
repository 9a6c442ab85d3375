//! A point once more, beside the last.

use super::add::{Added, entered};
use super::{Fields, code};
use crate::{Core, Problem, files};
use baywalk_domain::ids::RigId;
use baywalk_domain::rig::Code;
use baywalk_logbook::rigfile;

/// What belongs to one point alone and is not taken over.
const OWN: [&str; 5] = ["code", "set", "conductor", "note", "retired"];

/// Adds a point like the one that has a code, on the same device, under the next free code; which
/// conductor it holds is left to be filled in.
///
/// # Errors
/// [`Problem`] where there is no such point or the rules refuse it.
pub fn copy(core: &mut Core, rig: RigId, point: &str) -> Result<Added, Problem> {
    let book = core.logbook.shared_book(rig)?;
    let named = Code::parse(point.trim()).map_err(|_| core.no_code(point))?;
    let known = book.points.iter().find(|known| known.code == named);
    let bay = known.and_then(|known| book.bay(book.bay_of(known)?));
    let bay = bay.ok_or_else(|| core.no_code(point))?;
    let written = files::write(core, rig)?;
    let all = rigfile::fields(&written, &named).map_err(|_| core.no_code(point))?;
    let taken =
        |(column, text): &(String, String)| !OWN.contains(&column.as_str()) && !text.is_empty();
    let fields: Fields = all.into_iter().filter(taken).collect();
    let code = code::point(&book, &bay.code);
    // Let go: an act copies a book that somebody looks at.
    drop(book);
    entered(core, rig, "point", (code, fields))
}
