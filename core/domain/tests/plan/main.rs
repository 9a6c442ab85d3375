//! Plans against every plan there is, on tasks small enough to try them all.
#![expect(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    unused_imports,
    dead_code,
    reason = "tests; the small rig is shared"
)]

#[path = "../rehearsal/mod.rs"]
mod rehearsal;
mod rigs;

use baywalk_domain::plan::{
    BayTask, LeftOut, Legs, Plan, PointTask, Proof, STEPS, Task, left_out, nose_to_tail, plan,
    plan_within,
};
use proptest::collection::vec;
use proptest::prelude::*;

/// The shortest round over some bays, by trying every order.
fn shortest(task: &Task, at: usize, left: &[usize]) -> u32 {
    if left.is_empty() {
        return task.leg(at, 0);
    }
    let on = left.iter().map(|next| {
        let rest: Vec<usize> = left.iter().copied().filter(|bay| bay != next).collect();
        task.leg(at, next + 1) + shortest(task, next + 1, &rest)
    });
    on.min().unwrap()
}

/// What the best of all plans is worth; `None` where what must be done does not fit.
fn by_trying_all(task: &Task) -> Option<u32> {
    let bays = task.bays();
    let mut best = None;
    for set in 0..1_usize << bays.len() {
        let open: Vec<usize> = (0..bays.len()).filter(|bay| set >> bay & 1 == 1).collect();
        // A bay with nothing in it is not opened, even where the table of ways made that a short cut.
        if open
            .iter()
            .any(|bay| !bays[*bay].is_forced() && bays[*bay].points.is_empty())
        {
            continue;
        }
        if (0..bays.len()).any(|bay| bays[bay].is_forced() && !open.contains(&bay)) {
            continue;
        }
        let spent: u32 = open.iter().map(|bay| bays[*bay].seconds).sum();
        let spent = spent + shortest(task, 0, &open);
        let points: Vec<PointTask> = open
            .iter()
            .flat_map(|bay| bays[*bay].points.clone())
            .collect();
        for chosen in 0..1_usize << points.len() {
            let is_in = |at: usize| chosen >> at & 1 == 1;
            if (0..points.len()).any(|at| points[at].must && !is_in(at)) {
                continue;
            }
            let taken = || points.iter().enumerate().filter(|(at, _)| is_in(*at));
            let seconds: u32 = taken().map(|(_, point)| point.seconds).sum();
            if spent + seconds <= task.seconds() {
                best = best.max(Some(taken().map(|(_, point)| point.worth).sum()));
            }
        }
    }
    best
}

/// What a plan says of itself, added up again.
fn holds_together(task: &Task, plan: &Plan) {
    let mut at = 0;
    let (mut worth, mut seconds) = (0, 0);
    for stop in &plan.stops {
        let bay = &task.bays()[stop.bay];
        let chosen = || stop.points.iter().map(|point| bay.points[*point]);
        assert_eq!(stop.walk, task.leg(at, stop.bay + 1));
        assert_eq!(
            stop.work,
            bay.seconds + chosen().map(|point| point.seconds).sum::<u32>()
        );
        worth += chosen().map(|point| point.worth).sum::<u32>();
        seconds += stop.walk + stop.work;
        at = stop.bay + 1;
    }
    assert_eq!(plan.back, task.leg(at, 0));
    assert_eq!(plan.worth, worth);
    assert_eq!(plan.seconds(), seconds + plan.back);
    for (number, bay) in task.bays().iter().enumerate() {
        let stop = plan.stops.iter().find(|stop| stop.bay == number);
        for (at, point) in bay.points.iter().enumerate() {
            assert!(!point.must || stop.is_some_and(|stop| stop.points.contains(&at)));
        }
    }
}

/// Ways between places on a line, each with a step aside: no detour is a short cut.
fn places() -> impl Strategy<Value = Vec<Vec<u32>>> {
    vec((0_u32..50, 0_u32..10), 5).prop_map(|places| {
        let way = |a: &(u32, u32), b: &(u32, u32)| a.0.abs_diff(b.0) + a.1 + b.1;
        let row = |from| places.iter().map(|to| way(from, to)).collect();
        places.iter().map(row).collect()
    })
}

