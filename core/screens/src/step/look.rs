//! A look.

use super::Typed;
use crate::Problem;
use crate::card::{Ask, Card, Key};
use crate::here::Here;
use baywalk_domain::ids::PointId;
use baywalk_domain::rig::LookKind;
use baywalk_domain::walk::{Act, Seen};

pub(super) fn card(here: &Here<'_>, id: PointId, kind: LookKind) -> Result<Card, Problem> {
    let words = here.words;
    let mut card = here.point_card("look", id, words.code(kind))?;
    if kind == LookKind::Hydraulic {
        card.cautions.push(words.say("caution-hydraulic"));
    }
    card.keys
        .push(Key::plain("clear", words.say("step-look-clear")));
    let question = words.say("step-look-what");
    card.keys.push(
        Key::plain("trouble", words.say("step-look-trouble")).asking(Ask::Words { question }),
    );
    Ok(card)
}

pub(super) fn act(point: PointId, key: &str, typed: &Typed<'_>) -> Option<Act> {
    let seen = match key {
        "clear" => Seen::Clear,
        "trouble" => Seen::Trouble(typed.words(0)),
        _ => return None,
    };
    Some(Act::Look { point, seen })
}
