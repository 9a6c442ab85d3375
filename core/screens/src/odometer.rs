//! Noting the odometer.

use crate::{Core, Problem, Told};
use baywalk_domain::ids::RigId;
use baywalk_domain::units::Stated;
use baywalk_domain::walk::Act;

/// Notes the odometer, written as `41230 mi`.
///
/// # Errors
/// [`Problem`] where it can't be read, or is below an earlier note.
pub fn note(core: &mut Core, rig: RigId, text: &str) -> Result<Told, Problem> {
    let reading = Stated::parse_pair(text)
        .map_err(|fault| Problem::input(core.words.stated_fault(&fault)))?;
    core.act(rig, Act::Odometer(reading))
}
