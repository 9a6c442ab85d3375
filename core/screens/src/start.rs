//! Starting a walk.

use crate::{Core, Problem, Told};
use baywalk_domain::ids::RigId;
use baywalk_domain::rig::{Book, Code};
use baywalk_domain::walk::{Act, Scope};

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
    let book = core.logbook.book(rig)?;
    let scope = match (wish.second_look, wish.bays) {
        (true, _) => Scope::SecondLook(core.logbook.unsettled(rig)?),
        (false, []) => Scope::Whole,
        (false, bays) => Scope::Bays(
            bays.iter()
                .map(|code| bay(core, &book, code))
                .collect::<Result<_, _>>()?,
        ),
    };
    let person = match wish.person.trim() {
        "" => core.words.say("start-somebody"),
        person => person.to_owned(),
    };
    core.act(rig, Act::Start { person, scope })
}

fn bay(core: &Core, book: &Book, text: &str) -> Result<baywalk_domain::ids::BayId, Problem> {
    let code = Code::parse(text).map_err(|fault| Problem::input(core.words.code_fault(&fault)))?;
    let found = book
        .bays
        .iter()
        .find(|bay| bay.code == code && !bay.retired);
    found.map(|bay| bay.id).ok_or_else(|| {
        Problem::not_found(core.words.fill("book-no-code", &[("code", text.into())]))
    })
}
