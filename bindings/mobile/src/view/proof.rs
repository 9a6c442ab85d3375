//! The pairs of a device that must read dead, as nodes and edges and as rows.

use crate::Picture;
use baywalk_domain::isolation::checks_of;
use baywalk_domain::rig::{Check, Conductor, Device};
use baywalk_domain::walk::WalkState;
use baywalk_screens::Core;
use baywalk_shapes::proof::{Layout, Pair, proof as draw};

/// A pair of conductors that must read dead.
#[derive(Debug, Clone, PartialEq, Eq, uniffi::Record)]
pub struct ShownPair {
    /// The pair in words.
    pub pair: String,
    /// What was read, as typed; empty where it was not.
    pub read: String,
    /// Whether it is the one to read now.
    pub now: bool,
}

/// The pairs of the sets and supply of the check at hand: a drawing and its rows.
pub(super) fn proof(
    core: &Core,
    walk: &WalkState,
    device: &Device,
    now: &Check,
) -> (Picture, Vec<ShownPair>) {
    let mut checks = checks_of(&device.sets);
    checks.retain(|check| {
        check.supply == now.supply && check.set == now.set && check.other_set == now.other_set
    });
    let unread = walk.unread(device);
    let mut nodes: Vec<(&str, Conductor)> = Vec::new();
    for check in &checks {
        for node in [
            (check.set.as_str(), check.from),
            (check.other_set.as_str(), check.to),
        ] {
            if !nodes.contains(&node) {
                nodes.push(node);
            }
        }
    }
    let place = |node: (&str, Conductor)| nodes.iter().position(|known| *known == node);
    let edges: Vec<(usize, usize, Pair)> = checks
        .iter()
        .filter_map(|check| {
            let pair = match check {
                check if check == now => Pair::Now,
                check if unread.contains(check) => Pair::Open,
                _ => Pair::Done,
            };
            let from = place((&check.set, check.from))?;
            Some((from, place((&check.other_set, check.to))?, pair))
        })
        .collect();
    let words: Vec<String> = nodes
        .iter()
        .map(|(_, node)| core.words.code(*node))
        .collect();
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    let layout = match now.set == now.other_set {
        true => Layout::Around,
        false => Layout::Facing(nodes.iter().filter(|(set, _)| *set == now.set).count()),
    };
    let rows = checks.iter().map(|check| ShownPair {
        pair: core.words.pair(check),
        read: read(core, walk, device, check),
        now: check == now,
    });
    (draw(&words, &edges, layout).into(), rows.collect())
}

/// What was read of a pair in the newest proof that counts.
fn read(core: &Core, walk: &WalkState, device: &Device, check: &Check) -> String {
    let work = walk.bays.get(&device.bay);
    let proofs = work.into_iter().flat_map(|work| work.proofs.iter().rev());
    let counting = proofs.filter(|proof| proof.lapsed.is_none() && !proof.is_spoiled());
    let mut reads = counting.flat_map(|proof| proof.reads.iter().rev());
    reads
        .find(|read| read.device == device.id && read.check == *check)
        .map(|read| {
            format!(
                "{} {}",
                read.volts.text(),
                core.words.code(read.volts.unit())
            )
        })
        .unwrap_or_default()
}
