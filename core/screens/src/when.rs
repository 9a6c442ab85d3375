//! When next, all in one: what is due and why, the rules, what the rig's own past tells, and the keys
//! by which something is noted, ruled or put off.

use crate::card::{Ask, Key};
use crate::due::DueScreen;
use crate::learned::LearnedScreen;
use crate::rule::RulesScreen;
use crate::{Core, Named, Problem, Told, due, learned, rule, usage};
use baywalk_domain::coded::Coded;
use baywalk_domain::due::EventKind;
use baywalk_domain::ids::RigId;
use chrono::Days;
use serde::Serialize;

/// When next.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct WhenScreen {
    /// What is due, and why.
    pub due: DueScreen,
    /// The rules beside the yearly one.
    pub rules: RulesScreen,
    /// What the rig's own past tells.
    pub learned: LearnedScreen,
    /// The keys, each with what it asks.
    pub keys: Vec<Key>,
}

/// The limits that a rule can be given here, each with the key of its word.
const LIMITS: [(&str, &str); 3] = [
    ("months", "timing-limit-months"),
    ("distance", "timing-limit-distance"),
    ("hours", "timing-limit-hours"),
];

/// The days to come that can be chosen from, where something is put off or promised.
const TO_COME: [u64; 4] = [7, 14, 28, 56];

/// When next, of a rig.
///
/// # Errors
/// [`Problem`] where there is no such rig or the logbook can't be read.
pub fn when(core: &Core, rig: RigId) -> Result<WhenScreen, Problem> {
    let screen = due::due(core, rig)?;
    let rules = rule::rules(core, rig)?;
    let mut keys = noting(core);
    keys.extend(screen.items.iter().map(|item| {
        let key = Key::plain(
            &format!("put_off {}", item.number),
            core.words.say("timing-key-put-off"),
        );
        key.noted(item.words.clone())
            .asking(later(core))
            .asking(words(core, "step-why"))
    }));
    keys.extend(rules.rules.iter().map(|rule| {
        let key = Key::plain(
            &format!("drop_rule {}", rule.number),
            core.words.say("timing-key-drop"),
        );
        key.noted(rule.words.clone())
    }));
    Ok(WhenScreen {
        due: screen,
        rules,
        learned: learned::told(core, rig)?,
        keys,
    })
}

/// The keys that stand whatever is due.
fn noting(core: &Core) -> Vec<Key> {
    let key = |code: &str, word: &str| Key::plain(code, core.words.say(word));
    let limits = LIMITS.iter().map(|(code, word)| Named {
        code: (*code).to_owned(),
        word: core.words.say(word),
    });
    let events = EventKind::ALL.iter();
    vec![
        key("odometer", "timing-key-odometer").asking(words(core, "timing-ask-odometer")),
        key("hours", "timing-key-hours").asking(words(core, "timing-ask-hours")),
        key("trip", "timing-key-trip").asking(words(core, "timing-ask-trip")),
        key("event", "timing-key-event")
            .asking(Ask::Choice {
                question: core.words.say("timing-ask-event"),
                options: events.map(|event| Named::of(&core.words, *event)).collect(),
            })
            .asking(words(core, "timing-ask-note")),
        key("rule", "timing-key-rule")
            .asking(Ask::Choice {
                question: core.words.say("timing-ask-limit"),
                options: limits.collect(),
            })
            .asking(words(core, "timing-ask-figure")),
    ]
}

fn words(core: &Core, key: &str) -> Ask {
    Ask::Words {
        question: core.words.say(key),
    }
}

/// The days until which something can be put off.
fn later(core: &Core) -> Ask {
    Ask::Choice {
        question: core.words.say("timing-ask-until"),
        options: days_to_come(core),
    }
}

/// Some days to choose from, counted from today.
pub(crate) fn days_to_come(core: &Core) -> Vec<Named> {
    let today = core.logbook.now().date();
    let days = TO_COME.iter();
    days.filter_map(|days| today.checked_add_days(Days::new(*days)))
        .map(|day| Named {
            code: day.to_string(),
            word: core.words.date(day),
        })
        .collect()
}

/// Takes a key of the screen, with what was typed for what it asks, in order.
///
/// # Errors
/// [`Problem`] where there is no such key, something typed can't be read, or the rules refuse it;
/// nothing is changed then.
pub fn press(core: &mut Core, rig: RigId, key: &str, typed: &[String]) -> Result<Told, Problem> {
    let text = |place: usize| typed.get(place).map_or("", |text| text.trim());
    let (verb, number) = key.split_once(' ').unwrap_or((key, "0"));
    let number = number.parse().unwrap_or(0);
    match verb {
        "odometer" => usage::odometer(core, rig, text(0)),
        "hours" => usage::hours(core, rig, text(0)),
        "trip" => usage::trip(core, rig, text(0)),
        "event" => usage::event(core, rig, text(0), ("", "", text(1))),
        "rule" => {
            let limit = (text(0).to_owned(), text(1).to_owned());
            rule::set(core, rig, None, &[limit])
        }
        "put_off" => due::put_off(core, rig, number, (text(0), text(1))),
        "drop_rule" => rule::drop(core, rig, number),
        _ => Err(core.no_key(key)),
    }
}
