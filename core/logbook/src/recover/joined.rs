//! What was read of a ledger, joined with a backup: what is whole, what can be sealed anew, what is
//! missing.

use super::placing::Placing;
use super::salvage::{Row, Salvaged};
use crate::ledger::{self, Digest, Head};
use baywalk_domain::walk::{Entry, Recovery, Span};
use std::collections::BTreeMap;

/// A ledger, as far as it can be had again.
#[derive(Debug)]
pub(super) struct Joined {
    /// The bodies of the entries that are whole, from the first on.
    pub(super) whole: Vec<String>,
    /// The entries behind the first gap that are proved and have what they rest on.
    pub(super) rest: Vec<Entry>,
    /// What came of it.
    pub(super) recovery: Recovery,
}

/// Joins rows of a damaged ledger with those of a backup, which may be empty.
pub(super) fn join(salvaged: &Salvaged, backup: &BTreeMap<u64, Row>) -> Joined {
    let backed = backup.keys().next_back().copied().unwrap_or(0);
    let reached = salvaged.reached.max(backed);
    let mut placing = Placing::default();
    let mut head = Head::START;
    let mut whole = Vec::new();
    for seq in 1..=reached {
        let rows = [salvaged.rows.get(&seq), backup.get(&seq)];
        let fits = |row: &&Row| head.then(row.body.as_bytes()).digest == row.digest;
        let found = rows.into_iter().flatten().find(fits);
        let read = found.and_then(|row| Some((row, ledger::read(&row.body).ok()?)));
        let Some((row, numbered)) = read.filter(|(_, numbered)| numbered.seq == seq) else {
            break;
        };
        head = head.then(row.body.as_bytes());
        placing.take(&numbered.entry);
        whole.push(row.body.clone());
    }
    // A backup that went another way tells nothing of what is behind.
    let reached = if salvaged.reached > head.seq {
        salvaged.reached
    } else {
        head.seq
    };
    let mut rest = Vec::new();
    let mut missing: Vec<Span> = Vec::new();
    for seq in head.seq.saturating_add(1)..=reached {
        let proved = proved(salvaged, seq).filter(|entry| placing.take(entry));
        match (proved, missing.last_mut()) {
            (Some(entry), _) => rest.push(entry),
            (None, Some(span)) if span.to.saturating_add(1) == seq => span.to = seq,
            (None, _) => missing.push(Span { from: seq, to: seq }),
        }
    }
    Joined {
        recovery: Recovery {
            whole_to: head.mark(),
            reached,
            missing,
            sealed_anew: u64::try_from(rest.len()).unwrap_or(u64::MAX),
        },
        whole,
        rest,
    }
}

/// The entry of a row whose bytes are proved by the digest of the row before.
fn proved(salvaged: &Salvaged, seq: u64) -> Option<Entry> {
    let row = salvaged.rows.get(&seq)?;
    let before: Digest = salvaged.rows.get(&seq.checked_sub(1)?)?.digest;
    let fits = before.then(row.body.as_bytes()) == row.digest;
    let numbered = ledger::read(&row.body).ok().filter(|_| fits)?;
    (numbered.seq == seq).then_some(numbered.entry)
}
