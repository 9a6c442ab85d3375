//! The keys that are there on every card: undo, skip, damage, stop for now, close up early.

use super::{Typed, blank};
use crate::Problem;
use crate::card::{Ask, Card, Key};
use crate::here::Here;
use baywalk_domain::coded::Coded;
use baywalk_domain::ids::PointId;
use baywalk_domain::walk::{Act, AsFound, Counted, Damage, Ending, Next, NotJudgedWhy, Seen};

pub(super) fn keys(here: &Here<'_>) -> Vec<Key> {
    let words = here.words;
    let why = || Ask::Words {
        question: words.say("step-why"),
    };
    let mut keys = Vec::new();
    if let Next::Point(_) = here.next() {
        let reasons = NotJudgedWhy::ALL
            .iter()
            .map(|why| (why.code().to_owned(), words.code(*why)))
            .collect();
        let ask = Ask::Choice {
            question: words.say("step-why"),
            options: reasons,
        };
        let note = Ask::Words {
            question: words.say("step-note"),
        };
        keys.push(
            Key::plain("skip", words.say("step-skip"))
                .asking(ask)
                .asking(note),
        );
    }
    if about(here).is_some() {
        let kinds = Damage::ALL
            .iter()
            .map(|kind| (kind.code().to_owned(), words.code(*kind)))
            .collect();
        let ask = Ask::Choice {
            question: words.say("step-damage-what"),
            options: kinds,
        };
        let note = Ask::Words {
            question: words.say("step-note"),
        };
        keys.push(
            Key::plain("damage", words.say("step-damage"))
                .asking(ask)
                .asking(note),
        );
    }
    if here.walk.standing.len() > 1 {
        keys.push(Key::plain("undo", words.say("step-undo")));
    }
    if !here.walk.paused {
        keys.push(Key::plain("stop", words.say("step-stop")));
        if here.walk.open_bays().next().is_some() {
            keys.push(Key::plain("close_early", words.say("step-close-early")));
        }
    }
    keys.push(Key::plain("end_early", words.say("step-end-early")).asking(why()));
    keys
}

/// The point that the card is about, where it is about one.
fn about(here: &Here<'_>) -> Option<PointId> {
    match here.next() {
        Next::Point(point) | Next::Left(point) => Some(point),
        _ => None,
    }
}

pub(super) fn act(here: &Here<'_>, key: &str, typed: &[String]) -> Result<Option<Act>, Problem> {
    let typed = Typed { here, typed };
    Ok(match (key, about(here)) {
        ("undo", _) => here
            .walk
            .standing
            .last()
            .map(|act| Act::Strike { act: *act }),
        ("stop", _) => Some(Act::Pause),
        ("close_early", _) => here.walk.open_bays().next().map(|bay| Act::Close {
            bay,
            counted: Counted::ALL,
        }),
        ("end_early", _) => Some(Act::End(Ending::Early(typed.words(0)))),
        ("damage", Some(point)) => Some(Act::Damage {
            point,
            damage: typed.code(0)?,
            note: typed.words(1),
        }),
        ("skip", Some(point)) => Some(skip(here, point, typed.code(0)?, typed.words(1))?),
        _ => None,
    })
}

/// A terminal is not judged, a look not looked at, both with why.
fn skip(here: &Here<'_>, id: PointId, why: NotJudgedWhy, note: String) -> Result<Act, Problem> {
    let (point, _, _) = here.point(id)?;
    Ok(match point.terminal() {
        Some(_) => Act::Found {
            point: id,
            found: AsFound::NotJudged { why, note },
        },
        None => Act::Look {
            point: id,
            seen: Seen::NotLooked(format!("{} {note}", here.words.code(why)).trim().to_owned()),
        },
    })
}

/// The card of a walk that is stopped for now.
pub(super) fn stopped(here: &Here<'_>) -> Card {
    let words = here.words;
    let mut card = blank(
        "stopped",
        here.line(),
        words.say("step-stopped-title"),
        words.say("step-stopped-question"),
    );
    card.cautions.push(words.say("caution-until-proved"));
    card.keys
        .push(Key::plain("go_on", words.say("step-stopped-key")));
    card
}
