//! The pairs that a proof read: how many, of how many, and the highest reading.

use super::exceptions;
use super::view::View;
use crate::sheet::Cell;
use baywalk_domain::isolation::{Proof, Read, checks_of};
use baywalk_domain::rig::Bay;
use baywalk_domain::walk::Exception;
use std::collections::BTreeSet;

/// How many pairs a proof asks for and what became of them.
pub(super) struct Tally {
    asked: usize,
    read: usize,
    excepted: usize,
}

impl Tally {
    /// Counts the pairs of a bay that a proof of its kind of supply asks for.
    pub(super) fn of(view: &View<'_>, bay: &Bay, proof: &Proof) -> Self {
        let reads = proof.reads.iter();
        let read: BTreeSet<_> = reads.map(|read| (read.device, &read.check)).collect();
        let exceptions = exceptions::told(view);
        let mut tally = Self {
            asked: 0,
            read: 0,
            excepted: 0,
        };
        for device in view.facts.book.devices_of(bay.id) {
            let checks = checks_of(&device.sets);
            for check in checks.iter().filter(|check| check.supply == proof.supply) {
                let by = |exception: &Exception| {
                    let touches = [&check.set, &check.other_set].contains(&&exception.set);
                    exception.device == device.id && touches
                };
                tally.asked += 1;
                if read.contains(&(device.id, check)) {
                    tally.read += 1;
                } else if exceptions.iter().any(|(exception, _)| by(exception)) {
                    tally.excepted += 1;
                }
            }
        }
        tally
    }

    /// Whether each pair asked for was read.
    pub(super) const fn is_whole(&self) -> bool {
        self.read == self.asked
    }

    /// How many pairs were neither read nor left out by exception.
    const fn unread(&self) -> usize {
        self.asked
            .saturating_sub(self.read)
            .saturating_sub(self.excepted)
    }
}

/// How many pairs were read, of how many, the highest reading, and those that were not read.
pub(super) fn cell(view: &View<'_>, tally: &Tally, reads: &[Read]) -> Cell {
    let asked = view.count("report-pairs", tally.asked);
    let args = [("read", &*tally.read.to_string()), ("asked", &asked)];
    let highest = highest(reads).map(|read| {
        let (volts, pair) = (view.words.typed(&read.volts), pair(view, read));
        view.fill("report-highest", &[("volts", &volts), ("pair", &pair)])
    });
    let told = |count: usize, key| (count > 0).then(|| view.count(key, count));
    Cell::of(view.fill("report-pairs-read", &args))
        .with(highest)
        .with(told(tally.excepted, "report-pairs-excepted"))
        .with(told(tally.unread(), "report-pairs-unread"))
}

fn highest(reads: &[Read]) -> Option<&Read> {
    let volts = |read: &Read| read.volts.quantity().volts().abs();
    reads
        .iter()
        .max_by(|one, other| volts(one).total_cmp(&volts(other)))
}

pub(super) fn pair(view: &View<'_>, read: &Read) -> String {
    let (device, pair) = (view.device_name(read.device), view.words.pair(&read.check));
    view.fill("report-pair", &[("device", &device), ("pair", &pair)])
}
