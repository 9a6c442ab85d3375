//! As left: what was done, with which torque and tool.

use super::view::View;
use crate::sheet::Cell;
use baywalk_domain::ids::ToolId;
use baywalk_domain::units::{Stated, TorqueUnit};
use baywalk_domain::walk::{AsLeft, Grade, PointRecord};

pub(super) fn cell(view: &View<'_>, record: &PointRecord) -> Cell {
    match &record.left {
        Some(AsLeft::Alone(why)) => {
            Cell::of(view.say("report-left-alone")).with([view.headed(*why)])
        }
        Some(AsLeft::Set { torque, tool }) => {
            Cell::of(set(view, torque)).with([with_tool(view, *tool)])
        }
        Some(AsLeft::Remade { set: None }) => Cell::of(view.say("report-left-remade")),
        Some(AsLeft::Remade {
            set: Some((torque, tool)),
        }) => remade(view, torque, *tool),
        Some(AsLeft::OutOfService { how }) => {
            Cell::of(view.say("report-left-out")).with([how.clone()])
        }
        None => Cell::default().with([view.say(unsaid(record))]),
    }
}

fn set(view: &View<'_>, torque: &Stated<TorqueUnit>) -> String {
    view.fill("report-left-set", &[("torque", &view.torque(torque))])
}

fn remade(view: &View<'_>, torque: &Stated<TorqueUnit>, tool: ToolId) -> Cell {
    Cell::of(view.say("report-left-remade")).with([set(view, torque), with_tool(view, tool)])
}

fn with_tool(view: &View<'_>, tool: ToolId) -> String {
    view.fill("report-with-tool", &[("tool", &view.tool_code(tool))])
}

/// What stands where nothing was done.
fn unsaid(record: &PointRecord) -> &'static str {
    match record.found.as_ref().map(|found| found.found.grade()) {
        _ if record.waits_for_left() => "report-left-unsaid",
        Some(Grade::Held | Grade::LookedAt) => "report-left-as-found",
        _ => "report-left-nothing",
    }
}
