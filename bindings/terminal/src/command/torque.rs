//! `torque`: advice for a point of a rig, or for a terminal described by hand.

use super::{fields, rig_of};
use crate::out;
use baywalk_screens::torque::{TorqueScreen, by_hand, of_point};
use baywalk_screens::{Core, Problem};
use clap::ArgMatches;

pub(super) fn run(core: &Core, matches: &ArgMatches) -> Result<(), Problem> {
    let given: Vec<&String> = matches
        .get_many::<String>("fields")
        .into_iter()
        .flatten()
        .collect();
    let screen = match given.as_slice() {
        [code] if !code.contains('=') => of_point(core, rig_of(core, matches)?, code)?,
        _ => by_hand(core, &fields(core, matches)?)?,
    };
    if matches.get_flag("json") {
        return out::json(&screen);
    }
    print(&screen);
    Ok(())
}

fn print(screen: &TorqueScreen) {
    out::line(&format!("{}: {}", screen.held_by, screen.action.word));
    let figure = &screen.figure;
    if !figure.number.is_empty() {
        out::line(&format!(
            "  {} {} ({})",
            figure.number, figure.unit, figure.metric
        ));
    }
    out::marked("  ", std::slice::from_ref(&figure.basis));
    out::marked("  ", &screen.lines);
    out::marked("  ? ", &screen.missing);
    out::marked("  ! ", &screen.cautions);
    out::marked("  ", &screen.tools);
    out::marked("", &screen.notes);
}
