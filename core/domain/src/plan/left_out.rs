//! Why a bay is not in a plan.

use super::solve::{Plan, plan_within};
use super::task::Task;

/// Why a bay is not in a plan.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LeftOut {
    /// It has no point that waits.
    Nothing,
    /// Opening it beside what must be done takes more time than is at hand, by so many seconds.
    NoTime {
        /// The seconds that are missing for its shortest point.
        missing: u32,
    },
    /// Its minutes are worth more elsewhere: with it opened, no plan is worth more than this.
    WorthLess {
        /// What the best plan with it opened is worth.
        with_it: u32,
    },
}

/// For each bay that a plan leaves out, why.
///
/// The task is planned once more for each, with that bay opened.
#[must_use]
pub fn left_out(task: &Task, plan: &Plan, steps: u64) -> Vec<(usize, LeftOut)> {
    let out = |bay: &usize| plan.stops.iter().all(|stop| stop.bay != *bay);
    let bays = (0..task.bays().len()).filter(out);
    bays.map(|bay| (bay, why(task, bay, steps))).collect()
}

fn why(task: &Task, bay: usize, steps: u64) -> LeftOut {
    let given = task.bays().get(bay);
    let shortest = given.and_then(|bay| bay.points.iter().map(|point| point.seconds).min());
    let Some(shortest) = shortest else {
        return LeftOut::Nothing;
    };
    let slack = i64::from(task.seconds()) - i64::from(least(task, bay)) - i64::from(shortest);
    match u32::try_from(-slack) {
        Ok(missing) if missing > 0 => LeftOut::NoTime { missing },
        _ => LeftOut::WorthLess {
            with_it: plan_within(&task.forcing(bay), steps).bound,
        },
    }
}

/// The least seconds of a plan with what must be done and one more bay opened.
fn least(task: &Task, bay: usize) -> u32 {
    plan_within(&task.forcing(bay).within(0), 0).seconds()
}
