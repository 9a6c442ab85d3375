//! What a screen reads does not grow with the years: counted, since counts do not flap as times do.

#![expect(
    clippy::unwrap_used,
    reason = "a test that can't go on stops with the reason"
)]

use baywalk_bench::fleet::{Fleet, Law};
use baywalk_crash::system::{unwatch, watch};
use baywalk_domain::ids::RigId;
use baywalk_screens::Core;
use baywalk_screens::rig::rig;
use baywalk_screens::rigs::rigs;
use baywalk_words::Words;
use std::path::Path;

/// The most pages that a first screen may read.
const MOST: u64 = 25;

const LAW: Law = Law {
    layout: "sample-trailer",
    rigs: 4,
    points: 40,
};

/// Pages of 4,096 bytes read from opening to a screen, each read counted as often as it is made.
fn pages<T>(folder: &Path, screen: impl FnOnce(&Core) -> T) -> u64 {
    watch(folder, false, None);
    let core = Core::open(folder, Words::for_locales(&["en"])).unwrap();
    screen(&core);
    unwatch().counts.reads
}

fn first_screens(folder: &Path, of: RigId) -> [u64; 2] {
    [
        pages(folder, |core| rigs(core).unwrap()),
        pages(folder, |core| rig(core, of).unwrap()),
    ]
}

#[test]
fn a_first_screen_reads_few_pages_however_many_years_there_are() {
    let folder = tempfile::tempdir().unwrap();
    let mut fleet = Fleet::new(folder.path(), LAW);
    let of = fleet.rig();
    let mut read = Vec::new();
    for years in [1, 3] {
        fleet.years(years);
        drop(fleet.logbook);
        read.push(first_screens(folder.path(), of));
        fleet.logbook = baywalk_crash::work::open(folder.path()).unwrap();
    }
    for (few, many) in read[0].into_iter().zip(read[1]) {
        assert!(many <= MOST, "{read:?}");
        assert!(many <= few + 2, "{read:?}: a level of a tree, no more");
    }
}
