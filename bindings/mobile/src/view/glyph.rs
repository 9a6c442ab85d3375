//! The glyphs on keys: what a grade looks like at what holds this conductor.

use crate::Picture;
use baywalk_domain::coded::Coded;
use baywalk_domain::rig::FasteningKind;
use baywalk_domain::walk::{Angle, AsFound, Grade, Movement, Test};
use baywalk_screens::card::{Ask, Card};
use baywalk_shapes::found::{found, graded};
use baywalk_shapes::screw;

/// A picture on a key or on an answer, by its code.
#[derive(Debug, Clone, PartialEq, uniffi::Record)]
pub struct Glyph {
    /// The code of the key or answer.
    pub code: String,
    /// The picture, in a box of 48.
    pub picture: Picture,
}

/// The glyphs of a card's keys, and of the angles that they ask for.
pub(super) fn glyphs(card: &Card, fastening: Option<FasteningKind>) -> Vec<Glyph> {
    let keys = card.keys.iter().filter_map(|key| {
        let grade = Grade::from_code(&key.code).ok()?;
        Some(Glyph {
            code: key.code.clone(),
            picture: at(grade, fastening),
        })
    });
    let asked = card.keys.iter().flat_map(|key| &key.asks);
    let options = asked.filter_map(|ask| match ask {
        Ask::Choice { options, .. } => Some(options),
        _ => None,
    });
    let angles = options.flatten().filter_map(|option| {
        let angle = Angle::from_code(&option.code).ok()?;
        Some(Glyph {
            code: option.code.clone(),
            picture: screw::moved(Some(angle)).into(),
        })
    });
    keys.chain(angles).collect()
}

/// What a grade looks like at a fastening.
pub(super) fn at(grade: Grade, fastening: Option<FasteningKind>) -> Picture {
    let seen = match grade {
        Grade::Held => AsFound::Held(Test::Tug),
        Grade::Moved => AsFound::Moved(Movement::Gave),
        Grade::Loose => AsFound::Loose,
        Grade::Apart => AsFound::Apart,
        Grade::LookedAt | Grade::NotJudged => return graded(grade).into(),
    };
    match fastening.filter(|kind| !kind.takes_torque()) {
        Some(kind) => found(&seen, kind).into(),
        None => graded(grade).into(),
    }
}
