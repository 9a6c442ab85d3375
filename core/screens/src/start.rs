//! Starting a walk.

use crate::{Core, Problem, Told, paper};
use baywalk_domain::ids::{BayId, RigId};
use baywalk_domain::rig::{Bay, Book, Code, DeviceKind};
use baywalk_domain::walk::{Act, Scope};
use serde::Serialize;

/// How many bays a newcomer's first walk goes through.
const FIRST_BAYS: usize = 2;

/// What is looked at first where there is no time for more: all power goes through them. Common
/// practice, no source.
const FIRST: [DeviceKind; 4] = [
    DeviceKind::TransferSwitch,
    DeviceKind::AcPanel,
    DeviceKind::DcPanel,
    DeviceKind::FuseBlock,
];

/// A first walk of a few bays.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct FirstWalk {
    /// What it is, in words.
    pub words: String,
    /// The codes of its bays.
    pub bays: Vec<String>,
}

/// The first walk that a newcomer to a rig is offered: two bays, where all power goes through.
/// `None` where the rig was walked before, or has no more bays than that.
///
/// # Errors
/// [`Problem`] where there is no such rig or the logbook can't be read.
pub fn first(core: &Core, rig: RigId) -> Result<Option<FirstWalk>, Problem> {
    let book = core.logbook.shared_book(rig)?;
    let mut bays = book.bays_in_order();
    if bays.len() <= FIRST_BAYS || paper::last_walk(core, rig).is_ok() {
        return Ok(None);
    }
    let rank = |bay: &&Bay| {
        let ranks = book
            .devices_of(bay.id)
            .filter_map(|device| FIRST.iter().position(|kind| *kind == device.kind));
        ranks.min().unwrap_or(FIRST.len())
    };
    bays.sort_by_key(rank);
    bays.truncate(FIRST_BAYS);
    let names: Vec<String> = bays
        .iter()
        .map(|bay| format!("{} {}", bay.code, bay.name))
        .collect();
    let args = [("bays", names.join(", ").into())];
    Ok(Some(FirstWalk {
        words: core.words.fill("set-up-first-walk", &args),
        bays: bays.iter().map(|bay| bay.code.to_string()).collect(),
    }))
}

/// What kind of walk is wished.
#[derive(Debug, Clone, Copy)]
pub struct Wish<'a> {
    /// Who walks; empty where nobody said.
    pub person: &'a str,
    /// Some bays only, by their codes; none for all of the rig.
    pub bays: &'a [String],
    /// Only what the last walk set or remade.
    pub second_look: bool,
}

/// Starts a walk.
///
/// # Errors
/// [`Problem`] where a bay is not known, a walk is open already, or nothing waits for a second look.
pub fn start(core: &mut Core, rig: RigId, wish: &Wish<'_>) -> Result<Told, Problem> {
    let scope = match (wish.second_look, wish.bays) {
        (true, _) => Scope::SecondLook(core.logbook.unsettled(rig)?),
        (false, []) => Scope::Whole,
        (false, bays) => Scope::Bays(called(core, rig, bays)?),
    };
    let person = match wish.person.trim() {
        "" => core.words.say("start-somebody"),
        person => person.to_owned(),
    };
    core.act(rig, Act::Start { person, scope })
}

/// The bays with codes.
fn called(core: &Core, rig: RigId, codes: &[String]) -> Result<Vec<BayId>, Problem> {
    let book = core.logbook.shared_book(rig)?;
    codes.iter().map(|code| bay(core, &book, code)).collect()
}

fn bay(core: &Core, book: &Book, text: &str) -> Result<BayId, Problem> {
    let code = Code::parse(text).map_err(|fault| Problem::input(core.words.code_fault(&fault)))?;
    let found = book
        .bays
        .iter()
        .find(|bay| bay.code == code && !bay.retired);
    found.map(|bay| bay.id).ok_or_else(|| core.no_code(text))
}
