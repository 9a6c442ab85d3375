//! What was noted at each point, walk by walk.

use super::fold::OpenWalk;
use super::json;
use crate::store::StoreFault;
use crate::stored;
use baywalk_domain::coded::Coded;
use baywalk_domain::ids::{PointId, WalkId};
use baywalk_domain::moment::Moment;
use baywalk_domain::walk::{Grade, PointRecord, Scope};
use rusqlite::{Connection, Row, params};

/// What was noted at a point in one walk.
#[derive(Debug, Clone, PartialEq)]
pub struct PointPast {
    /// The walk.
    pub walk: WalkId,
    /// When the walk was started.
    pub started: Moment,
    /// What was noted, corrections taken in.
    pub record: PointRecord,
}

/// What one walk tells of a point, in short.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Told {
    /// The entry that started the walk.
    pub(super) begun: u64,
    /// Whether the walk was a second look.
    pub(super) second_look: bool,
    /// The grade as found.
    pub(super) grade: Option<Grade>,
    /// Whether the joint was set or remade.
    pub(super) disturbed: bool,
}

/// Writes what the open walk knows of a point; where it knows nothing, nothing stays.
pub(super) fn put(tx: &Connection, walk: &OpenWalk, point: PointId) -> Result<(), StoreFault> {
    let Some(record) = walk.state.point(point) else {
        tx.prepare_cached(include_str!("sql/past_remove.sql"))?
            .execute((point.to_string(), walk.begun))?;
        return Ok(());
    };
    let grade = record.found.as_ref().map(|found| found.found.grade());
    tx.prepare_cached(include_str!("sql/past_put.sql"))?
        .execute(params![
            point.to_string(),
            walk.begun,
            walk.state.id.to_string(),
            matches!(walk.state.scope, Scope::SecondLook(_)),
            grade.map(Coded::code),
            record.is_disturbed(),
            json::write::<stored::PointRecord>(record)?,
        ])?;
    Ok(())
}

/// The past of a point, oldest walk first; the open walk's record is the last.
pub(crate) fn point_past(conn: &Connection, point: PointId) -> Result<Vec<PointPast>, StoreFault> {
    let mut statement = conn.prepare_cached(include_str!("sql/past.sql"))?;
    let rows = statement.query_map([point.to_string()], |row| Ok(past(row)))?;
    rows.map(|row| row?).collect()
}

fn past(row: &Row<'_>) -> Result<PointPast, StoreFault> {
    Ok(PointPast {
        walk: json::text(&row.get::<_, String>(0)?)?,
        started: json::read::<stored::Moment>(&row.get::<_, String>(1)?)?,
        record: json::read::<stored::PointRecord>(&row.get::<_, String>(2)?)?,
    })
}

/// What ended walks tell of a point, newest first; `before` is the entry that started the open one.
pub(super) fn told(
    conn: &Connection,
    point: PointId,
    before: u64,
) -> Result<Vec<Told>, StoreFault> {
    let mut statement = conn.prepare_cached(include_str!("sql/told.sql"))?;
    let before = i64::try_from(before).unwrap_or(i64::MAX);
    let rows = statement.query_map((point.to_string(), before), |row| {
        Ok((
            row.get::<_, Option<String>>(2)?,
            Told {
                begun: row.get(0)?,
                second_look: row.get(1)?,
                grade: None,
                disturbed: row.get(3)?,
            },
        ))
    })?;
    rows.map(|row| {
        let (grade, told) = row?;
        let grade = grade.as_deref().map(Grade::from_code).transpose();
        Ok(Told {
            grade: grade.map_err(|error| json::computed(&error))?,
            ..told
        })
    })
    .collect()
}
