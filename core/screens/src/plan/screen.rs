//! A plan with its proof, its time, and what it leaves out.

use super::alike::alike;
use super::facts::Facts;
use super::lines::{PlanStop, left_out, minutes, share, stop};
use crate::{Core, Named, Problem};
use baywalk_domain::ids::RigId;
use baywalk_domain::plan::{Plan, Proof, RigTask, STEPS, nose_to_tail, plan as best_plan};
use baywalk_words::Words;
use chrono::Datelike;
use serde::Serialize;

/// The plan of a rig for some minutes.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct PlanScreen {
    /// What its owner calls the rig.
    pub rig: String,
    /// The minutes at hand for the bays.
    pub minutes: u16,
    /// How many points in how many bays.
    pub headline: String,
    /// By how much that which must be done is too long, where it is.
    pub over: Option<String>,
    /// The bays, in order.
    pub stops: Vec<PlanStop>,
    /// The bays that stay shut, each with why.
    pub left_out: Vec<String>,
    /// How sure it is that no plan is worth more.
    pub proof: Named,
    /// What the plan is worth, in ranks.
    pub worth: u32,
    /// What no plan is worth more than.
    pub bound: u32,
    /// The seconds of the whole round, walking among them.
    pub seconds: u32,
    /// What it rests on and what stands beside it: one sentence each.
    pub notes: Vec<String>,
    /// Whether a walk is open, in which it can be followed.
    pub walking: bool,
    /// Whether a plan is followed in the open walk.
    pub followed: bool,
}

/// Plans the minutes at hand for the bays of a rig; in a walk, for what still waits.
///
/// # Errors
/// [`Problem`] where there is no such rig, the minutes are none or over 360, the rig is too large, or
/// the logbook can't be read.
pub fn plan(core: &Core, rig: RigId, minutes: u16) -> Result<PlanScreen, Problem> {
    let facts = Facts::gather(core, rig, core.logbook.now().date())?;
    let task = facts.task(core, seconds_of(core, minutes)?)?;
    let best = best_plan(&task.task);
    let words = &core.words;
    let stops = best
        .stops
        .iter()
        .filter_map(|of| stop(words, &facts, &task, of));
    let out = left_out_of(words, (&facts, &task), &best);
    Ok(PlanScreen {
        rig: facts.book.rig.name.clone(),
        minutes,
        headline: headline(words, &best, minutes),
        over: best.over.map(|over| {
            let over = super::lines::minutes(over);
            words.fill("plan-over", &[("minutes", over.into())])
        }),
        stops: stops.collect(),
        left_out: out,
        proof: Named::of(words, best.proof),
        worth: best.worth,
        bound: best.bound,
        seconds: best.seconds(),
        notes: notes(words, (&facts, &task), &best),
        walking: facts.walk.is_some(),
        followed: facts
            .walk
            .as_ref()
            .is_some_and(|walk| walk.route().is_some()),
    })
}

/// The seconds of so many minutes.
pub(super) fn seconds_of(core: &Core, minutes: u16) -> Result<u32, Problem> {
    let seconds = 60 * u32::from(minutes);
    if seconds == 0 || seconds > baywalk_domain::plan::MOST_SECONDS {
        let found = minutes.to_string();
        let words = core
            .words
            .fill("plan-no-minutes", &[("found", found.into())]);
        return Err(Problem::input(words));
    }
    Ok(seconds)
}

/// How many points in how many bays.
pub(super) fn headline(words: &Words, plan: &Plan, minutes: u16) -> String {
    let args = [
        ("points", plan.points().into()),
        ("bays", plan.stops.len().into()),
        ("minutes", minutes.into()),
    ];
    words.fill("plan-headline", &args)
}

fn left_out_of(words: &Words, of: (&Facts, &RigTask), plan: &Plan) -> Vec<String> {
    let out = baywalk_domain::plan::left_out(&of.1.task, plan, STEPS);
    let out = out
        .into_iter()
        .filter_map(|bay| left_out(words, of, plan, bay));
    out.collect()
}

fn notes(words: &Words, (facts, task): (&Facts, &RigTask), plan: &Plan) -> Vec<String> {
    let span = task.span(plan);
    let time = [
        ("usual", minutes(span.usual).into()),
        ("quick", minutes(span.quick).into()),
        ("slow", minutes(span.slow).into()),
    ];
    let mut notes = vec![words.fill("plan-time", &time)];
    notes.push(match facts.pace.total() {
        0 => words.say("plan-pace-table"),
        count => words.fill("plan-pace-own", &[("count", count.into())]),
    });
    let whole = best_plan(&task.task.within(u32::MAX));
    if whole.over.is_none() {
        let glance = minutes(task.glance(&whole));
        notes.push(words.fill("plan-glance", &[("minutes", glance.into())]));
    }
    notes.push(proof(words, plan));
    if plan.over.is_none() && plan.worth > 0 {
        let nose = share(nose_to_tail(&task.task).worth, plan.worth);
        notes.push(words.fill("plan-nose", &[("share", nose.into())]));
    }
    notes.extend(alike(words, &facts.book, facts.today.year()));
    notes.push(words.say("plan-beside"));
    notes.push(words.say("plan-ranking"));
    notes
}

fn proof(words: &Words, plan: &Plan) -> String {
    if plan.proof == Proof::Best {
        return words.say("plan-proved");
    }
    let gap = f64::from(plan.bound - plan.worth) / f64::from(plan.worth.max(1));
    let args = [
        ("gap", words.number(100.0 * gap, 1).into()),
        ("why", words.code(plan.proof).into()),
    ];
    words.fill("plan-gap", &args)
}
