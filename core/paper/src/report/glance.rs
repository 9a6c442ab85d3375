//! The first page: all that came of the walk, in short. The rest of the report tells it in full.

use super::view::View;
use super::{as_found, as_left, counts, moved, next, out, rig, strip};
use crate::sheet::Block;
use baywalk_domain::coded::Coded;
use baywalk_domain::finding::{About, FindingKind, Urgency};
use std::collections::BTreeMap;

/// How many lines of one kind stand here; the rest stands below.
const NAMED: usize = 8;

pub(super) fn blocks(view: &View<'_>) -> Vec<Block> {
    let mut blocks = out::blocks(view);
    let mut left = strip::drawing(view);
    left.extend(strip::legend(view));
    left.extend(counts::blocks(view));
    let mut right = next::blocks(view);
    right.push(Block::Terms(vec![(
        view.say("report-moved"),
        moved_lines(view),
    )]));
    blocks.push(Block::Beside(left, right));
    blocks.push(Block::Terms(waiting(view)));
    blocks
}

/// What waits, by urgency, and with what the torque was read.
fn waiting(view: &View<'_>) -> Vec<(String, Vec<String>)> {
    let mut terms = Vec::new();
    for urgency in Urgency::ALL {
        let lines = finding_lines(view, *urgency);
        if !lines.is_empty() {
            terms.push((view.headed(*urgency), lines));
        }
    }
    if view.facts.findings.iter().all(|finding| !finding.is_open()) {
        let none = vec![view.say("report-findings-none")];
        terms.push((view.say("report-findings"), none));
    }
    terms.push((view.say("report-tools"), rig::tool_lines(view)));
    terms
}

/// What had moved, one line a joint.
fn moved_lines(view: &View<'_>) -> Vec<String> {
    let moved = moved::moved(view);
    if moved.is_empty() {
        return vec![view.say("report-moved-none")];
    }
    let lines = moved.iter().map(|(point, record)| {
        let found = as_found::cell(view, point, record).head;
        let left = as_left::cell(view, record);
        let left = if left.head.is_empty() {
            left.lines.join(", ")
        } else {
            left.head
        };
        let name = view.point_name(point.id);
        let args = [("point", name.as_str()), ("found", &found), ("left", &left)];
        view.fill("report-glance-moved", &args)
    });
    named(view, lines.collect())
}

/// The open findings of an urgency, one line a kind: by name where they are few, else by code.
fn finding_lines(view: &View<'_>, urgency: Urgency) -> Vec<String> {
    let mut kinds: BTreeMap<FindingKind, Vec<About>> = BTreeMap::new();
    for finding in view.facts.findings {
        let raised = &finding.raised;
        if finding.is_open() && raised.kind.urgency() == urgency {
            kinds.entry(raised.kind).or_default().push(raised.about);
        }
    }
    let lines = kinds.iter().map(|(kind, about)| {
        let names: Vec<String> = if about.len() > 2 {
            about.iter().map(|about| short(view, *about)).collect()
        } else {
            let book = view.facts.book;
            about
                .iter()
                .map(|about| view.words.about(*about, book))
                .collect()
        };
        let (kind, about) = (view.headed(*kind), names.join("; "));
        let args = [("finding", kind.as_str()), ("about", &about)];
        view.fill("report-glance-finding", &args)
    });
    named(view, lines.collect())
}

/// What a finding is about by its code, or in words where it has none.
fn short(view: &View<'_>, about: About) -> String {
    let cell = view.about(about);
    cell.tag.map_or(cell.head, |tag| tag.word().to_owned())
}

/// The first lines, and how many more there are.
fn named(view: &View<'_>, mut lines: Vec<String>) -> Vec<String> {
    let more = lines.len().saturating_sub(NAMED);
    lines.truncate(NAMED);
    if more > 0 {
        lines.push(view.count("report-glance-more", more));
    }
    lines
}
