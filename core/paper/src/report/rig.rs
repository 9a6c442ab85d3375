//! The rig and the walk: who, when, how much, with which tools.

use super::view::View;
use crate::sheet::{Block, Cell};
use baywalk_domain::ids::ToolId;
use baywalk_domain::rig::Tool;
use baywalk_domain::torque::calibration;
use baywalk_domain::walk::{
    AsFound, AsLeft, Ending, Movement, PointRecord, ReadyAnswer, Scope, Test, WalkState,
};

/// The lines under the title.
pub(super) fn under(view: &View<'_>) -> Vec<String> {
    let rig = &view.facts.book.rig;
    let (kind, service) = (view.headed(rig.kind), view.code(rig.service));
    vec![
        view.fill("report-rig", &[("kind", &kind), ("service", &service)]),
        view.fill("report-walked-by", &[("person", &view.facts.walk.person)]),
        ending(view),
    ]
}

pub(super) fn blocks(view: &View<'_>) -> Vec<Block> {
    let walk = view.facts.walk;
    let rig = &view.facts.book.rig;
    let terms = [
        ("report-term-rig", vec![rig.name.clone(), rig.note.clone()]),
        (
            "report-term-kind",
            vec![view.headed(rig.kind), view.headed(rig.service)],
        ),
        ("report-term-person", vec![walk.person.clone()]),
        (
            "report-term-began",
            vec![view.day_and_time(&walk.started.wall)],
        ),
        (
            "report-term-last",
            vec![view.day_and_time(&walk.last.wall), ending(view)],
        ),
        ("report-term-scope", vec![scope(view)]),
        ("report-term-without", without(view)),
    ];
    let told = |lines: Vec<String>| -> Vec<String> {
        let lines = lines.into_iter();
        lines.filter(|line| !line.trim().is_empty()).collect()
    };
    let terms = terms
        .into_iter()
        .map(|(key, lines)| (view.say(key), told(lines)))
        .filter(|(_, lines)| !lines.is_empty());
    let mut blocks = vec![Block::Terms(terms.collect())];
    blocks.push(tools(view).unwrap_or_else(|| Block::Text(view.say("report-tools-none"))));
    blocks
}

fn ending(view: &View<'_>) -> String {
    match &view.facts.walk.ending {
        Some(Ending::Whole) => view.say("report-ended-whole"),
        Some(Ending::Early(why)) => view.fill("report-ended-early", &[("why", why)]),
        None => view.fill(
            "report-not-ended",
            &[("phase", &view.code(view.facts.walk.phase))],
        ),
    }
}

fn scope(view: &View<'_>) -> String {
    let scope = whole_scope(view);
    let Some(route) = view.facts.walk.route() else {
        return scope;
    };
    let minutes = route.minutes.to_string();
    let args = [("scope", scope.as_str()), ("minutes", minutes.as_str())];
    view.fill("report-scope-plan", &args)
}

fn whole_scope(view: &View<'_>) -> String {
    match &view.facts.walk.scope {
        Scope::Whole => view.say("report-scope-whole"),
        Scope::SecondLook(_) => view.say("report-scope-second-look"),
        Scope::Bays(bays) => {
            let names: Vec<String> = bays.iter().map(|bay| view.bay_name(*bay)).collect();
            view.fill("report-scope-bays", &[("bays", &names.join("; "))])
        }
    }
}

/// What was gone without, and why.
fn without(view: &View<'_>) -> Vec<String> {
    let ready = view.facts.walk.ready.iter();
    ready
        .filter_map(|(item, answer)| match answer {
            ReadyAnswer::Without(why) => {
                let item = view.code(*item);
                Some(view.fill("report-without", &[("item", &item), ("why", why)]))
            }
            ReadyAnswer::Done => None,
        })
        .collect()
}

fn tools(view: &View<'_>) -> Option<Block> {
    let used = used(view.facts.walk);
    let tools = view.facts.book.tools.iter();
    let rows = tools.filter(|tool| used.contains(&tool.id)).map(|tool| {
        vec![
            Cell::of(&tool.name).point(tool.code.as_str()),
            Cell::default().with([view.headed(tool.kind), range(view, tool)]),
            calibrated(view, tool),
        ]
    });
    let columns = [
        ("report-col-tool", 34),
        ("report-col-kind", 33),
        ("report-col-calibrated", 33),
    ];
    view.table(view.say("report-tools"), &columns, rows.collect())
}

/// The tools that were used, one line each, with whether their calibration held.
pub(super) fn tool_lines(view: &View<'_>) -> Vec<String> {
    let used = used(view.facts.walk);
    let tools = view.facts.book.tools.iter();
    let lines = tools.filter(|tool| used.contains(&tool.id)).map(|tool| {
        let name = view.tool_name(tool.id);
        let told = calibrated(view, tool).lines.join(" ");
        let args = [("tool", name.as_str()), ("told", &told)];
        view.fill("report-glance-tool", &args)
    });
    let lines: Vec<String> = lines.collect();
    if lines.is_empty() {
        return vec![view.say("report-tools-none")];
    }
    lines
}

fn range(view: &View<'_>, tool: &Tool) -> String {
    let (least, most) = (view.torque(&tool.least), view.torque(&tool.most));
    view.fill("report-tool-range", &[("least", &least), ("most", &most)])
}

/// The day of the last calibration, and whether it held on the day of the walk.
fn calibrated(view: &View<'_>, tool: &Tool) -> Cell {
    let day = tool.calibrated.map(|day| view.words.date(day));
    let holds = calibration(tool, view.facts.walk.started.date());
    Cell::of(day.unwrap_or_default()).with([view.words.calibration(holds)])
}

/// The tools that were used in a walk, in the order of the points.
fn used(walk: &WalkState) -> Vec<ToolId> {
    walk.points.values().flat_map(of_record).collect()
}

fn of_record(record: &PointRecord) -> Vec<ToolId> {
    let found = match record.found.as_ref().map(|found| &found.found) {
        Some(
            AsFound::Held(Test::Torque { tool, .. })
            | AsFound::Moved(Movement::Turned { tool, .. } | Movement::Began { tool, .. }),
        ) => Some(*tool),
        _ => None,
    };
    let left = match &record.left {
        Some(
            AsLeft::Set { tool, .. }
            | AsLeft::Remade {
                set: Some((_, tool)),
            },
        ) => Some(*tool),
        _ => None,
    };
    found.into_iter().chain(left).collect()
}
