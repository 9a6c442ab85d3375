//! What was proved dead in each bay, what no longer counts, and what stayed live by exception.

use super::view::View;
use crate::sheet::{Block, Cell};
use baywalk_domain::ids::BayId;
use baywalk_domain::isolation::{DEAD_AC, DEAD_DC, KnownLive, Proof, Read, checks_of};
use baywalk_domain::rig::{Bay, Check};
use baywalk_domain::walk::{Act, BayStage, BayWork, Exception, WalkState};
use std::collections::BTreeSet;

pub(super) fn blocks(view: &View<'_>) -> Vec<Block> {
    let (ac, dc) = (DEAD_AC.to_string(), DEAD_DC.to_string());
    let mut blocks = vec![
        Block::Text(view.say("report-proof-method")),
        Block::Text(view.fill("report-proof-limits", &[("ac", &ac), ("dc", &dc)])),
    ];
    let mut shut = Vec::new();
    for bay in view.facts.book.bays_in_order() {
        let works = works(view, bay.id);
        if works.is_empty() {
            shut.push(view.bay_name(bay));
        } else {
            blocks.extend(of_bay(view, bay, &works));
        }
    }
    if !shut.is_empty() {
        let bays = shut.join("; ");
        blocks.push(Block::Text(
            view.fill("report-proof-shut", &[("bays", &bays)]),
        ));
    }
    blocks.extend(exceptions(view));
    blocks
}

/// The work in a bay each time it was opened, oldest first.
fn works(view: &View<'_>, bay: BayId) -> Vec<BayWork> {
    let entries: Vec<_> = view.standing_entries().cloned().collect();
    let openings = entries
        .iter()
        .enumerate()
        .filter(|(_, entry)| matches!(entry.act, Act::Open { bay: opened } if opened == bay));
    let before = openings
        .filter_map(|(place, _)| WalkState::fold(entries.get(..place)?, view.facts.book))
        .filter_map(|mut walk| walk.bays.remove(&bay));
    let now = view.facts.walk.bays.get(&bay).cloned();
    before.chain(now).collect()
}

fn of_bay(view: &View<'_>, bay: &Bay, works: &[BayWork]) -> Vec<Block> {
    let proofs: Vec<&Proof> = works.iter().flat_map(|work| &work.proofs).collect();
    let rows = proofs.iter().map(|proof| row(view, bay, proof)).collect();
    let columns = [
        "report-col-supply",
        "report-col-known-before",
        "report-col-pairs",
        "report-col-known-after",
        "report-col-outcome",
    ];
    let caption = view.count("report-proof-caption", proofs.len());
    let table = view.table(caption, &columns, rows);
    let none = || Block::Text(view.say("report-proof-none"));
    let heading = Block::Heading {
        tag: Some(bay.code.as_str().to_owned()),
        text: bay.name.clone(),
    };
    let open = works
        .last()
        .is_some_and(|work| work.stage == BayStage::Open);
    let open = open.then(|| Block::Text(view.say("report-bay-open")));
    let blocks = [heading, table.unwrap_or_else(none)];
    blocks.into_iter().chain(open).collect()
}

fn row(view: &View<'_>, bay: &Bay, proof: &Proof) -> Vec<Cell> {
    let after = proof.after.as_ref().map_or_else(
        || Cell::of(view.say("report-known-missing")),
        |known| known_live(view, known),
    );
    vec![
        Cell::of(view.headed(proof.supply)),
        known_live(view, &proof.before),
        pairs(view, bay, proof),
        after,
        outcome(view, proof),
    ]
}

fn known_live(view: &View<'_>, known: &KnownLive) -> Cell {
    let time = view.time(&known.at);
    Cell::of(known.volts.pair()).with([known.place.clone(), time])
}

/// How many pairs were read, of how many, and the highest reading.
fn pairs(view: &View<'_>, bay: &Bay, proof: &Proof) -> Cell {
    let read: BTreeSet<_> = proof
        .reads
        .iter()
        .map(|read| (read.device, &read.check))
        .collect();
    let devices = view.facts.book.devices_of(bay.id);
    let asked: usize = devices
        .map(|device| {
            let checks = checks_of(&device.sets);
            checks
                .iter()
                .filter(|check| check.supply == proof.supply)
                .count()
        })
        .sum();
    let asked = view.count("report-pairs", asked);
    let args = [("read", &*read.len().to_string()), ("asked", &asked)];
    let highest = highest(&proof.reads).map(|read| {
        let (volts, pair) = (read.volts.pair(), pair(view, read));
        view.fill("report-highest", &[("volts", &volts), ("pair", &pair)])
    });
    Cell::of(view.fill("report-pairs-read", &args)).with(highest)
}

fn highest(reads: &[Read]) -> Option<&Read> {
    let volts = |read: &Read| read.volts.quantity().volts().abs();
    reads
        .iter()
        .max_by(|one, other| volts(one).total_cmp(&volts(other)))
}

fn pair(view: &View<'_>, read: &Read) -> String {
    let check: &Check = &read.check;
    let (from, to) = (view.code(check.from), view.code(check.to));
    let device = view.device_words(read.device);
    let between = if check.set == check.other_set {
        format!("{} {from}–{to}", check.set)
    } else {
        format!("{} {from}–{} {to}", check.set, check.other_set)
    };
    format!("{device}, {between}")
}

fn outcome(view: &View<'_>, proof: &Proof) -> Cell {
    if proof.is_spoiled() {
        let live = proof.reads.iter().filter(|read| !read.dead);
        let live = live.map(|read| format!("{}: {}", pair(view, read), read.volts.pair()));
        return Cell::of(view.say("report-proof-spoiled")).with(live);
    }
    if proof.after.is_none() {
        return Cell::of(view.say("report-proof-unfinished")).with(lapse(view, proof));
    }
    match lapse(view, proof) {
        Some(lapse) => Cell::of(view.say("report-proof-lapsed")).with([lapse]),
        None => Cell::of(view.say("report-proof-holds")),
    }
}

fn lapse(view: &View<'_>, proof: &Proof) -> Option<String> {
    proof.lapsed.map(|lapse| view.headed(lapse))
}

/// Every knowing exception of the walk with its reason in full, those that lapsed too.
fn exceptions(view: &View<'_>) -> Option<Block> {
    let told = view
        .standing_entries()
        .filter_map(|entry| match &entry.act {
            Act::Except {
                device,
                set,
                reason,
            } => {
                let exception = Exception {
                    device: *device,
                    set: set.clone(),
                    reason: reason.clone(),
                };
                Some((exception, Some(view.time(&entry.at))))
            }
            _ => None,
        });
    let mut list: Vec<(Exception, Option<String>)> = told.collect();
    if view.facts.entries.is_empty() {
        let standing = view
            .facts
            .walk
            .bays
            .values()
            .flat_map(|work| &work.exceptions);
        list.extend(standing.map(|exception| (exception.clone(), None)));
    }
    let rows = list.into_iter().map(|(exception, time)| {
        let device = view.device_words(exception.device);
        let when = time.map(|time| view.fill("report-at-time", &[("time", &time)]));
        vec![
            Cell::of(device).with([exception.set]).with(when),
            Cell::default().with([exception.reason]),
        ]
    });
    let columns = ["report-col-stays-live", "report-col-reason"];
    view.table(view.say("report-exceptions"), &columns, rows.collect())
}
