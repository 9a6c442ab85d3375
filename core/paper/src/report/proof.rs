//! What was proved dead in each bay, what no longer counts, and what stayed live by exception.

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
    for bay in view.facts.book.bays_in_order() {
        let works = works(view, bay.id);
        if works.is_empty() {
            shut.push(view.bay_name(bay.id));
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

fn of_bay(view: &View<'_>, bay: &Bay, works: &[BayWork]) -> Vec<Block> {
    let proofs: Vec<&Proof> = works.iter().flat_map(|work| &work.proofs).collect();
    let rows = proofs.iter().map(|proof| row(view, bay, proof)).collect();
    let columns = [
        ("report-col-supply", 7),
        ("report-col-known-before", 19),
        ("report-col-pairs", 34),
        ("report-col-known-after", 19),
        ("report-col-outcome", 21),
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
        pairs::cell(view, bay, proof),
        after,
        outcome(view, proof),
    ]
}

fn known_live(view: &View<'_>, known: &KnownLive) -> Cell {
    let time = view.time(&known.at);
    Cell::of(view.words.typed(&known.volts)).with([known.place.clone(), time])
}

fn outcome(view: &View<'_>, proof: &Proof) -> Cell {
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
        None => Cell::of(view.say("report-proof-holds")),
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
