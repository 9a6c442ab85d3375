//! What is asked of a rig, by which rule, and when: as facts for a report.

use crate::{Core, Problem};
use baywalk_domain::due::{Asked, Due, Known, Limit, Reach, Rule};
use baywalk_domain::ids::{RigId, RuleId};
use baywalk_domain::rig::{Book, YearlyRule};
use serde::Serialize;

/// One thing that is asked.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct AskedFact {
    /// The rule in words: what it is about, its limits, the owner's word.
    pub rule: String,
    /// The day, as `2028-03-20`.
    pub on: String,
    /// The day in words.
    pub when: String,
    /// Which limit came first, in words.
    pub first: String,
    /// What each limit comes to, in words.
    pub limits: Vec<String>,
    /// That it was put off and why, in words.
    pub put_off: Option<String>,
}

/// All that is asked of a rig as its ledger stands, the first first.
///
/// # Errors
/// [`Problem`] where there is no such rig or the logbook can't be read.
pub fn asked(core: &Core, rig: RigId) -> Result<Vec<AskedFact>, Problem> {
    let (book, known) = (core.logbook.shared_book(rig)?, core.logbook.known(rig)?);
    let glance = core.logbook.glance(rig)?;
    let all = glance.due.iter();
    Ok(all.map(|due| fact(core, (&book, &known), due)).collect())
}

fn fact(core: &Core, (book, known): (&Book, &Known), due: &Due) -> AskedFact {
    let words = &core.words;
    let rule = match due.asked {
        Asked::Walk => words.rule(&whole(&book.rig.rule, known), book),
        Asked::Rule(id) => known
            .rules
            .iter()
            .find(|rule| rule.id == id)
            .map_or_else(String::new, |rule| words.rule(rule, book)),
        Asked::SecondLook | Asked::Event(_) => words.due_item(due, book),
    };
    let limits = due.bounds.iter().map(|bound| words.bound(bound));
    AskedFact {
        rule,
        on: due.on.to_string(),
        when: words.date(due.on),
        first: words.code(due.reason),
        limits: limits.collect(),
        put_off: words.put_off(due),
    }
}

/// The yearly rule of a rig with the owner's rules for the whole rig, as one.
fn whole(yearly: &YearlyRule, known: &Known) -> Rule {
    let own = || known.rules.iter().filter(|rule| rule.reach == Reach::Rig);
    let months = |limit: &Limit| matches!(limit, Limit::Months(_));
    let mut limits: Vec<Limit> = own().flat_map(|rule| rule.limits.iter().cloned()).collect();
    if !limits.iter().any(months) {
        limits.insert(0, Limit::Months(yearly.months));
    }
    limits.extend(yearly.distance.clone().map(Limit::Distance));
    let said: Vec<&str> = own().map(|rule| rule.word.trim()).collect();
    Rule {
        id: RuleId::new(uuid::Uuid::nil()),
        reach: Reach::Rig,
        limits,
        word: said.join(" ").trim().to_owned(),
    }
}
