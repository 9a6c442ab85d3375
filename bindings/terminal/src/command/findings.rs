//! `findings`: what waits, and deciding about it.

use super::{rig_of, text};
use crate::out;
use baywalk_screens::{Core, Problem, findings};
use clap::ArgMatches;

pub(super) fn run(core: &mut Core, matches: &ArgMatches) -> Result<(), Problem> {
    let rig = rig_of(core, matches)?;
    if let Some(("sheet", of)) = matches.subcommand() {
        return super::report::follow_up(core, rig, of);
    }
    if let Some(("decide", of)) = matches.subcommand() {
        let number = of.get_one::<u32>("number").copied().unwrap_or(0);
        let by = of.get_one::<String>("by").map(String::as_str);
        let told = findings::decide(
            core,
            rig,
            number,
            (text(of, "decision"), by, text(of, "note")),
        )?;
        return out::told(of, &told);
    }
    let lines = findings::findings(core, rig)?;
    if matches.get_flag("json") {
        return out::json(&lines);
    }
    if lines.is_empty() {
        out::line(&core.words.fill("rig-findings", &[("count", 0.into())]));
    }
    for finding in lines {
        let open = if finding.open {
            &finding.urgency
        } else {
            &finding.follow_up
        };
        out::line(&format!(
            "{:>3}  {} ({open}, {})",
            finding.number, finding.words, finding.on
        ));
        if finding.open && !finding.follow_up.is_empty() {
            out::line(&format!("     {}", finding.follow_up));
        }
    }
    Ok(())
}
