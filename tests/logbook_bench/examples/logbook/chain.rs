//! The chain: beside hashing the same bytes in memory, and beside `sha256sum` of the same lines.

use crate::shell;
use crate::times::Times;
use baywalk_crash::work::open;
use baywalk_logbook::ledger::{Digest, Head};
use std::path::Path;
use std::time::Instant;

const ROUNDS: usize = 15;

pub(crate) fn run(store: &Path) {
    let mut logbook = open(store).unwrap();
    let mut lines = Vec::new();
    logbook.export(&mut lines).unwrap();
    let file = store.with_file_name("lines");
    std::fs::write(&file, &lines).unwrap();
    let text = String::from_utf8(lines).unwrap();
    let bodies: Vec<&str> = text.lines().filter_map(body).collect();
    let mut times: [Times; 4] = Default::default();
    for _ in 0..ROUNDS {
        let [chain, whole, hashed, summed] = &mut times;
        timed(chain, || {
            assert!(logbook.verify_chain().unwrap().broken.is_none())
        });
        timed(whole, || {
            assert!(logbook.verify().unwrap().broken.is_none())
        });
        timed(hashed, || {
            assert_eq!(hash(&bodies), logbook.digest().digest)
        });
        timed(summed, || {
            drop(shell::run("sha256sum", &[shell::text(&file)]))
        });
    }
    let tables = logbook.fingerprint().unwrap();
    let begun = Instant::now();
    logbook.rebuild().unwrap();
    let rebuilt = begun.elapsed();
    assert_eq!(logbook.fingerprint().unwrap(), tables);
    let entries = bodies.len() as f64;
    let [chain, whole, hashed, summed] = times.map(|times| times.median() / 1e3);
    let each = |time: f64| time * 100_000.0 / entries;
    println!("\nchain, medians of {ROUNDS}, and the same for 100,000 entries");
    println!("entries {entries}, bytes {}", text.len());
    println!(
        "chain verified            {chain:.1} ms, {:.1} ms",
        each(chain)
    );
    println!(
        "  ÷ hashed in memory      {:.2} ({hashed:.1} ms)",
        chain / hashed
    );
    println!(
        "  ÷ sha256sum             {:.2} ({summed:.1} ms)",
        chain / summed
    );
    println!(
        "file, chain, each entry   {whole:.1} ms, {:.1} ms",
        each(whole)
    );
    println!("tables computed anew, equal {:.1} s", rebuilt.as_secs_f64());
}

fn timed(times: &mut Times, work: impl FnOnce()) {
    let begun = Instant::now();
    work();
    times.add(begun.elapsed());
}

/// The entry in a line; `None` for the last line.
fn body(line: &str) -> Option<&str> {
    line.split_once(r#","entry":"#)?.1.strip_suffix('}')
}

fn hash(bodies: &[&str]) -> Digest {
    let head = bodies
        .iter()
        .fold(Head::START, |head, body| head.then(body.as_bytes()));
    head.digest
}
