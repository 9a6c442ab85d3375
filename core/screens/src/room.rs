//! Whether there is room for a walk.

use crate::{Core, Problem};

/// The room below which it is told before a walk: some sixty photos with their smaller sizes. Ours.
const LOW: u64 = 500 * 1000 * 1000;

/// That there is little room, in words; `None` where there is enough.
///
/// # Errors
/// [`Problem`] where the system does not tell.
pub fn low(core: &Core) -> Result<Option<String>, Problem> {
    let free = core.logbook.room()?;
    let megabytes = |bytes: u64| (bytes / 1_000_000).into();
    Ok((free < LOW).then(|| {
        let args = [("free", megabytes(free)), ("low", megabytes(LOW))];
        core.words.fill("backup-low-room", &args)
    }))
}
