//! The pairs that a proof read: how many, of how many, and the highest reading.

use super::exceptions;
use super::view::View;
use crate::sheet::Cell;
use baywalk_domain::isolation::{Proof, Read, checks_of};
use baywalk_domain::rig::Bay;
use baywalk_domain::walk::Exception;
use std::collections::BTreeSet;

/// How many pairs were read, of how many, those left out by exception, and the highest reading.
pub(super) fn cell(view: &View<'_>, bay: &Bay, proof: &Proof) -> Cell {
    let reads = proof.reads.iter();
    let read: BTreeSet<_> = reads.map(|read| (read.device, &read.check)).collect();
    let exceptions = exceptions::told(view);
    let (mut asked, mut excepted) = (0, 0);
    for device in view.facts.book.devices_of(bay.id) {
        for check in checks_of(&device.sets) {
            if check.supply != proof.supply {
                continue;
            }
            asked += 1;
            let by = |exception: &Exception| {
                let touches = [&check.set, &check.other_set].contains(&&exception.set);
                exception.device == device.id && touches
            };
            let out = !read.contains(&(device.id, &check))
                && exceptions.iter().any(|(exception, _)| by(exception));
            excepted += usize::from(out);
        }
    }
    let asked = view.count("report-pairs", asked);
    let args = [("read", &*read.len().to_string()), ("asked", &asked)];
    let highest = highest(&proof.reads).map(|read| {
        let (volts, pair) = (view.words.typed(&read.volts), pair(view, read));
        view.fill("report-highest", &[("volts", &volts), ("pair", &pair)])
    });
    let excepted = (excepted > 0).then(|| view.count("report-pairs-excepted", excepted));
    Cell::of(view.fill("report-pairs-read", &args))
        .with(highest)
        .with(excepted)
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
