//! The long run of power cuts: `cargo run --release -p baywalk-crash --example long`.

use baywalk_crash::deeds::Deed;
use baywalk_crash::disk::Order;
use baywalk_crash::states::{Run, Tally, every_state};
use baywalk_crash::work::Work;
use std::io::Write;

/// The fewest states that are opened.
const STATES: usize = 100_000;

fn main() -> std::io::Result<()> {
    let work = Work::walks("sample-trailer", 2, 6);
    let root = tempfile::tempdir()?;
    let done = work.record(root.path());
    let deeds = Deed::ALL.map(|deed| (deed, deed.record()));
    let mut states = 0;
    let mut told = |what: String, tally: &Tally| -> std::io::Result<()> {
        states += tally.states;
        writeln!(std::io::stdout(), "{states} states; {what}: {tally:?}")?;
        assert!(tally.is_sound());
        Ok(())
    };
    let mut seen = 0;
    for seed in 1.. {
        for order in [Order::Any, Order::Ordered] {
            let (each, from) = (1, 0);
            let run = Run {
                order,
                each,
                from,
                seed,
            };
            for (deed, deeded) in &deeds {
                let tally = deeded.every_state(run);
                told(format!("{deed:?}, {order:?}, {seed}"), &tally)?;
                seen += tally.states;
            }
            let tally = every_state(&work, &done, &done.ops, run);
            told(
                format!("{} acts, {order:?}, {seed}", work.acts.len()),
                &tally,
            )?;
            seen += tally.states;
        }
        if seen >= STATES {
            break;
        }
    }
    Ok(())
}
