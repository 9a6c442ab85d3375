//! The list before.

use super::{Typed, blank};
use crate::card::{Ask, Card, Count, Key};
use crate::here::Here;
use baywalk_domain::coded::Coded;
use baywalk_domain::walk::{Act, ReadyAnswer, ReadyItem};

pub(super) fn card(here: &Here<'_>, item: ReadyItem) -> Card {
    let words = here.words;
    let mut card = blank(
        "ready",
        here.line(),
        words.say("step-ready-title"),
        words.code(item),
    );
    card.count = Some(Count::new(here.walk.ready.len() + 1, ReadyItem::ALL.len()));
    if here.walk.ready.is_empty() {
        card.cautions = vec![
            words.say("caution-qualified"),
            words.say("caution-label-first"),
        ];
    }
    card.keys
        .push(Key::plain("done", words.say("step-ready-done")));
    if !item.is_must() {
        let question = words.say("step-why");
        card.keys.push(
            Key::plain("without", words.say("step-ready-without")).asking(Ask::Words { question }),
        );
    }
    card
}

pub(super) fn act(item: ReadyItem, key: &str, typed: &Typed<'_>) -> Option<Act> {
    let answer = match key {
        "done" => ReadyAnswer::Done,
        "without" => ReadyAnswer::Without(typed.words(0)),
        _ => return None,
    };
    Some(Act::Ready { item, answer })
}
