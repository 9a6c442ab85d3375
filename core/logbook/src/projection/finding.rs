//! Findings and what was decided about them.

use super::json;
use crate::store::StoreFault;
use crate::stored::{self, Texted};
use baywalk_domain::finding::{Finding, FollowUp};
use baywalk_domain::ids::{FindingId, RigId};
use baywalk_domain::walk::Entry;
use rusqlite::{Connection, OptionalExtension, Row};

/// Puts what an entry raised.
pub(super) fn put(tx: &Connection, seq: u64, entry: &Entry) -> Result<(), StoreFault> {
    let mut put = tx.prepare_cached(include_str!("sql/finding_put.sql"))?;
    for (place, raised) in entry.shown.findings.iter().enumerate() {
        put.execute((
            entry.rig.to_string(),
            seq,
            place,
            entry.walk.map(|walk| walk.to_string()),
            entry.at.date().write(),
            raised.id.to_string(),
            json::write::<stored::Raised>(raised)?,
        ))?;
    }
    Ok(())
}

/// Takes out what an entry had raised.
pub(super) fn remove(tx: &Connection, rig: RigId, seq: u64) -> Result<(), StoreFault> {
    tx.prepare_cached(include_str!("sql/finding_remove.sql"))?
        .execute((rig.to_string(), seq))?;
    Ok(())
}

/// Puts what was decided about a finding.
pub(super) fn decide(
    tx: &Connection,
    (rig, finding): (RigId, FindingId),
    seq: u64,
    follow_up: &FollowUp,
) -> Result<(), StoreFault> {
    let body = json::write::<stored::FollowUp>(follow_up)?;
    tx.prepare_cached(include_str!("sql/follow_up_put.sql"))?
        .execute((finding.to_string(), seq, body))?;
    settle(tx, rig, finding)
}

/// Takes a decision out, so that the one before stands again.
pub(super) fn undecide(
    tx: &Connection,
    (rig, finding): (RigId, FindingId),
    seq: u64,
) -> Result<(), StoreFault> {
    tx.prepare_cached(include_str!("sql/follow_up_remove.sql"))?
        .execute((finding.to_string(), seq))?;
    settle(tx, rig, finding)
}

/// Notes whether a finding waits, by its newest decision.
fn settle(tx: &Connection, rig: RigId, finding: FindingId) -> Result<(), StoreFault> {
    let newest: Option<String> = tx
        .prepare_cached(include_str!("sql/follow_up.sql"))?
        .query_row([finding.to_string()], |row| row.get(0))
        .optional()?;
    let read = |body: String| json::read::<stored::FollowUp>(&body);
    let newest: Option<FollowUp> = newest.map(read).transpose()?;
    let open = !newest.is_some_and(|follow_up| follow_up.decision.closes());
    tx.prepare_cached(include_str!("sql/finding_settle.sql"))?
        .execute((rig.to_string(), finding.to_string(), open))?;
    Ok(())
}

/// How many findings of a rig wait.
pub(super) fn open(conn: &Connection, rig: RigId) -> Result<u64, StoreFault> {
    let count = conn
        .prepare_cached(include_str!("sql/finding_open.sql"))?
        .query_row([rig.to_string()], |row| row.get(0))?;
    Ok(count)
}

/// The findings of a rig, oldest first, each with its newest decision.
pub(super) fn findings(conn: &Connection, rig: RigId) -> Result<Vec<Finding>, StoreFault> {
    let mut statement = conn.prepare_cached(include_str!("sql/findings.sql"))?;
    let rows = statement.query_map([rig.to_string()], |row| Ok(finding(row)))?;
    rows.map(|row| row?).collect()
}

fn finding(row: &Row<'_>) -> Result<Finding, StoreFault> {
    let walk: Option<String> = row.get(0)?;
    let follow_up: Option<String> = row.get(3)?;
    Ok(Finding {
        walk: walk.as_deref().map(json::text).transpose()?,
        on: json::text(&row.get::<_, String>(1)?)?,
        raised: json::read::<stored::Raised>(&row.get::<_, String>(2)?)?,
        follow_up: follow_up
            .as_deref()
            .map(json::read::<stored::FollowUp>)
            .transpose()?,
    })
}
