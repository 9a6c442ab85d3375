//! What was proved dead in each bay, what no longer counts, and what stayed live by exception.

use super::pairs::Tally;
use super::view::View;
use super::{exceptions, pairs};
use crate::sheet::{Block, Cell};
use baywalk_domain::ids::BayId;
use baywalk_domain::isolation::{DEAD_AC, DEAD_DC, KnownLive, Proof};
use baywalk_domain::moment::Moment;
use baywalk_domain::rig::Bay;
use baywalk_domain::walk::{Act, BayStage, BayWork, WalkState};

pub(super) fn blocks(view: &View<'_>) -> Vec<Block> {
    let (ac, dc) = (DEAD_AC.to_string(), DEAD_DC.to_string());
    let mut blocks = vec![
        Block::Text(view.say("report-proof-method")),
        Block::Text(view.fill("report-proof-limits", &[("ac", &ac), ("dc", &dc)])),
    ];
    let mut shut = Vec::new();
    let mut rows = Vec::new();
    for bay in view.facts.book.bays_in_order() {
        let works = works(view, bay.id);
        if works.is_empty() {
            shut.push(view.bay_name(bay.id));
        } else {
            rows.extend(of_bay(view, bay, &works));
        }
    }
    blocks.extend(table(view, rows));
    if !shut.is_empty() {
        let bays = shut.join("; ");
        blocks.push(Block::Text(
            view.fill("report-proof-shut", &[("bays", &bays)]),
        ));
    }
    blocks.extend(exceptions::block(view));
    blocks
}

/// The work in a bay each time it was opened, oldest first.
fn works(view: &View<'_>, bay: BayId) -> Vec<BayWork> {
    let opens = |act: &Act| matches!(act, Act::Open { bay: opened } if *opened == bay);
    let again = view.standing().filter(|act| opens(act)).count() > 1;
    let standing = view.standing_entries().filter(|_| again);
    let entries: Vec<_> = standing.cloned().collect();
    let openings = entries.iter().enumerate();
    let before = openings
        .filter(|(_, entry)| opens(&entry.act))
        .filter_map(|(place, _)| WalkState::fold(entries.get(..place)?, view.facts.book))
        .filter_map(|mut walk| walk.bays.remove(&bay));
    let now = view.facts.walk.bays.get(&bay).cloned();
    before.chain(now).collect()
}

fn table(view: &View<'_>, rows: Vec<Vec<Cell>>) -> Option<Block> {
    let columns = [
        ("report-col-bay", 17),
        ("report-col-known-before", 17),
        ("report-col-pairs", 30),
        ("report-col-known-after", 10),
        ("report-col-outcome", 26),
    ];
    view.table(view.say("report-proof-caption"), &columns, rows)
}

/// A row a proof; one row where a bay was opened and nothing proved.
fn of_bay(view: &View<'_>, bay: &Bay, works: &[BayWork]) -> Vec<Vec<Cell>> {
    let name = || Cell::of(&bay.name).bay(bay.code.as_str());
    let proofs = works.iter().flat_map(|work| &work.proofs);
    let mut rows: Vec<Vec<Cell>> = proofs
        .map(|proof| {
            let name = name().with([view.headed(proof.supply)]);
            row(view, name, bay, proof)
        })
        .collect();
    if rows.is_empty() {
        let none = Cell::of(view.say("report-proof-none"));
        let blank = Cell::default;
        rows.push(vec![name(), blank(), blank(), blank(), none]);
    }
    let open = works
        .last()
        .is_some_and(|work| work.stage == BayStage::Open);
    if let Some(outcome) = rows.last_mut().and_then(|row| row.last_mut())
        && open
    {
        outcome.lines.push(view.say("report-bay-open"));
    }
    rows
}

fn row(view: &View<'_>, name: Cell, bay: &Bay, proof: &Proof) -> Vec<Cell> {
    let elsewhere = |known: &KnownLive| {
        let place = (known.place != proof.before.place).then(|| known.place.clone());
        known_live(view, known, place)
    };
    let missing = || Cell::of(view.say("report-known-missing"));
    let tally = Tally::of(view, bay, proof);
    vec![
        name,
        known_live(view, &proof.before, Some(proof.before.place.clone())),
        pairs::cell(view, &tally, &proof.reads),
        proof.after.as_ref().map_or_else(missing, elsewhere),
        outcome(view, proof, &tally),
    ]
}

fn known_live(view: &View<'_>, known: &KnownLive, place: Option<String>) -> Cell {
    let volts = Cell::of(view.words.typed(&known.volts));
    let meter = &known.meter;
    let category = view.words.code(meter.category);
    let with = [("name", meter.name.as_str()), ("category", &category)];
    let meter =
        (place.is_some() && !meter.name.is_empty()).then(|| view.fill("report-known-meter", &with));
    volts.with(place).with(meter).with([view.time(&known.at)])
}

fn outcome(view: &View<'_>, proof: &Proof, tally: &Tally) -> Cell {
    if proof.is_spoiled() {
        let live = proof.reads.iter().filter(|read| !read.dead);
        let live = live.map(|read| {
            let volts = view.words.typed(&read.volts);
            view.fill(
                "report-live-pair",
                &[("pair", &pairs::pair(view, read)), ("volts", &volts)],
            )
        });
        return Cell::of(view.say("report-proof-spoiled")).with(live);
    }
    if proof.after.is_none() {
        return Cell::of(view.say("report-proof-unfinished")).with(lapse(view, proof));
    }
    match lapse(view, proof) {
        Some(lapse) => Cell::of(view.say("report-proof-lapsed")).with([lapse]),
        None if tally.is_whole() => Cell::of(view.say("report-proof-holds")),
        None => Cell::of(view.say("report-proof-part")),
    }
}

fn lapse(view: &View<'_>, proof: &Proof) -> Option<String> {
    let why = view.headed(proof.lapsed?);
    let when = lapsed_at(view, proof).map(|at| view.time(at));
    Some(match when {
        Some(time) => view.fill("report-lapse-at", &[("why", &why), ("time", &time)]),
        None => why,
    })
}

/// The first entry after a proof that made proofs lapse.
fn lapsed_at<'a>(view: &View<'a>, proof: &Proof) -> Option<&'a Moment> {
    let proved = proof.after.as_ref()?;
    let entries = view.facts.entries.iter();
    let mut later = entries.skip_while(|entry| entry.at != proved.at).skip(1);
    let lapse = later.find(|entry| entry.flags.lapse == proof.lapsed)?;
    Some(&lapse.at)
}
