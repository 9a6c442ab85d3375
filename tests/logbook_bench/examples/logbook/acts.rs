//! An act until it is durable, beside the least that can be: 200 bytes written over and synced.

use crate::shell;
use crate::times::Times;
use baywalk_bench::fleet::Fleet;
use baywalk_crash::work::open;
use baywalk_domain::moment::Moment;
use baywalk_domain::walk::{Call, Scope};
use baywalk_logbook::Logbook;
use std::fs::{File, OpenOptions};
use std::os::unix::fs::FileExt;
use std::path::Path;
use std::time::Instant;

/// How many of each kind follow on one another before the other's turn.
const TURN: usize = 25;

/// Acts with their moments.
pub(crate) type Acts = Vec<(Call, Moment)>;

/// Keeps the store as it is, walks the next rig, and gives the acts of that walk.
pub(crate) fn next(fleet: &mut Fleet, store: &Path, before: &Path) -> Acts {
    fleet.logbook = open(&before.with_file_name("aside")).unwrap();
    shell::copy(store, before);
    fleet.logbook = open(store).unwrap();
    let (walker, logbook) = fleet.in_turn();
    walker.keeps = true;
    walker.walk(logbook, Scope::Whole);
    walker.keeps = false;
    std::mem::take(&mut walker.calls)
}

pub(crate) fn run(store: &Path, in_memory: &Path, acts: &Acts) {
    let (mut act, mut least) = (Times::default(), Times::default());
    let raw = raw(&store.with_file_name("raw"));
    let mut logbook = open(store).unwrap();
    for turn in acts.chunks(TURN) {
        for _ in turn {
            let begun = Instant::now();
            raw.write_all_at(&[7; 200], 0).unwrap();
            raw.sync_data().unwrap();
            least.add(begun.elapsed());
        }
        play(&mut logbook, turn, &mut act);
    }
    let mut unsynced = Times::default();
    play(&mut open(in_memory).unwrap(), acts, &mut unsynced);
    println!(
        "\nan act until it is durable, {} acts of one walk",
        acts.len()
    );
    for share in [50, 90, 99] {
        let (act, least) = (act.per_cent(share), least.per_cent(share));
        println!(
            "p{share}: {act:.0} µs, raw {least:.0} µs, {:.2}",
            act / least
        );
    }
    println!("the same in memory: p50 {:.0} µs", unsynced.median());
}

/// Does acts, each timed.
pub(crate) fn play(logbook: &mut Logbook, acts: &[(Call, Moment)], times: &mut Times) {
    for (call, at) in acts {
        let begun = Instant::now();
        logbook.call(call, at).unwrap();
        times.add(begun.elapsed());
    }
}

/// A file of 4,096 bytes to be written over.
fn raw(path: &Path) -> File {
    let file = OpenOptions::new()
        .create(true)
        .truncate(true)
        .write(true)
        .open(path);
    let file = file.unwrap();
    file.write_all_at(&[0; 4096], 0).unwrap();
    file.sync_all().unwrap();
    file
}
