//! The best plan, with its proof.

use super::charge::charge;
use super::field::Field;
use super::many::{many, short_round};
use super::search::{Found, search};
use super::task::Task;
use super::tour::MOST_EXACT;
use crate::coded::coded;

/// The cells of tables that a search may fill. Ours, meant to end within 50 ms; tasks of 15 bays and
/// 200 points end in some 6 ms before it is reached, and its own time was not measured.
pub const STEPS: u64 = 60_000_000;

coded! {
    /// How sure it is that no plan is worth more.
    Proof as "plan-proof" {
        /// Proved: the bound is the plan's own worth.
        Best = "best",
        /// Not proved, since more bays come into question than can be searched whole.
        TooManyBays = "too_many_bays",
        /// Not proved, since the search was cut off.
        CutOff = "cut_off",
    }
}

/// A bay of a plan.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Stop {
    /// Which bay of the task.
    pub bay: usize,
    /// Which points of it, in their order.
    pub points: Vec<usize>,
    /// The seconds to walk there from the stop before.
    pub walk: u32,
    /// The seconds to open it, to go through the points and to close it.
    pub work: u32,
}

/// Which bays, in which order, with which points.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Plan {
    /// The bays in order.
    pub stops: Vec<Stop>,
    /// The seconds to walk back at the end.
    pub back: u32,
    /// What the points are worth together.
    pub worth: u32,
    /// What no plan exceeds.
    pub bound: u32,
    /// Whether that is proved to be the plan's own worth.
    pub proof: Proof,
    /// By how many seconds that which must be done is too long; the plan holds just that then.
    pub over: Option<u32>,
}

impl Plan {
    /// All seconds of the plan.
    #[must_use]
    pub fn seconds(&self) -> u32 {
        self.walking() + self.stops.iter().map(|stop| stop.work).sum::<u32>()
    }

    /// The seconds of walking.
    #[must_use]
    pub fn walking(&self) -> u32 {
        self.back + self.stops.iter().map(|stop| stop.walk).sum::<u32>()
    }

    /// How many points are in it.
    #[must_use]
    pub fn points(&self) -> usize {
        self.stops.iter().map(|stop| stop.points.len()).sum()
    }
}

/// The plan that is worth most within the seconds of a task: the exact optimum to the second, with
/// its proof, for up to 15 bays or where walking does not count; else the best one found, with a
/// bound.
///
/// Opening and closing a bay is paid once, walking from and back to place 0, each point its own
/// seconds. What must be done is always in. Of rounds of one length, the one that begins nearer the
/// nose is taken.
///
/// # Example
/// ```
/// use baywalk_domain::plan::{BayTask, PointTask, Proof, Task, plan};
/// let bay = |worth: &[u32]| BayTask {
///     seconds: 120,
///     points: worth.iter().map(|worth| PointTask { seconds: 30, worth: *worth, must: false }).collect(),
///     must: false,
/// };
/// let task = Task::new(vec![bay(&[5, 5]), bay(&[4, 4, 4])], None, 210)?;
/// let best = plan(&task);
/// assert_eq!((best.worth, best.bound, best.proof), (12, 12, Proof::Best));
/// assert_eq!(best.stops[0].bay, 1);
/// # Ok::<(), baywalk_domain::plan::TaskFault>(())
/// ```
#[must_use]
pub fn plan(task: &Task) -> Plan {
    plan_within(task, STEPS)
}

/// The same as [`plan`], with the cells of tables that a search may fill.
#[must_use]
pub fn plan_within(task: &Task, steps: u64) -> Plan {
    let some = |bay: &usize| {
        let given = task.bays().get(*bay);
        given.is_some_and(|bay| bay.is_forced() || !bay.points.is_empty())
    };
    let which: Vec<usize> = (0..task.bays().len()).filter(some).collect();
    let found = if !task.walks() {
        charge(&Field::of(task, &which, task.seconds()), |_| 0).map(|found| (which.clone(), found))
    } else if which.len() > MOST_EXACT {
        many(task, &which, steps)
    } else {
        search(&Field::of(task, &which, task.seconds()), steps).map(|found| (which.clone(), found))
    };
    match found {
        Some((bays, found)) => {
            let many = task.walks() && which.len() > MOST_EXACT;
            let proof = match (found.bound > found.worth, many) {
                (false, _) => Proof::Best,
                (true, true) => Proof::TooManyBays,
                (true, false) => Proof::CutOff,
            };
            told(task, &bays, &found, proof)
        }
        None => must_alone(task, &which),
    }
}

/// What must be done and nothing else, on its shortest round, with how much too long it is.
fn must_alone(task: &Task, which: &[usize]) -> Plan {
    let forced = |bay: &&usize| {
        task.bays()
            .get(**bay)
            .is_some_and(super::task::BayTask::is_forced)
    };
    let bays: Vec<usize> = which.iter().filter(forced).copied().collect();
    let exact = bays.len() <= MOST_EXACT;
    let order = if exact {
        let field = Field::of(task, &bays, u32::MAX / 8).without_choice();
        search(&field, 0).map_or_else(Vec::new, |found| found.order)
    } else {
        let order = short_round(task, &bays);
        order
            .iter()
            .filter_map(|bay| bays.iter().position(|other| other == bay))
            .collect()
    };
    let found = Found {
        order,
        items: Vec::new(),
        worth: 0,
        bound: 0,
    };
    let proof = if exact {
        Proof::Best
    } else {
        Proof::TooManyBays
    };
    let mut plan = told(task, &bays, &found, proof);
    plan.over = plan.seconds().checked_sub(task.seconds());
    plan
}

fn told(task: &Task, bays: &[usize], found: &Found, proof: Proof) -> Plan {
    let must: u32 = task
        .bays()
        .iter()
        .flat_map(|bay| &bay.points)
        .filter(|point| point.must)
        .map(|point| point.worth)
        .sum();
    let mut at = 0;
    let mut stops = Vec::new();
    for place in &found.order {
        let Some((number, bay)) = bays
            .get(*place)
            .and_then(|at| Some((*at, task.bays().get(*at)?)))
        else {
            continue;
        };
        let chosen = |point: usize| {
            found
                .items
                .iter()
                .any(|item| item.bay == *place && item.point == point)
        };
        let points = bay.points.iter().enumerate();
        let points: Vec<_> = points
            .filter(|(at, point)| point.must || chosen(*at))
            .collect();
        stops.push(Stop {
            bay: number,
            walk: task.leg(at, number + 1),
            work: bay.seconds + points.iter().map(|(_, point)| point.seconds).sum::<u32>(),
            points: points.iter().map(|(at, _)| *at).collect(),
        });
        at = number + 1;
    }
    Plan {
        stops,
        back: task.leg(at, 0),
        worth: found.worth + must,
        bound: found.bound + must,
        proof,
        over: None,
    }
}
