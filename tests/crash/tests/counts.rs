//! How often an act reaches the disk: counted, since counts do not flap as times do.

use baywalk_crash::system::{unwatch, watch};
use baywalk_crash::work::{STORE, Work, open};

#[test]
fn an_act_costs_one_sync_and_few_writes() {
    let work = Work::walks("sample-trailer", 1, 0);
    let root = tempfile::tempdir().unwrap();
    let mut logbook = open(&root.path().join(STORE)).unwrap();
    let (first, rest) = work.acts.split_at(2);
    for (call, at, _) in first {
        logbook.call(call, at).unwrap();
    }
    drop(logbook);
    // Only files that are opened under the watch are seen.
    watch(root.path(), false, None);
    let mut logbook = open(&root.path().join(STORE)).unwrap();
    for (call, at, _) in rest {
        logbook.call(call, at).unwrap();
    }
    let counts = unwatch().counts;
    let acts = u64::try_from(rest.len()).unwrap();
    let (syncs, writes) = (counts.syncs, counts.writes);
    assert!(
        (100..=105).contains(&(syncs * 100 / acts)),
        "{syncs} syncs, {acts} acts"
    );
    assert!(writes <= 12 * acts, "{writes} writes, {acts} acts");
}
