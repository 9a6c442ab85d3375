//! The long run of power cuts: `cargo run --release -p baywalk-crash --example long`.

use baywalk_crash::disk::Order;
use baywalk_crash::states::{Run, every_state};
use baywalk_crash::work::Work;
use std::io::Write;

fn main() -> std::io::Result<()> {
    let work = Work::walks("sample-trailer", 2, 6);
    let root = tempfile::tempdir()?;
    let done = work.record(root.path());
    let mut states = 0;
    for seed in 1.. {
        for order in [Order::Any, Order::Ordered] {
            let each = 1;
            let tally = every_state(&work, &done, &done.ops, Run { order, each, seed });
            states += tally.states;
            writeln!(std::io::stdout(), "{order:?}, {seed}: {tally:?}")?;
            assert!(tally.is_sound());
        }
        if states >= 100_000 {
            break;
        }
    }
    writeln!(
        std::io::stdout(),
        "{} acts, {states} states",
        work.acts.len()
    )
}
