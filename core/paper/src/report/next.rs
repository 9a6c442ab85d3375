//! When to look again, and why.

use super::counts::heading;
use super::view::View;
use crate::sheet::{Block, Cell};
use baywalk_domain::coded::Coded;
use baywalk_domain::due::SETTLE_MILES;

pub(super) fn blocks(view: &View<'_>) -> Vec<Block> {
    let Some(due) = view.facts.due else {
        return vec![
            heading(view, "report-next"),
            Block::Text(view.say("report-next-unknown")),
        ];
    };
    let mut next = vec![view.words.date(due.on), view.headed(due.reason)];
    if let Some(at) = &due.at {
        let unit = at.unit().code();
        let args = [("distance", at.text()), ("unit", unit)];
        next.push(view.fill("report-next-distance", &args));
    }
    let mut terms = Vec::new();
    if let Some(day) = due.second_look {
        let miles = format!("{SETTLE_MILES:.0}");
        let points = view.facts.summary.disturbed.iter();
        let names: Vec<String> = points.map(|point| view.point_name(*point)).collect();
        let lines = vec![
            view.words.date(day),
            view.fill("report-second-look-why", &[("miles", &miles)]),
            names.join("; "),
        ];
        terms.push((view.say("report-second-look"), told(lines)));
    }
    terms.push((view.say("report-next-walk"), told(next)));
    vec![heading(view, "report-next"), Block::Terms(terms)]
}

/// Each thing that is asked, by which rule, and what each limit comes to.
pub(super) fn asked(view: &View<'_>) -> Vec<Block> {
    let rows = view.facts.asked.iter().map(|asked| {
        let first = Cell::of(&asked.first).with(asked.lines.iter().cloned());
        vec![
            Cell::of(&asked.when),
            Cell::default().with([asked.rule.clone()]),
            first,
        ]
    });
    let columns = [
        ("report-col-when", 20),
        ("report-col-rule", 40),
        ("report-col-first", 40),
    ];
    let table = view.table(view.say("report-asked"), &columns, rows.collect());
    table.map_or_else(Vec::new, |table| {
        vec![heading(view, "report-asked-heading"), table]
    })
}

fn told(lines: Vec<String>) -> Vec<String> {
    let lines = lines.into_iter();
    lines.filter(|line| !line.trim().is_empty()).collect()
}
