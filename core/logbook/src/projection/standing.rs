//! What the walks behind tell of each point, in short: what the rules ask for at every act.

use super::fold::OpenWalk;
use super::{ended, json};
use crate::store::StoreFault;
use crate::stored::Texted;
use baywalk_domain::ids::{PointId, RigId};
use baywalk_domain::loosening::Track;
use baywalk_domain::rig::Book;
use baywalk_domain::walk::{Grade, PointRecord, Scope};
use rusqlite::{Connection, Row, params};
use std::collections::BTreeMap;

/// What the walks behind tell of a point; walks are told by the entry that started them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Standing {
    /// In how many walks running it had moved or was loose.
    pub(super) moved_running: u8,
    /// The last walk in which it was set or remade.
    pub(super) disturbed: Option<u64>,
    /// The last walk in which it was judged or looked at.
    pub(super) seen: Option<u64>,
    /// When it was seen last, and since when it is tight.
    pub(super) track: Track,
}

/// Takes in what a walk tells, once it is over.
pub(super) fn take(tx: &Connection, rig: RigId, walk: &OpenWalk) -> Result<(), StoreFault> {
    let second_look = matches!(walk.state.scope, Scope::SecondLook(_));
    let mut put = tx.prepare_cached(include_str!("sql/standing_put.sql"))?;
    let before = standings(tx, rig)?;
    let on = walk.state.last.date();
    for (point, record) in &walk.state.points {
        let grade = record.found.as_ref().map(|found| found.found.grade());
        let (adds, keeps) = runs(grade, second_look);
        let begun = |so: bool| so.then_some(walk.begun);
        let known = before.get(point).map(|standing| standing.track);
        let mut track = known.unwrap_or_default();
        if let Some(over) = track.take(on, record.grade(), record.is_disturbed()) {
            ended::put(tx, rig, walk.begun, (*point, &over))?;
        }
        let tight = track.tight.as_ref();
        put.execute(params![
            rig.to_string(),
            point.to_string(),
            adds,
            keeps,
            begun(PointRecord::is_disturbed(record)),
            begun(!matches!(grade, None | Some(Grade::NotJudged))),
            track.seen.map(|day| day.write()),
            tight.map(|tight| tight.since.write()),
            tight.map(|tight| tight.set),
            tight.and_then(|tight| tight.held).map(|day| day.write()),
        ])?;
    }
    Ok(())
}

/// What a grade does to the number of walks running in which a point had moved or was loose: whether
/// it adds one, and whether the number before stays.
///
/// Only a joint that held ends the row. A walk that did not judge it, or only looked at it, tells
/// nothing; a second look at which it held tells that the setting settled, not that it stood a year
/// of road; a conductor that was out did not hold. What was done about it is not asked here.
const fn runs(grade: Option<Grade>, second_look: bool) -> (bool, bool) {
    match grade {
        Some(Grade::Moved | Grade::Loose) => (true, true),
        Some(Grade::Held) if !second_look => (false, false),
        Some(Grade::Held | Grade::Apart | Grade::LookedAt | Grade::NotJudged) | None => {
            (false, true)
        }
    }
}

/// What the walks behind tell of the points of a rig.
pub(super) fn standings(
    conn: &Connection,
    rig: RigId,
) -> Result<BTreeMap<PointId, Standing>, StoreFault> {
    let mut statement = conn.prepare_cached(include_str!("sql/standing.sql"))?;
    let rows = statement.query_map([rig.to_string()], |row| Ok(standing(row)))?;
    rows.map(|row| row?).collect()
}

fn standing(row: &Row<'_>) -> Result<(PointId, Standing), StoreFault> {
    let point: String = row.get(0)?;
    let standing = Standing {
        moved_running: row.get(1)?,
        disturbed: row.get(2)?,
        seen: row.get(3)?,
        track: Track {
            seen: ended::day(row, 4)?,
            tight: ended::tight(row, 5)?,
        },
    };
    Ok((json::text(&point)?, standing))
}

/// The points in use that the last walk to disturb any had set or remade, and that no later walk
/// has judged or looked at since.
pub(super) fn unsettled(book: &Book, standings: &BTreeMap<PointId, Standing>) -> Vec<PointId> {
    let of = |point: PointId| standings.get(&point);
    let disturbed = book
        .points
        .iter()
        .filter_map(|point| of(point.id)?.disturbed);
    let Some(last) = disturbed.max() else {
        return Vec::new();
    };
    let waits = |standing: &Standing| {
        standing.disturbed == Some(last) && standing.seen.is_none_or(|seen| seen <= last)
    };
    let in_use = book.points.iter().filter(|point| !point.retired);
    in_use
        .filter(|point| of(point.id).is_some_and(waits))
        .map(|point| point.id)
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The number of walks running after these, oldest first.
    fn running(walks: &[(Option<Grade>, bool)]) -> u8 {
        walks.iter().fold(0, |running, (grade, second_look)| {
            let (adds, keeps) = runs(*grade, *second_look);
            running * u8::from(keeps) + u8::from(adds)
        })
    }

    #[test]
    fn only_a_joint_that_held_ends_the_row() {
        let [moved, loose, held] = [Grade::Moved, Grade::Loose, Grade::Held].map(Some);
        assert_eq!(running(&[(moved, false), (held, true), (loose, false)]), 2);
        assert_eq!(running(&[(moved, false), (held, false), (loose, false)]), 1);
        assert_eq!(running(&[(moved, false), (loose, false), (held, false)]), 0);
        let passed_by = Some(Grade::NotJudged);
        assert_eq!(
            running(&[(moved, false), (passed_by, false), (loose, false)]),
            2
        );
        assert_eq!(
            running(&[(moved, false), (None, false), (Some(Grade::Apart), false)]),
            1
        );
        assert_eq!(running(&[]), 0);
    }
}
