//! Following a plan in the open walk: begun, made anew at the close of a bay, left, rejoined.

use super::facts::Facts;
use super::lines::minutes;
use super::screen::{headline, seconds_of};
use crate::card::{Ask, Key};
use crate::here::Here;
use crate::{Core, Problem, Told};
use baywalk_domain::ids::{ActId, RigId};
use baywalk_domain::plan::plan;
use baywalk_domain::walk::{Act, Following, Next, Route, RouteStop};
use chrono::NaiveDate;

/// Plans so many minutes for what still waits in the open walk, and follows that.
///
/// # Errors
/// [`Problem`] as [`plan`](super::plan), and where no walk is open or the rules refuse it.
pub fn follow(core: &mut Core, rig: RigId, minutes: u16) -> Result<Told, Problem> {
    let id = ActId::new(core.logbook.new_id());
    follow_as(core, rig, id, (minutes, 0))
}

/// Rejoins a plan that was left, made anew for the minutes that are left of it.
///
/// # Errors
/// [`Problem`] as [`follow`], and where no plan was followed in the walk.
pub fn rejoin(core: &mut Core, rig: RigId) -> Result<Told, Problem> {
    let id = ActId::new(core.logbook.new_id());
    rejoin_as(core, rig, id)
}

/// Leaves the plan: the bays come nose to tail again.
///
/// # Errors
/// [`Problem`] where no plan is followed.
pub fn leave(core: &mut Core, rig: RigId) -> Result<Told, Problem> {
    let id = ActId::new(core.logbook.new_id());
    leave_as(core, rig, id)
}

/// Plans anew at the close of a bay, from the pace of this walk; says so. Nothing where none is
/// followed.
pub(crate) fn again(core: &mut Core, rig: RigId) -> Result<Option<String>, Problem> {
    let Some(plan) = followed(core, rig)?.filter(|plan| plan.is_followed) else {
        return Ok(None);
    };
    let today = core.logbook.now().date();
    let (route, headline) = route(core, (rig, today), (plan.route.minutes, plan.spent))?;
    let left = minutes(plan.left());
    core.act(rig, Act::Follow(route))?;
    let args = [
        ("headline", headline.into()),
        ("left", left.into()),
        ("minutes", plan.route.minutes.into()),
    ];
    Ok(Some(core.words.fill("plan-anew", &args)))
}

/// The keys by which a plan is followed, left and rejoined: where a bay comes next, or power.
pub(crate) fn keys(here: &Here<'_>) -> Vec<Key> {
    let words = here.words;
    if !has_keys(here) {
        return Vec::new();
    }
    if here.walk.route().is_some() {
        return vec![Key::plain("leave_plan", words.say("plan-key-leave"))];
    }
    let question = words.say("plan-key-minutes");
    let ask = Ask::Number {
        question,
        unit: "min".to_owned(),
    };
    let follow = Key::plain("plan", words.say("plan-key")).noted(words.say("plan-key-note"));
    let mut keys = vec![follow.asking(ask)];
    if here.walk.plan.is_some() {
        keys.push(Key::plain("rejoin_plan", words.say("plan-key-again")));
    }
    keys
}

/// Whether the card that stands now has those keys.
pub(crate) fn has_keys(here: &Here<'_>) -> bool {
    matches!(here.next(), Next::Open(_) | Next::PowerUp)
}

/// What one of those keys does.
pub(crate) fn press(
    core: &mut Core,
    rig: RigId,
    id: ActId,
    (key, typed): (&str, &[String]),
) -> Result<Told, Problem> {
    match key {
        "plan" => {
            let typed = typed.first().map_or("", |typed| typed.trim());
            let minutes = typed.parse().map_err(|_| {
                let args = [("found", typed.into())];
                Problem::input(core.words.fill("plan-no-minutes", &args))
            })?;
            follow_as(core, rig, id, (minutes, 0))
        }
        "rejoin_plan" => rejoin_as(core, rig, id),
        _ => leave_as(core, rig, id),
    }
}

fn followed(core: &Core, rig: RigId) -> Result<Option<Following>, Problem> {
    let walk = core.logbook.shared_walk(rig)?;
    Ok(walk.and_then(|walk| walk.plan.clone()))
}

fn follow_as(core: &mut Core, rig: RigId, id: ActId, time: (u16, u32)) -> Result<Told, Problem> {
    let today = core.logbook.now().date();
    let (route, headline) = route(core, (rig, today), time)?;
    let mut told = core.act_as(id, rig, Act::Follow(route))?;
    let left = (60 * u32::from(time.0)).saturating_sub(time.1);
    let args = [
        ("headline", headline.into()),
        ("left", minutes(left).into()),
        ("minutes", time.0.into()),
    ];
    told.sentences.push(core.words.fill("plan-followed", &args));
    Ok(told)
}

fn rejoin_as(core: &mut Core, rig: RigId, id: ActId) -> Result<Told, Problem> {
    let time = left_behind(core, rig)?;
    follow_as(core, rig, id, time)
}

fn leave_as(core: &mut Core, rig: RigId, id: ActId) -> Result<Told, Problem> {
    let mut told = core.act_as(id, rig, Act::LeavePlan)?;
    told.sentences.push(core.words.say("plan-left"));
    Ok(told)
}

/// The route that [`follow`] would follow on a day; without minutes, the one that [`rejoin`] would.
/// Nothing is changed.
///
/// # Errors
/// [`Problem`] as theirs.
pub fn route_on(
    core: &Core,
    rig: RigId,
    today: NaiveDate,
    minutes: Option<u16>,
) -> Result<Route, Problem> {
    let time = match minutes {
        Some(minutes) => (minutes, 0),
        None => left_behind(core, rig)?,
    };
    Ok(route(core, (rig, today), time)?.0)
}

/// The minutes of the plan that was followed in the walk, and the seconds of them that are spent.
fn left_behind(core: &Core, rig: RigId) -> Result<(u16, u32), Problem> {
    let none = || Problem::refused(core.words.say("plan-no-plan"));
    let plan = followed(core, rig)?.ok_or_else(none)?;
    Ok((plan.route.minutes, plan.spent))
}

/// The best route for what still waits within minutes of which some seconds are spent.
fn route(
    core: &Core,
    (rig, today): (RigId, NaiveDate),
    (minutes, spent): (u16, u32),
) -> Result<(Route, String), Problem> {
    let facts = Facts::gather(core, rig, today)?;
    let seconds = seconds_of(core, minutes)?.saturating_sub(spent);
    let task = facts.task(core, seconds)?;
    let best = plan(&task.task);
    let stops = best.stops.iter().filter_map(|stop| {
        Some(RouteStop {
            bay: *task.bays.get(stop.bay)?,
            points: task.points_of(stop),
        })
    });
    let route = Route {
        minutes,
        spent,
        stops: stops.collect(),
    };
    Ok((route, headline(&core.words, &best, minutes)))
}
