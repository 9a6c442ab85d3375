//! What earlier walks and notes tell, as the rules ask for it.

use super::standing::standings;
use super::timing::{Days, known};
use super::{RigFold, finding, glance};
use crate::store::StoreFault;
use baywalk_domain::due::Known;
use baywalk_domain::finding::Finding;
use baywalk_domain::ids::{PointId, RigId};
use baywalk_domain::walk::{Act, Entry};
use rusqlite::Connection;
use std::collections::BTreeMap;

/// What the rules ask for beside the book and the open walk.
#[derive(Debug, Clone, PartialEq, Default)]
pub(crate) struct Facts {
    /// In how many walks running, up to the last ended one, each point had moved.
    pub(crate) moved_running: BTreeMap<PointId, u8>,
    /// What tells when to look again.
    pub(crate) known: Known,
    /// All findings, oldest first.
    pub(crate) findings: Vec<Finding>,
}

/// Reads the facts of a rig.
pub(crate) fn facts(conn: &Connection, rig: RigId, fold: &RigFold) -> Result<Facts, StoreFault> {
    let Some(book) = &fold.book else {
        return Ok(Facts::default());
    };
    let standings = standings(conn, rig)?;
    let running = |point: PointId| {
        let running = standings.get(&point)?.moved_running;
        (running > 0).then_some((point, running))
    };
    let points = book.points.iter();
    let glance = glance::glance(conn, rig)?;
    let glance = glance.as_ref();
    let days = Days {
        noted: glance.map(|glance| glance.noted),
        last_walk: glance.and_then(|glance| glance.last_walk),
        last_end: glance.and_then(|glance| glance.last_end),
    };
    Ok(Facts {
        moved_running: points.filter_map(|point| running(point.id)).collect(),
        known: known(conn, rig, book, days)?,
        findings: finding::findings(conn, rig)?,
    })
}

impl Facts {
    /// Takes in an entry that was written; says whether that is all there is to it. Otherwise the
    /// facts are to be read anew.
    pub(crate) fn take(&mut self, entry: &Entry) -> bool {
        match &entry.act {
            Act::Strike { .. } | Act::End(_) | Act::Book(_) | Act::Decide { .. } => return false,
            act => self.known.take(entry.at.date(), entry.id, act),
        }
        let raised = entry.shown.findings.iter().cloned();
        self.findings.extend(raised.map(|raised| Finding {
            walk: entry.walk,
            on: entry.at.date(),
            raised,
            follow_up: None,
        }));
        true
    }
}
