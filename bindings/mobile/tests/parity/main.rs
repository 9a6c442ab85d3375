//! One scenario of key presses, replayed by every shell: this one drives the core by the calls of a phone, those of Kotlin
//! and Swift drive their models. Each compares its ledger's digest with the one that is kept, so all three are equal.
//!
//! `BAYWALK_BLESS=1 cargo test -p baywalk-mobile --features parity --test parity` records scenario and digest anew.

#![expect(
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test that can't go on stops with the reason"
)]

mod driver;
mod record;

use driver::{Driver, Line};
use std::path::{Path, PathBuf};

fn kept(name: &str) -> PathBuf {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    root.join("../../tests/parity").join(name)
}

fn read() -> Vec<Line> {
    let text = std::fs::read_to_string(kept("walk.jsonl")).unwrap();
    let lines = text.lines().map(|line| serde_json::from_str(line).unwrap());
    lines.collect()
}

#[test]
fn the_scenario_gives_the_ledger_that_is_kept() {
    if std::env::var_os("BAYWALK_BLESS").is_some() {
        let (lines, digest) = record::record();
        let text = lines
            .iter()
            .map(|line| serde_json::to_string(line).unwrap() + "\n");
        std::fs::write(kept("walk.jsonl"), text.collect::<String>()).unwrap();
        std::fs::write(kept("digest.txt"), digest + "\n").unwrap();
    }
    let mut driver = Driver::new();
    for line in read() {
        driver.take(&line);
    }
    let digest = std::fs::read_to_string(kept("digest.txt")).unwrap();
    assert_eq!(driver.digest(), digest.trim());
}

#[test]
fn another_answer_gives_another_ledger() {
    let mut driver = Driver::new();
    let mut lines = read();
    let last = lines.last_mut().unwrap();
    assert_eq!(last.text, "812 h");
    last.text = "813 h".to_owned();
    lines.iter().for_each(|line| driver.take(line));
    let digest = std::fs::read_to_string(kept("digest.txt")).unwrap();
    assert_ne!(driver.digest(), digest.trim());
}
