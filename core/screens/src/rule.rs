//! The owner's rules of when to look again.

use crate::named::count;
use crate::{Core, Problem, Told};
use baywalk_domain::coded::Coded;
use baywalk_domain::due::{Anchor, EventKind, Limit, Reach, Rule, RuleChange, YearDay};
use baywalk_domain::ids::{RigId, RuleId};
use baywalk_domain::rig::{Book, FasteningKind};
use baywalk_domain::units::{Stated, Unit};
use baywalk_domain::walk::Act;
use serde::Serialize;

/// A rule in the list.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct RuleLine {
    /// Its number in the list, from 1, by which a person calls it.
    pub number: u32,
    /// Its name for the machine.
    pub id: String,
    /// What it is about, its limits and the owner's word.
    pub words: String,
}

/// The rules of a rig beside its yearly one, in the order in which they were set.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct RulesScreen {
    /// A line each.
    pub rules: Vec<RuleLine>,
    /// What is said where there is none.
    pub empty: Option<String>,
}

/// The parts of a rule, as they are written.
const FIELDS: [&str; 12] = [
    "about",
    "months",
    "distance",
    "hours",
    "first_trip",
    "out_of_storage",
    "circuit_work",
    "hard_impact",
    "rough_road",
    "rough_distance",
    "chance",
    "word",
];

/// The rules of a rig.
///
/// # Errors
/// [`Problem`] where there is no such rig or the logbook can't be read.
pub fn rules(core: &Core, rig: RigId) -> Result<RulesScreen, Problem> {
    let book = core.logbook.shared_book(rig)?;
    let known = core.logbook.known(rig)?;
    let lines = known
        .rules
        .iter()
        .enumerate()
        .map(|(place, rule)| RuleLine {
            number: count(place + 1),
            id: rule.id.to_string(),
            words: core.words.rule(rule, &*book),
        });
    let empty = known
        .rules
        .is_empty()
        .then(|| core.words.say("timing-no-rules"));
    Ok(RulesScreen {
        rules: lines.collect(),
        empty,
    })
}

/// Sets a rule from its parts: a new one, or in place of one called by its number in the list.
///
/// # Errors
/// [`Problem`] where a part can't be read, there is no such rule, or the rule can't be.
pub fn set(
    core: &mut Core,
    rig: RigId,
    number: Option<u32>,
    fields: &[(String, String)],
) -> Result<Told, Problem> {
    let id = match number {
        Some(number) => called(core, rig, number)?,
        None => RuleId::new(core.logbook.new_id()),
    };
    let rule = of_parts(core, rig, id, fields)?;
    core.act(rig, Act::Rule(RuleChange::Set(rule)))
}

/// The rule that its parts tell; nothing is changed.
///
/// # Errors
/// [`Problem`] where a part can't be read, or there is no such rig.
pub fn of_parts(
    core: &Core,
    rig: RigId,
    id: RuleId,
    fields: &[(String, String)],
) -> Result<Rule, Problem> {
    let book = &core.logbook.shared_book(rig)?;
    Parts { core, book, fields }.rule(id)
}

/// Drops a rule, called by its number in the list.
///
/// # Errors
/// [`Problem`] where there is no such rule.
pub fn drop(core: &mut Core, rig: RigId, number: u32) -> Result<Told, Problem> {
    let id = called(core, rig, number)?;
    core.act(rig, Act::Rule(RuleChange::Drop(id)))
}

/// The rule that a number in the list calls.
///
/// # Errors
/// [`Problem`] where there is no such rule.
pub fn called(core: &Core, rig: RigId, number: u32) -> Result<RuleId, Problem> {
    let known = core.logbook.known(rig)?;
    let place = number
        .checked_sub(1)
        .and_then(|place| usize::try_from(place).ok());
    let rule = place.and_then(|place| known.rules.get(place));
    rule.map(|rule| rule.id).ok_or_else(|| {
        let args = [("number", number.into())];
        Problem::not_found(core.words.fill("timing-no-rule", &args))
    })
}

