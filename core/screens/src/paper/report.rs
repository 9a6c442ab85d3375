//! The report of a walk, and the sheet of one finding.

use super::{Album, EDITION, Wanted, save};
use crate::asked::asked;
use crate::findings::numbered;
use crate::{Core, Problem};
use baywalk_domain::finding::Finding;
use baywalk_domain::ids::{PointId, RigId, WalkId};
use baywalk_domain::rig::Book;
use baywalk_domain::walk::{DueShown, Entry, Grade, Summary, WalkState, summary};
use baywalk_paper::report::{self, Asked, Facts, LedgerHead};
use chrono::{DateTime, FixedOffset};
use std::path::Path;

/// The newest walk of a rig, ended or open.
///
/// # Errors
/// [`Problem`] where none was walked or the logbook can't be read.
pub fn last_walk(core: &Core, rig: RigId) -> Result<WalkId, Problem> {
    let walks = core.logbook.walks(rig)?;
    let last = walks.last().map(|walk| walk.id);
    last.ok_or_else(|| Problem::not_found(core.words.say("report-none")))
}

/// Writes the report of a walk to a file.
///
/// # Errors
/// [`Problem`] where there is no such walk, the logbook can't be read, or the file can't be written.
pub fn write(core: &Core, walk: WalkId, wanted: &Wanted, path: &Path) -> Result<(), Problem> {
    let told = Told::read(core, walk)?;
    let photos = told.state.photos.iter().map(|(_, digest, _)| digest);
    let album = Album::of(&core.logbook, photos, wanted);
    let page = report::sheet(&told.facts(), &core.words);
    save(core, &page, &album, wanted, path)
}

/// Writes the sheet of one finding, called by its number in the list, to a file.
///
/// # Errors
/// [`Problem`] where there is no such finding, the logbook can't be read, or the file can't be
/// written.
pub fn write_follow_up(
    core: &Core,
    rig: RigId,
    number: u32,
    wanted: &Wanted,
    path: &Path,
) -> Result<(), Problem> {
    let finding = numbered(core, rig, number)?;
    let walk = finding.walk.map_or_else(|| last_walk(core, rig), Ok)?;
    let told = Told::read(core, walk)?;
    let photos = told.state.photos.iter().map(|(_, digest, _)| digest);
    let album = Album::of(&core.logbook, photos, wanted);
    let page = report::follow_up(&told.facts(), &finding, &core.words);
    save(core, &page, &album, wanted, path)
}

/// What a report tells of, read once.
struct Told {
    book: Book,
    state: WalkState,
    entries: Vec<Entry>,
    summary: Summary,
    findings: Vec<Finding>,
    moved_before: Vec<PointId>,
    due: Option<DueShown>,
    asked: Vec<Asked>,
    digest: String,
    sequence: u64,
    printed: DateTime<FixedOffset>,
}

impl Told {
    fn read(core: &Core, walk: WalkId) -> Result<Self, Problem> {
        let log = &core.logbook;
        let (state, book) = log.walk_and_book(walk)?;
        let entries = log.entries(walk)?.into_iter();
        let entries: Vec<Entry> = entries.map(|numbered| numbered.entry).collect();
        let shown = entries.iter().rev();
        let head = log.digest();
        Ok(Self {
            summary: summary(&state, &book),
            findings: told(log.findings(book.rig.id)?, walk),
            moved_before: moved_before(core, walk, &book.points)?,
            due: shown.clone().find_map(|entry| entry.shown.due.clone()),
            asked: asked_lines(core, book.rig.id)?,
            digest: head.digest.to_string(),
            sequence: head.seq,
            printed: log.now().wall,
            entries,
            state,
            book,
        })
    }

    fn facts(&self) -> Facts<'_> {
        Facts {
            book: &self.book,
            walk: &self.state,
            entries: &self.entries,
            summary: &self.summary,
            findings: &self.findings,
            moved_before: &self.moved_before,
            due: self.due.as_ref(),
            asked: &self.asked,
            ledger: LedgerHead {
                digest: &self.digest,
                sequence: self.sequence,
            },
            edition: EDITION,
            printed: self.printed,
        }
    }
}

/// What is asked of a rig, in words.
fn asked_lines(core: &Core, rig: RigId) -> Result<Vec<Asked>, Problem> {
    let lines = asked(core, rig)?.into_iter();
    Ok(lines
        .map(|fact| Asked {
            when: fact.when,
            rule: fact.rule,
            first: fact.first,
            lines: fact.limits.into_iter().chain(fact.put_off).collect(),
        })
        .collect())
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
