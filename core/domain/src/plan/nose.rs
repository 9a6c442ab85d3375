//! Nose to tail until time is out: what is compared with a plan.

use super::solve::{Plan, Proof, Stop};
use super::task::Task;

/// Goes through bay after bay, point after point, nose to tail, as long as the next one, the cover
/// and the way back still fit; what must be done counts like anything else.
///
/// # Example
/// ```
/// use baywalk_domain::plan::{BayTask, PointTask, Task, nose_to_tail};
/// let point = PointTask { seconds: 30, worth: 5, must: false };
/// let bay = BayTask { seconds: 120, points: vec![point; 3], must: false };
/// let task = Task::new(vec![bay.clone(), bay], None, 350)?;
/// assert_eq!(nose_to_tail(&task).worth, 15);
/// # Ok::<(), baywalk_domain::plan::TaskFault>(())
/// ```
#[must_use]
pub fn nose_to_tail(task: &Task) -> Plan {
    let (mut at, mut spent, mut worth) = (0, 0, 0);
    let mut stops: Vec<Stop> = Vec::new();
    'bays: for (number, bay) in task.bays().iter().enumerate() {
        let walk = task.leg(at, number + 1);
        let back = task.leg(number + 1, 0);
        let mut work = bay.seconds;
        let mut points = Vec::new();
        for (place, point) in bay.points.iter().enumerate() {
            if spent + walk + work + point.seconds + back > task.seconds() {
                break;
            }
            work += point.seconds;
            worth += point.worth;
            points.push(place);
        }
        let whole = points.len() == bay.points.len();
        if !points.is_empty() {
            spent += walk + work;
            at = number + 1;
            stops.push(Stop {
                bay: number,
                points,
                walk,
                work,
            });
        }
        if !whole {
            break 'bays;
        }
    }
    Plan {
        back: task.leg(at, 0),
        stops,
        worth,
        bound: worth,
        proof: Proof::Best,
        over: None,
    }
}
