//! An act as a script writes it.

use baywalk_domain::coded::Coded;
use baywalk_domain::finding::About;
use baywalk_domain::rig::{Book, Code};
use baywalk_domain::supply::Measured;
use baywalk_domain::units::{Stated, Unit};
use baywalk_domain::walk::{
    Act, AsFound, AsLeft, Away, Ending, Movement, ReadyAnswer, Scope, Seen, Test,
};
use serde_json::{Value, json};

/// Writes an act with people's codes; empty texts and what is usual are left out.
pub(super) fn written(book: &Book, act: &Act) -> Value {
    let kind = act.kind();
    let mut value = match act {
        Act::Odometer(reading) => json!({"reading": pair(reading)}),
        Act::Start {
            person,
            scope: Scope::Whole,
        } => json!({"person": person}),
        Act::Ready {
            item,
            answer: ReadyAnswer::Done,
        } => json!({"item": item.code()}),
        Act::Ready {
            item,
            answer: ReadyAnswer::Without(why),
        } => json!({"item": item.code(), "without": why}),
        Act::Isolate { source, away } => {
            let (how, note) = match away {
                Away::Isolated(note) => ("isolated", note),
                Away::NotFound(note) => ("not_found", note),
                Away::Stays(note) => ("stays", note),
            };
            json!({"source": code(&book.source(*source).unwrap().code), "how": how, "note": note})
        }
        Act::Open { bay } | Act::Close { bay, .. } => {
            json!({"bay": code(&book.bay(*bay).unwrap().code)})
        }
        Act::KnownLive {
            bay,
            supply,
            place,
            meter,
            volts,
        } => json!({
            "bay": code(&book.bay(*bay).unwrap().code),
            "supply": supply.code(),
            "place": place,
            "with": meter.name,
            "category": meter.category.code(),
            "volts": pair(volts),
        }),
        Act::Read {
            device,
            check,
            volts,
        } => {
            let mut value = json!({
                "device": code(&book.device(*device).unwrap().code),
                "set": check.set,
                "from": check.from.code(),
                "to": check.to.code(),
                "supply": check.supply.code(),
                "volts": pair(volts),
            });
            if check.other_set != check.set {
                value["other_set"] = json!(check.other_set);
            }
            value
        }
        Act::Except {
            device,
            set,
            reason,
        } => json!({
            "device": code(&book.device(*device).unwrap().code), "set": set, "reason": reason,
        }),
        Act::Restore { source } => json!({"source": code(&book.source(*source).unwrap().code)}),
        Act::Measure(reading) => measured(reading.step.code(), &reading.place, &reading.measured),
        Act::End(Ending::Whole) | Act::PowerUp | Act::Pause | Act::Resume => json!({}),
        other => of_point(book, other),
    };
    value["act"] = json!(kind);
    value
}

fn of_point(book: &Book, act: &Act) -> Value {
    let point = |id| code(&book.point(id).unwrap().code);
    match act {
        Act::Found { point: id, found } => {
            json!({"point": point(*id), "found": found_as(book, found)})
        }
        Act::Look { point: id, seen } => match seen {
            Seen::Clear => json!({"point": point(*id)}),
            Seen::Trouble(words) => json!({"point": point(*id), "trouble": words}),
            Seen::NotLooked(why) => json!({"point": point(*id), "not_looked": why}),
        },
        Act::SetTool { tool, at } => {
            json!({"tool": code(&book.tool(*tool).unwrap().code), "to": pair(at)})
        }
        Act::Damage {
            point: id,
            damage,
            note,
        } => {
            json!({"point": point(*id), "damage": damage.code(), "note": note})
        }
        Act::Left { point: id, left } => json!({"point": point(*id), "left": left_as(book, left)}),
        other => panic!("the sample walk has no {}", other.kind()),
    }
}

fn found_as(book: &Book, found: &AsFound) -> Value {
    let tool = |id| code(&book.tool(id).unwrap().code);
    match found {
        AsFound::Held(Test::Torque { at, tool: id }) => {
            json!({"grade": "held", "at": pair(at), "tool": tool(*id)})
        }
        AsFound::Held(Test::Tug) => json!({"grade": "held"}),
        AsFound::Moved(Movement::Turned {
            angle,
            below,
            tool: id,
        }) => {
            json!({"grade": "moved", "angle": angle.code(), "at": pair(below), "tool": tool(*id)})
        }
        AsFound::Moved(Movement::Began { at, tool: id }) => {
            json!({"grade": "began", "at": pair(at), "tool": tool(*id)})
        }
        AsFound::Moved(Movement::MarkOff { angle }) => {
            json!({"grade": "mark_off", "angle": angle.code()})
        }
        AsFound::Moved(Movement::Gave) => json!({"grade": "moved"}),
        AsFound::Loose => json!({"grade": "loose"}),
        AsFound::Apart => json!({"grade": "apart"}),
        AsFound::OpenedByUs => json!({"grade": "opened_by_us"}),
        AsFound::LookedAt { tugged } => json!({"grade": "looked_at", "tugged": tugged}),
        AsFound::NotJudged { why, note } => {
            json!({"grade": "not_judged", "why": why.code(), "note": note})
        }
    }
}

fn left_as(book: &Book, left: &AsLeft) -> Value {
    let tool = |id| code(&book.tool(id).unwrap().code);
    match left {
        AsLeft::Alone(why) => json!({"left": "alone", "why": why.code()}),
        AsLeft::Set { torque, tool: id } => {
            json!({"left": "set", "torque": pair(torque), "tool": tool(*id)})
        }
        AsLeft::Remade {
            set: Some((torque, id)),
        } => {
            json!({"left": "remade", "torque": pair(torque), "tool": tool(*id)})
        }
        AsLeft::Remade { set: None } => json!({"left": "remade"}),
        AsLeft::OutOfService { how } => json!({"left": "out_of_service", "how": how}),
    }
}

fn measured(reading: &str, place: &str, measured: &Measured) -> Value {
    match measured {
        Measured::Volts(volts) => json!({"reading": reading, "place": place, "volts": pair(volts)}),
        Measured::Works => json!({"reading": reading, "works": true}),
        Measured::Fails => json!({"reading": reading, "works": false}),
        Measured::Not(why) => json!({"reading": reading, "not": why}),
    }
}

/// What a finding is about, as a script writes it.
pub(super) fn about(book: &Book, about: About) -> String {
    match about {
        About::Rig => book.rig.name.clone(),
        About::Bay(id) => code(&book.bay(id).unwrap().code),
        About::Point(id) => code(&book.point(id).unwrap().code),
        About::Source(id) => code(&book.source(id).unwrap().code),
        About::Reading(step) => step.code().to_owned(),
    }
}

fn pair<U: Unit>(stated: &Stated<U>) -> String {
    stated.pair()
}

fn code(code: &Code) -> String {
    code.as_str().to_owned()
}
