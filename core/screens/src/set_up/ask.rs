//! What is asked of something new: as little as the walk needs.

use super::Piece;
use crate::card::Ask;
use crate::{Core, Named, Problem};
use baywalk_domain::coded::Coded;
use baywalk_domain::ids::RigId;
use baywalk_domain::rig::{Code, DeviceKind, FasteningKind, LookKind, Role, SetSystem, Side};
use serde::Serialize;

/// Where along a rig a bay can be said to stand, in thousandths of its length from the nose, each
/// with the key of its word.
pub(super) const ALONG: [(&str, &str); 5] = [
    ("50", "set-up-nose"),
    ("275", "set-up-front-half"),
    ("500", "set-up-middle"),
    ("725", "set-up-rear-half"),
    ("950", "set-up-tail"),
];

/// The most groups of conductors that a new device is given at once.
pub(super) const MOST_SETS: u8 = 4;

/// What is asked of something new, in order.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct SetUpForm {
    /// What it is.
    pub title: String,
    /// What to mind.
    pub cautions: Vec<String>,
    /// The questions.
    pub asks: Vec<Ask>,
}

/// What is asked of a new bay of a rig, or of a new device or point in the bay that has a code.
///
/// # Errors
/// [`Problem`] where there is no such rig or bay, or a point has no device to be on.
pub fn form(core: &Core, rig: RigId, piece: Piece, bay: &str) -> Result<SetUpForm, Problem> {
    let words = &core.words;
    let asks = match piece {
        Piece::Bay => vec![text(core, "set-up-bay-name"), side(core), along(core)],
        Piece::Device => vec![
            choice::<DeviceKind>(core, "set-up-device"),
            text(core, "set-up-name"),
            systems(core),
            sets(core),
        ],
        Piece::Terminal => vec![
            devices(core, rig, bay)?,
            choice::<FasteningKind>(core, "set-up-fastening"),
            text(core, "set-up-name"),
            choice::<Role>(core, "torque-role"),
        ],
        Piece::Look => vec![
            devices(core, rig, bay)?,
            choice::<LookKind>(core, "set-up-look"),
            text(core, "set-up-name"),
        ],
    };
    let caution = match piece {
        Piece::Device => Some(words.say("set-up-all-sets")),
        Piece::Bay | Piece::Terminal | Piece::Look => None,
    };
    Ok(SetUpForm {
        title: words.say(piece.title()),
        cautions: caution.into_iter().collect(),
        asks,
    })
}

fn text(core: &Core, key: &str) -> Ask {
    Ask::Words {
        question: core.words.say(key),
    }
}

pub(super) fn choice<T: Coded>(core: &Core, key: &str) -> Ask {
    Ask::Choice {
        question: core.words.say(key),
        options: T::ALL
            .iter()
            .map(|one| Named::of(&core.words, *one))
            .collect(),
    }
}

fn side(core: &Core) -> Ask {
    choice::<Side>(core, "set-up-side")
}

pub(super) fn along(core: &Core) -> Ask {
    let named = |(code, key): &(&str, &str)| Named {
        code: (*code).to_owned(),
        word: core.words.say(key),
    };
    Ask::Choice {
        question: core.words.say("set-up-along"),
        options: ALONG.iter().map(named).collect(),
    }
}

/// What stands behind the AC system of a device that DC comes to as well.
pub(super) const AND_DC: &str = "+dc";

/// The systems of a device's conductors, and AC with DC beside it, as at a converter.
fn systems(core: &Core) -> Ask {
    let words = &core.words;
    let one = SetSystem::ALL.iter().map(|one| Named::of(words, *one));
    let both = [SetSystem::SplitPhase, SetSystem::SinglePhase].map(|ac| Named {
        code: format!("{}{AND_DC}", ac.code()),
        word: words.fill("set-up-and-dc", &[("system", words.code(ac).into())]),
    });
    Ask::Choice {
        question: words.say("set-up-system"),
        options: one.chain(both).collect(),
    }
}

fn sets(core: &Core) -> Ask {
    let named = |count: u8| Named {
        code: count.to_string(),
        word: core
            .words
            .fill("set-up-set-count", &[("count", count.into())]),
    };
    Ask::Choice {
        question: core.words.say("set-up-sets"),
        options: (1..=MOST_SETS).map(named).collect(),
    }
}

fn devices(core: &Core, rig: RigId, bay: &str) -> Result<Ask, Problem> {
    let book = core.logbook.shared_book(rig)?;
    let named = Code::parse(bay).ok();
    let bay = book
        .bays
        .iter()
        .find(|known| Some(&known.code) == named.as_ref());
    let devices = bay.into_iter().flat_map(|bay| book.devices_of(bay.id));
    let options: Vec<Named> = devices
        .map(|device| Named {
            code: device.code.to_string(),
            word: device.name.clone(),
        })
        .collect();
    if options.is_empty() {
        return Err(Problem::refused(core.words.say("set-up-device-first")));
    }
    Ok(Ask::Choice {
        question: core.words.say("set-up-on-device"),
        options,
    })
}
