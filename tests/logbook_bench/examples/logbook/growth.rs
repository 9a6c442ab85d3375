//! The same act and the same screens at 1,000 to 1,000,000 entries.

use crate::{acts, opening, shell};
use baywalk_bench::fleet::{Fleet, LARGE};
use std::path::Path;

const ENTRIES: [u64; 4] = [1_000, 10_000, 100_000, 1_000_000];

pub(crate) fn run(folder: &Path, made: &Path) {
    let (store, before) = (made.join("store"), made.join("before"));
    let mut fleet = Fleet::new(&store, LARGE);
    for entries in ENTRIES {
        while fleet.logbook.digest().seq < entries {
            fleet.walk();
        }
        println!(
            "\n{} entries, {} years",
            fleet.logbook.digest().seq,
            fleet.year()
        );
        let next = acts::next(&mut fleet, &store, &before);
        let disk = folder.join("store");
        shell::copy(&before, &disk);
        println!("{} MB", shell::size(&disk) / 1_000_000);
        opening::run(&disk, fleet.rig());
        acts::run(&disk, &before, &next);
        std::fs::remove_dir_all(&disk).unwrap();
        std::fs::remove_dir_all(&before).unwrap();
    }
}
