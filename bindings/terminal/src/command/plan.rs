//! `plan`: what matters most within the minutes at hand; followed or left in the open walk.

use super::rig_of;
use crate::out;
use baywalk_screens::plan::{self, PlanScreen, PlanStop};
use baywalk_screens::{Core, Problem, ProblemKind};
use clap::ArgMatches;

pub(super) fn run(core: &mut Core, matches: &ArgMatches) -> Result<(), Problem> {
    let rig = rig_of(core, matches)?;
    let minutes = matches.get_one::<u16>("minutes").copied();
    if matches.get_flag("leave") {
        return out::told(matches, &plan::leave(core, rig)?);
    }
    match (minutes, matches.get_flag("follow")) {
        (Some(minutes), true) => out::told(matches, &plan::follow(core, rig, minutes)?),
        (None, true) => out::told(matches, &plan::rejoin(core, rig)?),
        (Some(minutes), false) => show(core, matches, &plan::plan(core, rig, minutes)?),
        (None, false) => {
            let none = core.words.fill("plan-no-minutes", &[("found", "".into())]);
            Err(Problem::new(ProblemKind::Input, none))
        }
    }
}

fn show(core: &Core, matches: &ArgMatches, screen: &PlanScreen) -> Result<(), Problem> {
    if matches.get_flag("json") {
        return out::json(screen);
    }
    out::line(&format!("{}: {}", screen.rig, screen.headline));
    out::marked("! ", screen.over.as_slice());
    if screen.stops.is_empty() {
        out::line(&core.words.say("plan-empty"));
    }
    for stop in &screen.stops {
        show_stop(stop, matches.get_flag("why"));
    }
    out::marked("", &screen.left_out);
    out::marked("", &screen.notes);
    Ok(())
}

fn show_stop(stop: &PlanStop, why: bool) {
    out::line(&format!("[{}] {}", stop.code, stop.words));
    for point in &stop.points {
        out::line(&format!(
            "  {:<4} {}. {}",
            point.code, point.name, point.words
        ));
        out::marked("       ! ", point.must.as_slice());
        if why {
            out::marked("       ", &point.factors);
        }
    }
    out::marked("  ", stop.some_left.as_slice());
}
