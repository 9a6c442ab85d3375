//! The sets of conductors that stayed live by a knowing exception.

use super::view::View;
use crate::sheet::{Block, Cell};
use baywalk_domain::moment::Moment;
use baywalk_domain::walk::{Act, Exception};

/// Every knowing exception of the walk with its reason in full, those that lapsed too.
pub(super) fn block(view: &View<'_>) -> Option<Block> {
    let rows = told(view).into_iter().map(|(exception, at)| {
        let device = view.device_name(exception.device);
        let when = at.map(|at| view.fill("report-at-time", &[("time", &view.time(at))]));
        vec![
            Cell::of(device).with([exception.set]).with(when),
            Cell::default().with([exception.reason]),
        ]
    });
    let columns = [("report-col-stays-live", 40), ("report-col-reason", 60)];
    view.table(view.say("report-exceptions"), &columns, rows.collect())
}

/// The exceptions by the entries of the walk, each with its time; without entries, those that
/// stand.
pub(super) fn told<'a>(view: &View<'a>) -> Vec<(Exception, Option<&'a Moment>)> {
    if view.facts.entries.is_empty() {
        let bays = view.facts.walk.bays.values();
        let standing = bays.flat_map(|work| &work.exceptions);
        return standing
            .map(|exception| (exception.clone(), None))
            .collect();
    }
    let list = view.standing_entries().filter_map(|entry| {
        let Act::Except {
            device,
            set,
            reason,
        } = &entry.act
        else {
            return None;
        };
        let exception = Exception {
            device: *device,
            set: set.clone(),
            reason: reason.clone(),
        };
        Some((exception, Some(&entry.at)))
    });
    list.collect()
}