/// The bay, point or kind of fastening that a text names; the rig where it is empty.
///
/// # Errors
/// [`Problem`] where it names none.
pub(crate) fn reach(core: &Core, book: &Book, text: &str) -> Result<Reach, Problem> {
    let text = text.trim();
    if text.is_empty() {
        return Ok(Reach::Rig);
    }
    let called = |code: &baywalk_domain::rig::Code| code.as_str().eq_ignore_ascii_case(text);
    let bay = book.bays.iter().find(|bay| called(&bay.code));
    let point = book.points.iter().find(|point| called(&point.code));
    let kind = FasteningKind::from_code(text).ok();
    bay.map(|bay| Reach::Bay(bay.id))
        .or_else(|| point.map(|point| Reach::Point(point.id)))
        .or_else(|| kind.map(Reach::Kind))
        .ok_or_else(|| {
            let args = [("found", text.into())];
            Problem::input(core.words.fill("timing-no-about", &args))
        })
}

/// The parts of a rule being read.
struct Parts<'a> {
    core: &'a Core,
    book: &'a Book,
    fields: &'a [(String, String)],
}

impl Parts<'_> {
    fn rule(&self, id: RuleId) -> Result<Rule, Problem> {
        if let Some((name, _)) = self
            .fields
            .iter()
            .find(|(name, _)| !FIELDS.contains(&name.as_str()))
        {
            let args = [
                ("found", name.into()),
                ("expected", FIELDS.join(", ").into()),
            ];
            return Err(Problem::input(
                self.core.words.fill("timing-no-field", &args),
            ));
        }
        Ok(Rule {
            id,
            reach: reach(self.core, self.book, self.text("about").unwrap_or_default())?,
            limits: self.limits()?,
            word: self.text("word").unwrap_or_default().to_owned(),
        })
    }

    fn limits(&self) -> Result<Vec<Limit>, Problem> {
        let mut limits = Vec::new();
        limits.extend(self.whole("months")?.map(Limit::Months));
        limits.extend(self.stated("distance")?.map(Limit::Distance));
        limits.extend(self.stated("hours")?.map(Limit::Hours));
        for anchor in Anchor::ALL {
            let on = self.year_day(anchor.code())?;
            limits.extend(on.map(|on| Limit::Season {
                anchor: *anchor,
                on,
            }));
        }
        let far = self.stated("rough_distance")?;
        if far.is_some() && self.text(EventKind::RoughRoad.code()).is_none() {
            return Err(Problem::input(self.core.words.say("timing-no-event")));
        }
        for event in EventKind::ALL {
            let distance = far.clone().filter(|_| *event == EventKind::RoughRoad);
            let days = self.whole(event.code())?;
            limits.extend(days.map(|days| Limit::After {
                event: *event,
                days,
                distance,
            }));
        }
        limits.extend(self.whole("chance")?.map(Limit::Chance));
        Ok(limits)
    }

    fn text(&self, name: &str) -> Option<&str> {
        let field = self.fields.iter().find(|(field, _)| field == name);
        field
            .map(|(_, value)| value.trim())
            .filter(|value| !value.is_empty())
    }

    fn whole<N: std::str::FromStr>(&self, name: &str) -> Result<Option<N>, Problem> {
        let read = |text: &str| {
            text.parse()
                .map_err(|_| self.fault("timing-no-whole", text))
        };
        self.text(name).map(read).transpose()
    }

    fn stated<U: Unit>(&self, name: &str) -> Result<Option<Stated<U>>, Problem> {
        let worded = |fault| Problem::input(self.core.words.stated_fault(&fault));
        self.text(name)
            .map(Stated::parse_pair)
            .transpose()
            .map_err(worded)
    }

    fn year_day(&self, name: &str) -> Result<Option<YearDay>, Problem> {
        let read = |text: &str| {
            let (month, day) = text.split_once('-')?;
            YearDay::new(month.parse().ok()?, day.parse().ok()?)
        };
        self.text(name)
            .map(|text| read(text).ok_or_else(|| self.fault("timing-no-year-day", text)))
            .transpose()
    }

    fn fault(&self, key: &str, found: &str) -> Problem {
        Problem::input(self.core.words.fill(key, &[("found", found.into())]))
    }
}
