//! Our own settings of the check.

use crate::{Core, Problem};
use baywalk_domain::torque::Practice;
use serde::Serialize;

/// The share of the figure at which terminals are checked.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct PracticeScreen {
    /// In percent, 80 to 90.
    pub check_percent: u8,
    /// In words, with both sides of the conflict in the trade.
    pub words: Vec<String>,
}

/// The settings as they stand.
///
/// # Errors
/// [`Problem`] where the logbook can't be read.
pub fn practice(core: &Core) -> Result<PracticeScreen, Problem> {
    let check_percent = core.logbook.practice()?.check_percent();
    Ok(PracticeScreen {
        check_percent,
        words: conflict(core, check_percent),
    })
}

/// Sets the share of the check.
///
/// # Errors
/// [`Problem`] outside 80 to 90 %, or where it can't be kept.
pub fn set(core: &mut Core, percent: u8) -> Result<PracticeScreen, Problem> {
    let practice =
        Practice::new(percent).map_err(|fault| Problem::input(core.words.out_of_range(&fault)))?;
    let kept = core.logbook.set_practice(practice);
    kept.map_err(|fault| core.storage(&fault))?;
    self::practice(core)
}

/// Why a check stays below the figure: the conflict in the trade, both sides, and our answer.
pub(crate) fn conflict(core: &Core, percent: u8) -> Vec<String> {
    let words = &core.words;
    vec![
        words.say("caution-label-first"),
        words.say("caution-retorque-title"),
        words.say("caution-retorque-against"),
        words.say("caution-retorque-for"),
        words.fill("caution-retorque-ours", &[("percent", percent.into())]),
    ]
}
