//! What earlier walks and notes tell, as the rules ask for it.

use super::past::Told;
use super::{RigFold, finding, odometer, past, walk};
use crate::store::StoreFault;
use baywalk_domain::due::OdometerNote;
use baywalk_domain::finding::Finding;
use baywalk_domain::ids::{PointId, RigId};
use baywalk_domain::walk::Grade;
use chrono::NaiveDate;
use rusqlite::Connection;
use std::collections::BTreeMap;

/// What the rules ask for beside the book and the open walk.
#[derive(Debug, Clone, PartialEq, Default)]
pub(crate) struct Facts {
    /// In how many walks running, up to the last ended one, each point had moved.
    pub(crate) moved_running: BTreeMap<PointId, u8>,
    /// The points that wait for their second look.
    pub(crate) unsettled: Vec<PointId>,
    /// The day of the last whole walk of the whole rig.
    pub(crate) last_walk: Option<NaiveDate>,
    /// All findings, oldest first.
    pub(crate) findings: Vec<Finding>,
    /// All odometer notes, oldest first.
    pub(crate) odometer: Vec<OdometerNote>,
}

/// Reads the facts of a rig.
pub(crate) fn facts(conn: &Connection, rig: RigId, fold: &RigFold) -> Result<Facts, StoreFault> {
    let before = fold.walk.as_ref().map_or(u64::MAX, |walk| walk.begun);
    let mut pasts = Vec::new();
    for point in fold.book.iter().flat_map(|book| &book.points) {
        let told = past::told(conn, point.id, before)?;
        if !told.is_empty() {
            pasts.push((point.id, point.retired, told));
        }
    }
    let running = |told: &[Told]| Some(moved_running(told)).filter(|walks| *walks > 0);
    Ok(Facts {
        moved_running: pasts
            .iter()
            .filter_map(|(point, _, told)| running(told).map(|walks| (*point, walks)))
            .collect(),
        unsettled: unsettled(&pasts),
        last_walk: walk::last_walk(conn, rig)?,
        findings: finding::findings(conn, rig)?,
        odometer: odometer::odometer(conn, rig)?,
    })
}

/// In how many walks running a point had moved or was loose, newest first.
///
/// Only a joint that held ends the row. A walk that did not judge it, or only looked at it, tells
/// nothing; a second look at which it held tells that the setting settled, not that it stood a year
/// of road; a conductor that was out did not hold. What was done about it is not asked here.
fn moved_running(told: &[Told]) -> u8 {
    let mut walks: u8 = 0;
    for walk in told {
        match walk.grade {
            Some(Grade::Moved | Grade::Loose) => walks = walks.saturating_add(1),
            Some(Grade::Held) if !walk.second_look => break,
            Some(Grade::Held | Grade::Apart | Grade::LookedAt | Grade::NotJudged) | None => {}
        }
    }
    walks
}

/// The points in use that the last walk to disturb any had set or remade, and that no later walk
/// has judged or looked at since.
fn unsettled(pasts: &[(PointId, bool, Vec<Told>)]) -> Vec<PointId> {
    let all = pasts.iter().flat_map(|(_, _, told)| told);
    let Some(last) = all
        .filter(|walk| walk.disturbed)
        .map(|walk| walk.begun)
        .max()
    else {
        return Vec::new();
    };
    let waits = |told: &[Told]| {
        let seen = |walk: &Told| !matches!(walk.grade, None | Some(Grade::NotJudged));
        told.iter().any(|walk| walk.disturbed && walk.begun == last)
            && !told.iter().any(|walk| walk.begun > last && seen(walk))
    };
    pasts
        .iter()
        .filter(|(_, retired, told)| !retired && waits(told))
        .map(|(point, _, _)| *point)
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn told(begun: u64, grade: Grade, disturbed: bool, second_look: bool) -> Told {
        Told {
            begun,
            second_look,
            grade: Some(grade),
            disturbed,
        }
    }

    #[test]
    fn only_a_joint_that_held_ends_the_row() {
        let moved = told(1, Grade::Moved, true, false);
        let looked = told(2, Grade::Held, false, true);
        let loose = told(3, Grade::Loose, true, false);
        assert_eq!(moved_running(&[loose, looked, moved]), 2);
        let held = told(2, Grade::Held, false, false);
        assert_eq!(moved_running(&[loose, held, moved]), 1);
        assert_eq!(moved_running(&[held, loose, moved]), 0);
        let passed_by = told(2, Grade::NotJudged, false, false);
        assert_eq!(moved_running(&[loose, passed_by, moved]), 2);
        assert_eq!(moved_running(&[]), 0);
    }

    #[test]
    fn a_point_waits_for_its_second_look_until_a_later_walk_sees_it() {
        let one = PointId::new(uuid::Uuid::from_u128(1));
        let two = PointId::new(uuid::Uuid::from_u128(2));
        let set = told(5, Grade::Moved, true, false);
        let held = told(9, Grade::Held, false, true);
        let missed = told(9, Grade::NotJudged, false, true);
        let pasts = [
            (one, false, vec![held, set]),
            (two, false, vec![missed, set]),
        ];
        assert_eq!(unsettled(&pasts), [two]);
        assert_eq!(unsettled(&[(two, true, vec![set])]), []);
    }
}
