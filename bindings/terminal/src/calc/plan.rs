//! `calc plan`: which points, in which bays, in which order, within the seconds at hand.

use super::shape::Word;
use super::{Calculate, Fault, at};
use baywalk_domain::plan::{
    BayTask, LeftOut, Legs, Plan, PointTask, Proof, STEPS, Task, left_out, nose_to_tail, plan,
};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The calculation.
pub(super) struct Calculation;

/// Bays nose to tail, their points, the ways between them and the seconds at hand.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct Given {
    /// The seconds at hand for the bays, walking among them.
    seconds: u32,
    /// The bays, nose to tail.
    bays: Vec<BayIn>,
    /// The points; those of one bay in the order in which they are gone through.
    points: Vec<PointIn>,
    /// Seconds from each place (row) to each other one (column): first the place where the round
    /// begins and ends, then the bays as given; null where walking does not count.
    legs: Option<Vec<Vec<u32>>>,
}

/// A bay.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct BayIn {
    /// Its code, once in the list.
    code: String,
    /// The seconds to open it.
    open: u32,
    /// The seconds to close it.
    close: u32,
}

/// A point.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct PointIn {
    /// Its code, once in the list.
    code: String,
    /// The code of its bay.
    bay: String,
    /// The seconds it takes; at least one.
    seconds: u32,
    /// What going through it is worth.
    worth: u32,
    /// Whether it is in every plan.
    #[serde(default)]
    must: bool,
}

/// The plan that is worth most, and beside it what nose to tail would have covered.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Found {
    #[serde(flatten)]
    plan: PlanOut,
    /// What no plan exceeds.
    bound: u32,
    /// How sure it is that no plan is worth more.
    proof: Word<Proof>,
    /// By how many seconds that which must be done is too long; null where it fits.
    over: Option<u32>,
    /// The bays that are not opened, and why.
    left_out: Vec<LeftOutOut>,
    /// What nose to tail until time is out covers.
    nose_to_tail: PlanOut,
}

/// A round.
#[derive(Debug, Serialize, JsonSchema)]
struct PlanOut {
    /// Codes of the bays in order.
    bays: Vec<String>,
    /// Codes of the points in order.
    points: Vec<String>,
    /// All seconds, walking among them.
    seconds: u32,
    /// The seconds of walking.
    walking: u32,
    /// What the points are worth together.
    worth: u32,
}

/// A bay that is not opened.
#[derive(Debug, Serialize, JsonSchema)]
struct LeftOutOut {
    bay: String,
    #[serde(flatten)]
    why: Why,
}

/// Why a bay is not opened.
#[derive(Debug, Serialize, JsonSchema)]
#[serde(tag = "why", rename_all = "snake_case")]
enum Why {
    /// It has no point.
    Nothing,
    /// So many seconds are missing for its shortest point.
    NoTime { missing: u32 },
    /// With it opened, no plan is worth more than this.
    WorthLess { with_it: u32 },
}

impl Calculate for Calculation {
    const NAME: &'static str = "plan";
    const ABOUT: &'static str =
        "The points that are worth most within the time at hand, in order, with the proof.";
    type In = Given;
    type Out = Found;

    fn calculate(given: Given) -> Result<Found, Fault> {
        let inside = points_of(&given)?;
        let task = task(&given, &inside)?;
        let best = plan(&task);
        let told = |plan: &Plan| told(&given, &inside, plan);
        let out = left_out(&task, &best, STEPS);
        Ok(Found {
            plan: told(&best),
            bound: best.bound,
            proof: Word(best.proof),
            over: best.over,
            left_out: out.iter().filter_map(|(bay, why)| reason(&given, *bay, *why)).collect(),
            nose_to_tail: told(&nose_to_tail(&task)),
        })
    }
}

/// The points of each bay, by the order of the bays.
fn points_of(given: &Given) -> Result<Vec<Vec<&PointIn>>, Fault> {
    once("bays.code", given.bays.iter().map(|bay| &bay.code))?;
    once("points.code", given.points.iter().map(|point| &point.code))?;
    let mut inside: Vec<Vec<&PointIn>> = given.bays.iter().map(|_| Vec::new()).collect();
    for point in &given.points {
        let bay = given.bays.iter().position(|bay| bay.code == point.bay);
        let place = bay.and_then(|bay| inside.get_mut(bay));
        let unknown = || at("points.bay")(format!("no bay has the code {:?}", point.bay));
        place.ok_or_else(unknown)?.push(point);
    }
    Ok(inside)
}

fn once<'a>(field: &str, codes: impl Iterator<Item = &'a String>) -> Result<(), Fault> {
    let mut seen = std::collections::BTreeSet::new();
    for code in codes {
        if !seen.insert(code) {
            return Err(at(field)(format!("{code:?} is given twice")));
        }
    }
    Ok(())
}

fn task(given: &Given, inside: &[Vec<&PointIn>]) -> Result<Task, Fault> {
    let point = |point: &&PointIn| PointTask {
        seconds: point.seconds,
        worth: point.worth,
        must: point.must,
    };
    let bay = |(bay, points): (&BayIn, &Vec<&PointIn>)| BayTask {
        seconds: bay.open.saturating_add(bay.close),
        points: points.iter().map(point).collect(),
        must: false,
    };
    let bays = given.bays.iter().zip(inside).map(bay).collect();
    let legs = given.legs.clone().map(Legs::new).transpose().map_err(at("legs"))?;
    Task::new(bays, legs, given.seconds).map_err(|fault| Fault::Refused(fault.to_string()))
}

fn told(given: &Given, inside: &[Vec<&PointIn>], plan: &Plan) -> PlanOut {
    let mut out = PlanOut {
        bays: Vec::new(),
        points: Vec::new(),
        seconds: plan.seconds(),
        walking: plan.walking(),
        worth: plan.worth,
    };
    for stop in &plan.stops {
        out.bays.extend(given.bays.get(stop.bay).map(|bay| bay.code.clone()));
        let points = stop.points.iter().filter_map(|point| inside.get(stop.bay)?.get(*point));
        out.points.extend(points.map(|point| point.code.clone()));
    }
    out
}

fn reason(given: &Given, bay: usize, why: LeftOut) -> Option<LeftOutOut> {
    Some(LeftOutOut {
        bay: given.bays.get(bay)?.code.clone(),
        why: match why {
            LeftOut::Nothing => Why::Nothing,
            LeftOut::NoTime { missing } => Why::NoTime { missing },
            LeftOut::WorthLess { with_it } => Why::WorthLess { with_it },
        },
    })
}
