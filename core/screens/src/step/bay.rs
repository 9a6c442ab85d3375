//! Opening and closing a bay.

use super::blank;
use crate::Problem;
use crate::card::{Card, Key};
use crate::here::Here;
use baywalk_domain::ids::BayId;
use baywalk_domain::isolation::Wiring;
use baywalk_domain::walk::{Act, Counted};

pub(super) fn open(here: &Here<'_>, id: BayId) -> Result<Card, Problem> {
    let words = here.words;
    let bay = here.bay(id)?;
    let question = words.fill("step-open-question", &[("bay", bay.code.as_str().into())]);
    let mut card = blank("open", here.line(), bay.name.clone(), question);
    card.tag = Some(bay.code.to_string());
    card.place.clone_from(&bay.place);
    card.lines.push(words.code(bay.side));
    card.lines.push(words.fill(
        "step-open-points",
        &[
            ("points", here.book.points_of(id).len().into()),
            ("minutes", bay.open_minutes.into()),
        ],
    ));
    let fed = Wiring::of(&here.book).feeding().bay(id).into_iter();
    let fed: Vec<String> = fed
        .map(|source| words.source_name(source, &*here.book))
        .collect();
    if !fed.is_empty() {
        card.lines
            .push(words.fill("step-open-fed", &[("sources", fed.join(", ").into())]));
    }
    card.cautions.push(words.say("caution-until-proved"));
    let wait = here.hands_off(bay);
    card.waits = wait.is_some();
    card.cautions.extend(wait);
    if !bay.keep_out.is_empty() {
        card.cautions
            .push(words.fill("caution-keep-out", &[("what", bay.keep_out.clone().into())]));
    }
    card.keys
        .push(Key::plain("open", words.say("step-open-key")));
    Ok(card)
}

pub(super) fn close(here: &Here<'_>, id: BayId) -> Result<Card, Problem> {
    let words = here.words;
    let bay = here.bay(id)?;
    let question = words.say("step-close-question");
    let mut card = blank("close", here.line_of(id), bay.name.clone(), question);
    card.tag = Some(bay.code.to_string());
    card.place.clone_from(&bay.place);
    card.lines = [
        "step-close-conductors",
        "step-close-hardware",
        "step-close-tools",
        "step-close-covers",
    ]
    .map(|key| words.say(key))
    .to_vec();
    card.keys
        .push(Key::plain("close", words.say("step-close-key")));
    Ok(card)
}

pub(super) fn close_act(bay: BayId, key: &str) -> Option<Act> {
    (key == "close").then_some(Act::Close {
        bay,
        counted: Counted::ALL,
    })
}
