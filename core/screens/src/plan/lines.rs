//! Bays and points of a plan, in words.

use super::facts::Facts;
use crate::Named;
use crate::named::count;
use baywalk_domain::ids::PointId;
use baywalk_domain::plan::{LeftOut, Plan, RigTask, Stop};
use baywalk_words::Words;
use serde::Serialize;

/// A bay of a plan.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct PlanStop {
    /// Its tag.
    pub code: String,
    /// Its name.
    pub name: String,
    /// Where it is reached from.
    pub side: Named,
    /// The seconds to walk there from the stop before.
    pub walk_seconds: u32,
    /// The seconds to open it, to go through its points and to close it.
    pub work_seconds: u32,
    /// Name, side and minutes in words.
    pub words: String,
    /// Its points, in order.
    pub points: Vec<PlanPoint>,
    /// How many of its points stay out, in words; nothing where none does.
    pub some_left: Option<String>,
}

/// A point of a plan.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "mobile", derive(uniffi::Record))]
pub struct PlanPoint {
    /// Its code.
    pub code: String,
    /// Its name.
    pub name: String,
    /// Its rank in hundredths.
    pub rank: u32,
    /// Its rank in words: how readily it moves, what it would do.
    pub words: String,
    /// Why it is in every plan, where it is.
    pub must: Option<String>,
    /// What the rank is made of: one sentence each.
    pub factors: Vec<String>,
}

/// Whole minutes, rounded up.
pub(super) const fn minutes(seconds: u32) -> u32 {
    seconds.div_ceil(60)
}

/// A share in whole hundredths, rounded down.
pub(super) fn share(part: u32, of: u32) -> u32 {
    let hundredths = u64::from(part) * 100 / u64::from(of.max(1));
    u32::try_from(hundredths).unwrap_or(u32::MAX)
}

pub(super) fn stop(words: &Words, facts: &Facts, task: &RigTask, stop: &Stop) -> Option<PlanStop> {
    let bay = facts.book.bay(*task.bays.get(stop.bay)?)?;
    let points = task.points_of(stop);
    let left = task.points.get(stop.bay)?.len() - points.len();
    let side = Named::of(words, bay.side);
    let args = [
        ("name", bay.name.as_str().into()),
        ("side", side.word.as_str().into()),
        ("minutes", minutes(stop.walk + stop.work).into()),
    ];
    Some(PlanStop {
        code: bay.code.to_string(),
        name: bay.name.clone(),
        walk_seconds: stop.walk,
        work_seconds: stop.work,
        words: words.fill("plan-stop", &args),
        side,
        points: points
            .iter()
            .filter_map(|id| point(words, facts, *id))
            .collect(),
        some_left: (left > 0)
            .then(|| words.fill("plan-some-left", &[("count", count(left).into())])),
    })
}

fn point(words: &Words, facts: &Facts, id: PointId) -> Option<PlanPoint> {
    let (point, rank) = (facts.book.point(id)?, facts.rank(id)?);
    let args = [
        ("rank", words.hundredths(rank.worth).into()),
        ("likelihood", words.hundredths(rank.likelihood()).into()),
        ("consequence", words.hundredths(rank.consequence()).into()),
    ];
    let why = facts.must.get(&id).map(|why| words.code(*why));
    Some(PlanPoint {
        code: point.code.to_string(),
        name: point.name.clone(),
        rank: rank.worth,
        words: words.fill("plan-rank", &args),
        must: why.map(|why| words.fill("plan-must", &[("why", why.into())])),
        factors: rank
            .factors
            .iter()
            .map(|factor| words.factor(factor))
            .collect(),
    })
}

/// Why a bay is not in a plan.
pub(super) fn left_out(
    words: &Words,
    (facts, task): (&Facts, &RigTask),
    plan: &Plan,
    (bay, why): (usize, LeftOut),
) -> Option<String> {
    let bay = words.bay_name(*task.bays.get(bay)?, &*facts.book);
    let why = match why {
        LeftOut::Nothing => words.say("plan-left-nothing"),
        LeftOut::NoTime { missing } => {
            words.fill("plan-left-no-time", &[("minutes", minutes(missing).into())])
        }
        LeftOut::WorthLess { with_it } => words.fill(
            "plan-left-worth-less",
            &[("share", share(with_it, plan.worth).into())],
        ),
    };
    let args = [("bay", bay.into()), ("why", why.into())];
    Some(words.fill("plan-left-out", &args))
}
