//! What was noted at each point, walk by walk.

use super::fold::OpenWalk;
use super::json;
use crate::store::StoreFault;
use crate::stored;
use baywalk_domain::ids::{PointId, WalkId};
use baywalk_domain::moment::Moment;
use baywalk_domain::walk::PointRecord;
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

/// Writes what the open walk knows of a point; where it knows nothing, nothing stays.
pub(super) fn put(tx: &Connection, walk: &OpenWalk, point: PointId) -> Result<(), StoreFault> {
    let Some(record) = walk.state.point(point) else {
        tx.prepare_cached(include_str!("sql/past_remove.sql"))?
            .execute((point.to_string(), walk.begun))?;
        return Ok(());
    };
    tx.prepare_cached(include_str!("sql/past_put.sql"))?
        .execute(params![
            point.to_string(),
            walk.begun,
            walk.state.id.to_string(),
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
