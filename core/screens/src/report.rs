//! The report of a walk.

use crate::{Core, Problem};
use baywalk_domain::finding::Finding;
use baywalk_domain::ids::{PointId, RigId, WalkId};
use baywalk_domain::walk::{Entry, Grade, summary};
use baywalk_paper::report::{Facts, LedgerHead, html as on_paper};

/// The newest walk of a rig, ended or open.
///
/// # Errors
/// [`Problem`] where none was walked or the logbook can't be read.
pub fn last_walk(core: &Core, rig: RigId) -> Result<WalkId, Problem> {
    let walks = core.logbook.walks(rig)?;
    let last = walks.last().map(|walk| walk.id);
    last.ok_or_else(|| Problem::not_found(core.words.say("report-none")))
}

/// The report of a walk as one self-contained HTML file.
///
/// # Errors
/// [`Problem`] where there is no such walk or the logbook can't be read.
pub fn html(core: &Core, walk: WalkId) -> Result<String, Problem> {
    let log = &core.logbook;
    let (state, book) = log.walk_and_book(walk)?;
    let entries: Vec<Entry> = log
        .entries(walk)?
        .into_iter()
        .map(|numbered| numbered.entry)
        .collect();
    let findings = told(log.findings(book.rig.id)?, walk);
    let moved_before: Vec<PointId> = moved_before(core, walk, &book.points)?;
    let due = entries
        .iter()
        .rev()
        .find_map(|entry| entry.shown.due.clone());
    let head = log.digest();
    let digest = head.digest.to_string();
    let facts = Facts {
        book: &book,
        walk: &state,
        entries: &entries,
        summary: &summary(&state, &book),
        findings: &findings,
        moved_before: &moved_before,
        due: due.as_ref(),
        ledger: LedgerHead {
            digest: &digest,
            sequence: head.seq,
        },
        edition: concat!("baywalk ", env!("CARGO_PKG_VERSION")),
        printed: log.now().wall,
    };
    Ok(on_paper(&facts, &core.words))
}

/// The findings of the walk itself, and those of earlier ones that still wait.
fn told(mut findings: Vec<Finding>, walk: WalkId) -> Vec<Finding> {
    findings.retain(|finding| finding.walk == Some(walk) || finding.is_open());
    findings
}

/// The points that had moved in a walk before this one.
fn moved_before(
    core: &Core,
    walk: WalkId,
    points: &[baywalk_domain::rig::Point],
) -> Result<Vec<PointId>, Problem> {
    let mut moved = Vec::new();
    for point in points {
        let past = core.logbook.point_past(point.id)?;
        let earlier = past.iter().take_while(|past| past.walk != walk);
        let found = earlier.filter_map(|past| past.record.found.as_ref());
        if found
            .into_iter()
            .any(|found| matches!(found.found.grade(), Grade::Moved | Grade::Loose))
        {
            moved.push(point.id);
        }
    }
    Ok(moved)
}
