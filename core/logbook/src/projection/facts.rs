//! What earlier walks and notes tell, as the rules ask for it.

use super::standing::{standings, unsettled};
use super::{RigFold, finding, glance, odometer};
use crate::store::StoreFault;
use baywalk_domain::due::OdometerNote;
use baywalk_domain::finding::Finding;
use baywalk_domain::ids::{PointId, RigId};
use baywalk_domain::walk::{Act, Entry};
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
    let Some(book) = &fold.book else {
        return Ok(Facts::default());
    };
    let standings = standings(conn, rig)?;
    let running = |point: PointId| {
        let running = standings.get(&point)?.moved_running;
        (running > 0).then_some((point, running))
    };
    let points = book.points.iter();
    Ok(Facts {
        moved_running: points.filter_map(|point| running(point.id)).collect(),
        unsettled: unsettled(book, &standings),
        last_walk: glance::glance(conn, rig)?.and_then(|glance| glance.last_walk),
        findings: finding::findings(conn, rig)?,
        odometer: odometer::odometer(conn, rig)?,
    })
}

impl Facts {
    /// Takes in an entry that was written; says whether that is all there is to it. Otherwise the
    /// facts are to be read anew.
    pub(crate) fn take(&mut self, entry: &Entry) -> bool {
        match &entry.act {
            Act::Strike { .. } | Act::End(_) | Act::Book(_) | Act::Decide { .. } => return false,
            Act::Odometer(reading) => self.odometer.push(OdometerNote {
                on: entry.at.date(),
                reading: reading.clone(),
            }),
            _ => {}
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
