//! Tries hostile inputs for as long as asked and says what came of them:
//! `cargo run -p baywalk-tests --example fuzz -- photo|rig [INPUTS] [FIRST]`. Unoptimised, checks of
//! overflow are on; decoders are optimised all the same.

#![expect(
    clippy::unwrap_used,
    clippy::panic,
    clippy::print_stdout,
    reason = "a run that can't go on stops with the reason, and prints what it measured"
)]

use baywalk_tests::hostile::{photos, reads_rig, rigs, takes_photo};
use peak_alloc::PeakAlloc;
use std::sync::atomic::{AtomicU64, Ordering};
use std::time::{Duration, Instant};

#[global_allocator]
static ALLOCATED: PeakAlloc = PeakAlloc;

/// Panics, those that end in a refusal among them.
static PANICS: AtomicU64 = AtomicU64::new(0);

/// What came of many inputs, and which of them were the worst.
#[derive(Default)]
struct Tally {
    taken: u64,
    slowest: (Duration, u64),
    largest: (usize, u64),
}

fn main() {
    let mut args = std::env::args().skip(1);
    let name = args.next().unwrap_or_default();
    let (kind, takes): (_, fn(Vec<u8>) -> bool) = match name.as_str() {
        "photo" => (photos(), takes_photo),
        "rig" => (rigs(), |bytes| reads_rig(&bytes)),
        other => panic!("{other}: photo or rig is expected"),
    };
    let mut numbers = args.map(|text| text.parse::<u64>().unwrap());
    let count = numbers.next().unwrap_or(1_000_000);
    let first = numbers.next().unwrap_or(0);
    std::panic::set_hook(Box::new(|panic| {
        if PANICS.fetch_add(1, Ordering::Relaxed) < 5 {
            println!("{panic}");
        }
    }));
    let mut tally = Tally::default();
    for number in first..first + count {
        let input = kind.hostile(number);
        let before = ALLOCATED.current_usage();
        ALLOCATED.reset_peak_usage();
        let begun = Instant::now();
        tally.taken += u64::from(takes(input));
        tally.slowest = tally.slowest.max((begun.elapsed(), number));
        let allocated = ALLOCATED.peak_usage().saturating_sub(before);
        tally.largest = tally.largest.max((allocated, number));
    }
    let panics = PANICS.load(Ordering::Relaxed);
    let Tally {
        taken,
        slowest,
        largest,
    } = tally;
    println!(
        "{name}: {count} inputs from {first} on, {taken} taken, {panics} panics inside, slowest \
         {:?} (input {}), most allocated {} bytes (input {})",
        slowest.0, slowest.1, largest.0, largest.1
    );
}
