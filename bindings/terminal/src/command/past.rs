//! `past` and `chart`: what the walks tell, in words and in pictures.

use super::{rig_of, text};
use crate::out;
use baywalk_screens::past::{self, Subject};
use baywalk_screens::{Core, Problem};
use clap::ArgMatches;

/// The width of a chart on paper, in pixels.
const WIDTH: f64 = 720.0;

pub(super) fn run(core: &Core, matches: &ArgMatches) -> Result<(), Problem> {
    let rig = rig_of(core, matches)?;
    let screen = past::past(core, rig, point(matches), WIDTH)?.screen;
    if matches.get_flag("json") {
        return out::json(&screen);
    }
    out::line(&screen.title);
    for chart in &screen.charts {
        out::line(&format!("\n{}", chart.title));
        out::marked("", &chart.told);
    }
    let moved: Vec<String> = screen
        .moved
        .iter()
        .map(|point| point.words.clone())
        .collect();
    for lines in [&screen.walks, &moved, &screen.why] {
        if !lines.is_empty() {
            out::line("");
        }
        out::marked("", lines);
    }
    out::line(&format!("\n{}", screen.caution));
    Ok(())
}

pub(super) fn chart(core: &Core, matches: &ArgMatches) -> Result<(), Problem> {
    let subject = Subject::of(core, text(matches, "chart"), point(matches))?;
    let chart = past::chart(core, rig_of(core, matches)?, subject, WIDTH)?;
    if let Some(path) = out::path(matches, "to") {
        out::file(&core.words, path, &chart.svg(core.words.locale()))?;
    }
    if let Some(path) = out::path(matches, "numbers") {
        out::file(&core.words, path, &chart.numbers.csv())?;
    }
    out::line(&chart.title);
    out::marked("", &chart.told);
    Ok(())
}

fn point(matches: &ArgMatches) -> Option<&str> {
    matches.get_one::<String>("point").map(String::as_str)
}