fn tasks(must: u32) -> impl Strategy<Value = Task> {
    let point =
        (1_u32..60, 0_u32..20, 0..100_u32).prop_map(move |(seconds, worth, chance)| PointTask {
            seconds,
            worth,
            must: chance < must,
        });
    let bay = (0_u32..80, vec(point, 0..3)).prop_map(|(seconds, points)| BayTask {
        seconds,
        points,
        must: false,
    });
    (vec(bay, 0..5), places(), any::<bool>(), 0_u32..400).prop_map(
        |(bays, mut rows, walks, seconds)| {
            rows.truncate(bays.len() + 1);
            rows.iter_mut().for_each(|row| row.truncate(bays.len() + 1));
            let legs = walks.then(|| Legs::new(rows).unwrap());
            Task::new(bays, legs, seconds).unwrap()
        },
    )
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(500))]

    #[test]
    fn the_plan_is_the_best_of_all_plans(task in prop_oneof![tasks(0), tasks(20)]) {
        let found = plan(&task);
        holds_together(&task, &found);
        match by_trying_all(&task) {
            Some(best) => {
                prop_assert_eq!((found.worth, found.bound, found.proof), (best, best, Proof::Best));
                prop_assert_eq!(found.over, None);
                prop_assert!(found.seconds() <= task.seconds());
            }
            None => {
                let over = found.over.unwrap();
                prop_assert_eq!(found.seconds(), task.seconds() + over);
                prop_assert!(by_trying_all(&task.within(task.seconds() + over)).is_some());
                prop_assert!(by_trying_all(&task.within(task.seconds() + over - 1)).is_none());
            }
        }
    }

    #[test]
    fn a_search_that_is_cut_off_tells_a_bound_that_holds(task in tasks(0), steps in 0_u64..3) {
        let (found, best) = (plan_within(&task, steps), by_trying_all(&task).unwrap());
        holds_together(&task, &found);
        prop_assert!(found.worth <= best && best <= found.bound);
        prop_assert_eq!(found.proof == Proof::Best, found.worth == found.bound);
    }

    #[test]
    fn nose_to_tail_is_a_plan_and_never_better(task in tasks(0)) {
        let nose = nose_to_tail(&task);
        holds_together(&task, &nose);
        prop_assert!(nose.seconds() <= task.seconds() || nose.stops.is_empty());
        prop_assert!(nose.worth <= plan(&task).worth);
    }

    #[test]
    fn a_bay_left_out_has_its_reason(task in tasks(10)) {
        let best = plan(&task);
        prop_assume!(best.over.is_none());
        for (bay, why) in left_out(&task, &best, STEPS) {
            let forced = task.forcing(bay);
            match why {
                LeftOut::Nothing => prop_assert!(task.bays()[bay].points.is_empty()),
                LeftOut::WorthLess { with_it } => {
                    prop_assert_eq!(by_trying_all(&forced), Some(with_it));
                    prop_assert!(with_it <= best.worth);
                }
                LeftOut::NoTime { missing } => {
                    let shortest = task.bays()[bay].points.iter().map(|point| point.seconds).min().unwrap();
                    let enough = task.seconds() + missing - shortest;
                    prop_assert!(by_trying_all(&forced.within(enough)).is_some());
                    prop_assert!(enough == 0 || by_trying_all(&forced.within(enough - 1)).is_none());
                }
            }
        }
    }
}

fn row_of_bays(count: usize, must: bool) -> Task {
    let bay = |number: u32| BayTask {
        seconds: 60,
        points: vec![
            PointTask {
                seconds: 20,
                worth: 10 + number,
                must,
            },
            PointTask {
                seconds: 30,
                worth: 3,
                must: false,
            },
        ],
        must: false,
    };
    let number = |at: usize| u32::try_from(at).unwrap();
    let bays = (0..count).map(|at| bay(number(at))).collect();
    let rows = (0..=count).map(|from| {
        (0..=count)
            .map(|to| number(from.abs_diff(to)) * 4)
            .collect()
    });
    Task::new(bays, Some(Legs::new(rows.collect()).unwrap()), 1_800).unwrap()
}

#[test]
fn beyond_fifteen_bays_the_gap_is_said() {
    let found = plan(&row_of_bays(30, false));
    holds_together(&row_of_bays(30, false), &found);
    assert_eq!((found.proof, found.over), (Proof::TooManyBays, None));
    assert!(found.bound > found.worth && found.seconds() <= 1_800);
    assert!(
        f64::from(found.worth) > 0.6 * f64::from(found.bound),
        "{found:?}"
    );
}

#[test]
fn more_than_fifteen_bays_that_must_be_opened_are_all_opened() {
    let task = row_of_bays(18, true);
    let found = plan(&task);
    holds_together(&task, &found);
    assert_eq!((found.stops.len(), found.over), (18, None));
    let short = plan(&task.within(1_000));
    assert_eq!(short.over, Some(short.seconds() - 1_000));
    assert_eq!(short.stops.len(), 18);
}

#[test]
fn a_round_goes_nose_to_tail_where_that_costs_nothing() {
    let task = row_of_bays(10, false).within(3_000);
    let order: Vec<usize> = plan(&task).stops.iter().map(|stop| stop.bay).collect();
    assert_eq!(order, (0..10).collect::<Vec<_>>());
}
