//! The keys that are there on every card: undo, skip, damage, stop for now, close up early.

use super::{Typed, blank};
use crate::card::{Ask, Card, Key};
use crate::here::Here;
use crate::{Named, Problem};
use baywalk_domain::coded::Coded;
use baywalk_domain::finding::About;
use baywalk_domain::ids::PointId;
use baywalk_domain::walk::{Act, AsFound, Counted, Damage, Ending, Next, NotJudgedWhy, Seen};

pub(super) fn keys(here: &Here<'_>) -> Vec<Key> {
    let words = here.words;
    let mut keys = of_point(here);
    let file = Key::plain("photo", words.say("step-photo")).asking(ask(here, "step-photo-file"));
    keys.push(file.asking(ask(here, "step-note")));
    let note = Key::plain("note", words.say("step-book")).noted(words.say("step-book-note"));
    keys.push(note.asking(ask(here, "step-book-what")));
    if here.walk.standing.len() > 1 {
        keys.push(Key::plain("undo", words.say("step-undo")));
    }
    if !here.walk.paused {
        keys.push(Key::plain("stop", words.say("step-stop")));
        if here.walk.open_bays().next().is_some() {
            let counted = Ask::Choice {
                question: words.say("step-close-all"),
                options: vec![
                    Named::new("yes", words.say("step-close-key")),
                    Named::new("no", words.say("step-close-not-yet")),
                ],
            };
            keys.push(Key::plain("close_early", words.say("step-close-early")).asking(counted));
        }
    }
    keys.push(Key::plain("end_early", words.say("step-end-early")).asking(ask(here, "step-why")));
    keys
}

/// The keys of a card that is about a point.
fn of_point(here: &Here<'_>) -> Vec<Key> {
    let words = here.words;
    let mut keys = Vec::new();
    if let Next::Point(_) = here.next() {
        let why = choice::<NotJudgedWhy>(here, "step-why");
        let skip = Key::plain("skip", words.say("step-skip")).asking(why);
        keys.push(skip.asking(ask(here, "step-note")));
    }
    if about(here).is_some() {
        let what = choice::<Damage>(here, "step-damage-what");
        let damage = Key::plain("damage", words.say("step-damage")).asking(what);
        keys.push(damage.asking(ask(here, "step-note")));
    }
    keys
}

fn ask(here: &Here<'_>, key: &str) -> Ask {
    Ask::Words {
        question: here.words.say(key),
    }
}

fn choice<T: Coded>(here: &Here<'_>, key: &str) -> Ask {
    let option = |member: &T| Named::of(here.words, *member);
    Ask::Choice {
        question: here.words.say(key),
        options: T::ALL.iter().map(option).collect(),
    }
}

/// What a photo taken at the card shows: the point, else the open bay, else the rig.
pub(super) fn subject(here: &Here<'_>) -> About {
    let bay = here.walk.open_bays().next().map(About::Bay);
    about(here).map(About::Point).or(bay).unwrap_or(About::Rig)
}

/// The point that the card is about, where it is about one.
pub(super) fn about(here: &Here<'_>) -> Option<PointId> {
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
            counted: Counted {
                covers: typed.words(0) == "yes",
                ..Counted::ALL
            },
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
