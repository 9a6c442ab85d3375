//! How quick the logbook is, beside its peers in the same run:
//! `nice cargo run --release -p baywalk-bench --example logbook [FOLDER] [YEARS]`.
//!
//! FOLDER stands on the file system that is measured; YEARS is ten unless it is told. A logbook of
//! 20 rigs of 300 points is made in memory, walk by walk, and copied to the folder.
//! `growth` in the place of YEARS measures the same act and screen at 1,000 to 1,000,000 entries.

#![expect(
    clippy::unwrap_used,
    clippy::print_stdout,
    clippy::cast_precision_loss,
    reason = "an example that can't go on stops with the reason, and prints what it measured"
)]

mod acts;
mod chain;
mod growth;
mod opening;
mod shell;
mod times;

use baywalk_bench::fleet::{Fleet, LARGE};
use std::path::{Path, PathBuf};
use std::time::Instant;

fn main() {
    let mut args = std::env::args().skip(1);
    let first = args.next();
    if first.as_deref() == Some(opening::CHILD) {
        return opening::child(&args.collect::<Vec<_>>());
    }
    let folder = first.map_or_else(std::env::temp_dir, PathBuf::from);
    let folder = tempfile::tempdir_in(folder).unwrap();
    let made = tempfile::tempdir_in("/dev/shm").unwrap();
    let years = args.next().unwrap_or_else(|| "10".to_owned());
    println!("load of the machine: {}", shell::load());
    match years.parse() {
        Ok(years) => all(folder.path(), made.path(), years),
        Err(_) => growth::run(folder.path(), made.path()),
    }
    println!("load of the machine: {}", shell::load());
}

fn all(folder: &Path, made: &Path, years: usize) {
    let begun = Instant::now();
    let mut fleet = Fleet::new(&made.join("store"), LARGE);
    fleet.years(years);
    let entries = fleet.logbook.digest().seq;
    let (year, rig) = (fleet.year(), fleet.rig());
    println!(
        "{year} years of 20 rigs of 300 points: {entries} entries, made in {:.0} s",
        begun.elapsed().as_secs_f64()
    );
    let next = acts::next(&mut fleet, &made.join("store"), &made.join("before"));
    drop(fleet);
    let store = folder.join("store");
    shell::copy(&made.join("before"), &store);
    println!("{} MB on the disk", shell::size(&store) / 1_000_000);
    opening::run(&store, rig);
    chain::run(&store);
    acts::run(&store, &made.join("before"), &next);
}
