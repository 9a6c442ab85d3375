//! Makes the store of a fleet in a folder and prints the name of its first rig:
//! `cargo run --release -p baywalk-bench --example store -- FOLDER POINTS RIGS YEARS`.

#![expect(
    clippy::unwrap_used,
    clippy::panic,
    clippy::print_stdout,
    reason = "an example that can't go on stops with the reason, and prints what it made"
)]

use baywalk_bench::fleet::{Fleet, LARGE, Law};
use std::path::PathBuf;

fn main() {
    let args: Vec<String> = std::env::args().skip(1).collect();
    let [folder, points, rigs, years] = args.as_slice() else {
        panic!("expected FOLDER POINTS RIGS YEARS, found {args:?}");
    };
    let law = Law {
        points: points.parse().unwrap(),
        rigs: rigs.parse().unwrap(),
        ..LARGE
    };
    let mut fleet = Fleet::new(&PathBuf::from(folder), law);
    fleet.years(years.parse().unwrap());
    println!("{}", fleet.rig());
}
