//! A plan that is followed: which bay and which points come next, and what it leaves undone.

use crate::acts::{bay, point};
use crate::next::obey;
use crate::rehearsal::{AC_BAY, DC_BAY, LINE, NEUTRAL, POST, Walker, book};
use baywalk_domain::due::DueReason;
use baywalk_domain::walk::{Act, Ending, Next, Refusal, Route, RouteStop, WalkState, summary};

fn stop(of: u128, points: &[u128]) -> RouteStop {
    RouteStop {
        bay: bay(of),
        points: points.iter().map(|n| point(*n)).collect(),
    }
}

fn route(stops: Vec<RouteStop>) -> Route {
    Route {
        minutes: 10,
        spent: 0,
        stops,
    }
}

/// Obeys what is next until something comes, and gives the bays and points that were come to.
fn until(walker: &mut Walker, wanted: impl Fn(&Next) -> bool) -> Vec<Next> {
    let mut came = Vec::new();
    for _ in 0..200 {
        let state = walker.state().unwrap();
        let next = walker.next(&state);
        if wanted(&next) {
            return came;
        }
        if matches!(next, Next::Open(_) | Next::Point(_)) {
            came.push(next.clone());
        }
        let act = obey(walker, &next);
        walker.act(act).unwrap();
    }
    panic!("it never came");
}

fn at_the_bays() -> Walker {
    let mut walker = Walker::new(book());
    walker.start();
    walker.isolate();
    walker
}

#[test]
fn the_bays_come_in_the_order_of_the_plan_with_its_points_alone_then_power() {
    let mut walker = at_the_bays();
    let stops = vec![stop(DC_BAY, &[POST]), stop(AC_BAY, &[NEUTRAL])];
    walker.act(Act::Follow(route(stops))).unwrap();
    let came = until(&mut walker, |next| *next == Next::PowerUp);
    let expected = [
        Next::Open(bay(DC_BAY)),
        Next::Point(point(POST)),
        Next::Open(bay(AC_BAY)),
        Next::Point(point(NEUTRAL)),
    ];
    assert_eq!(came, expected);
    let sum = summary(&walker.state().unwrap(), &walker.book);
    assert_eq!((sum.done, sum.total, sum.not_judged.len()), (2, 5, 3));
}

#[test]
fn a_plan_that_left_points_out_never_starts_the_months_anew() {
    let reason = |stops: Option<Vec<RouteStop>>| {
        let mut walker = at_the_bays();
        if let Some(stops) = stops {
            walker.act(Act::Follow(route(stops))).unwrap();
        }
        until(&mut walker, |next| *next == Next::End);
        let entry = walker.act(Act::End(Ending::Whole)).unwrap();
        entry.shown.due.unwrap().reason
    };
    assert_eq!(reason(None), DueReason::Months);
    assert_eq!(
        reason(Some(vec![stop(AC_BAY, &[LINE])])),
        DueReason::NeverWalked
    );
}

#[test]
fn a_plan_is_left_and_rejoined_and_undone() {
    let mut walker = at_the_bays();
    walker
        .act(Act::Follow(route(vec![stop(DC_BAY, &[POST])])))
        .unwrap();
    let next = |walker: &Walker| walker.next(&walker.state().unwrap());
    assert_eq!(next(&walker), Next::Open(bay(DC_BAY)));
    let left = walker.act(Act::LeavePlan).unwrap();
    assert_eq!(next(&walker), Next::Open(bay(AC_BAY)));
    assert_eq!(walker.act(Act::LeavePlan), Err(Refusal::NoRoute));
    walker.act(Act::Strike { act: left.id }).unwrap();
    assert_eq!(next(&walker), Next::Open(bay(DC_BAY)));
    walker.act(Act::LeavePlan).unwrap();
    let stops = vec![stop(DC_BAY, &[POST])];
    let again = Route {
        spent: 42,
        ..route(stops)
    };
    walker.act(Act::Follow(again)).unwrap();
    let plan = walker.state().unwrap().plan.unwrap();
    assert_eq!((plan.spent, plan.left(), plan.is_followed), (42, 558, true));
}

#[test]
fn time_at_the_bays_is_spent_and_that_of_proofs_is_not() {
    let mut walker = at_the_bays();
    walker
        .act(Act::Follow(route(vec![stop(AC_BAY, &[LINE])])))
        .unwrap();
    let spent = |walker: &Walker| walker.state().unwrap().plan.unwrap().spent;
    walker.act(Act::Open { bay: bay(AC_BAY) }).unwrap();
    // The tests' hand takes five seconds for each act.
    assert_eq!(spent(&walker), 5);
    until(&mut walker, |next| {
        matches!(next, Next::Point(_) | Next::SetTool(_))
    });
    assert_eq!(spent(&walker), 5);
    until(&mut walker, |next| matches!(next, Next::PowerUp));
    let state: WalkState = walker.state().unwrap();
    let acts = walker.entries.iter().filter(|entry| {
        matches!(
            entry.act,
            Act::Open { .. } | Act::SetTool { .. } | Act::Found { .. } | Act::Close { .. }
        ) || matches!(entry.act, Act::Left { .. } | Act::Look { .. })
    });
    let acts = u32::try_from(acts.count()).unwrap();
    assert_eq!(state.plan.unwrap().spent, 5 * acts);
}

#[test]
fn what_is_no_route_of_the_rig_is_refused() {
    let mut walker = at_the_bays();
    let mut refused = |route: Route| walker.act(Act::Follow(route)).unwrap_err();
    let twice = route(vec![stop(AC_BAY, &[LINE]), stop(AC_BAY, &[NEUTRAL])]);
    assert_eq!(refused(twice), Refusal::NotInBook("bay"));
    let elsewhere = route(vec![stop(AC_BAY, &[POST])]);
    assert_eq!(refused(elsewhere), Refusal::NotInBook("point"));
    let none = Route {
        minutes: 0,
        ..route(Vec::new())
    };
    assert_eq!(refused(none), Refusal::NoRoute);
}
