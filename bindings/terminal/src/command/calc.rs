//! `calc`: one JSON object in, one out.

use super::text;
use crate::{calc, out};
use baywalk_screens::{Problem, ProblemKind};
use clap::ArgMatches;
use std::io::Read;

pub(super) fn run(matches: &ArgMatches) -> Result<(), Problem> {
    let name = text(matches, "name");
    if name.is_empty() {
        for (name, about) in calc::names() {
            out::line(&format!("{name}: {about}"));
        }
        return Ok(());
    }
    let wrong = |fault: &dyn std::fmt::Display| Problem::new(ProblemKind::Input, fault.to_string());
    if matches.get_flag("schema") {
        out::line(&calc::schema(name).map_err(|fault| wrong(&fault))?);
        return Ok(());
    }
    let mut input = String::new();
    std::io::stdin()
        .read_to_string(&mut input)
        .map_err(|fault| wrong(&fault))?;
    out::line(&calc::run(name, &input).map_err(|fault| wrong(&fault))?);
    Ok(())
}
