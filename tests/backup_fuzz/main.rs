//! Mutated backups and lines, told apart from whole ones: none may be taken unseen, none may panic.
//! `cargo run --release -p baywalk-tests --example backup_fuzz [INPUTS]`.

#![expect(
    clippy::unwrap_used,
    clippy::print_stdout,
    clippy::indexing_slicing,
    clippy::cast_possible_truncation,
    reason = "an example that can't go on stops with the reason, and prints what it measured"
)]

use baywalk_domain::rig::BookChange;
use baywalk_domain::units::{DistanceUnit, Stated};
use baywalk_domain::walk::Act;
use baywalk_logbook::backup::{Go, check};
use baywalk_logbook::ledger::{Digest, Head};
use baywalk_logbook::lines::Lines;
use baywalk_logbook::{Logbook, SystemClock, rigfile};
use std::io::{Seek, Write};
use std::path::Path;
use std::time::{Duration, Instant};

/// A small generator (xorshift, 64 bits); the same inputs in every run.
struct Dice(u64);

impl Dice {
    fn below(&mut self, most: usize) -> usize {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        (self.0 % most.max(1) as u64) as usize
    }
}

/// What came of many inputs.
#[derive(Default)]
struct Tally {
    inputs: u64,
    refused: u64,
    slowest: Duration,
}

impl Tally {
    fn take(&mut self, refused: bool, took: Duration) {
        self.inputs += 1;
        self.refused += u64::from(refused);
        self.slowest = self.slowest.max(took);
    }

    fn tell(&self, name: &str) {
        let Self {
            inputs,
            refused,
            slowest,
        } = self;
        println!("{name}: {inputs} inputs, {refused} refused, 0 panics, slowest {slowest:?}");
    }
}

fn main() {
    let count: u64 = std::env::args()
        .nth(1)
        .map_or(1_000_000, |text| text.parse().unwrap());
    let shared = Path::new("/dev/shm");
    let folder = if shared.is_dir() {
        tempfile::tempdir_in(shared)
    } else {
        tempfile::tempdir()
    };
    let folder = folder.unwrap();
    let (archive, lines) = small(folder.path());
    let mut dice = Dice(0x6261_7977_616c_6b21);
    let (mut plain, mut sealed) = (Tally::default(), Tally::default());
    let path = folder.path().join("mutated.zip");
    let mut file = std::fs::File::create(&path).unwrap();
    for n in 0..count {
        let mut bytes = mutated(&archive, &mut dice);
        let again = n % 2 == 0 && bytes.len() > 64;
        if again {
            let body = bytes.len() - 64;
            let seal = Digest::of(&bytes[..body]).to_string();
            bytes.truncate(body);
            bytes.extend_from_slice(seal.as_bytes());
        }
        file.set_len(0).unwrap();
        file.rewind().unwrap();
        file.write_all(&bytes).unwrap();
        let begun = Instant::now();
        let refused = check(&path, None, &mut |_| Go::On).is_err();
        assert!(
            refused || again || bytes == archive,
            "taken unseen: input {n}"
        );
        let tally = if again { &mut sealed } else { &mut plain };
        tally.take(refused, begun.elapsed());
    }
    plain.tell("archive, mutated");
    sealed.tell("archive, mutated and sealed again");
    lines_of(count, &lines, &mut dice);
}

fn lines_of(count: u64, lines: &[u8], dice: &mut Dice) {
    let (mut plain, mut chained) = (Tally::default(), Tally::default());
    for n in 0..count {
        let mut bytes = mutated(lines, dice);
        let again = n % 2 == 0;
        if again {
            bytes = chained_anew(&bytes);
        }
        let begun = Instant::now();
        let refused = Lines::new(bytes.as_slice()).any(|line| line.is_err());
        assert!(
            refused || again || bytes == lines,
            "taken unseen: input {n}"
        );
        let tally = if again { &mut chained } else { &mut plain };
        tally.take(refused, begun.elapsed());
    }
    plain.tell("lines, mutated");
    chained.tell("lines, mutated and chained anew");
}

/// A backup without photos, of a rig and a few notes, and its lines.
fn small(folder: &Path) -> (Vec<u8>, Vec<u8>) {
    let mut logbook = Logbook::open(&folder.join("store"), Box::new(SystemClock::new())).unwrap();
    let layouts = rigfile::layouts();
    let empty = |layout: &&rigfile::Layout| layout.code == "starter-empty-trailer";
    let layout = layouts.iter().find(empty).unwrap();
    let id = "0190f0c4-0000-7000-8000-000000000001".parse().unwrap();
    let book = layout.book(id).map_err(|_| "unsound").unwrap();
    let rig = book.rig.id;
    logbook
        .act(rig, Act::Book(BookChange::Whole(Box::new(book))))
        .unwrap();
    for miles in ["100", "200", "300"] {
        let miles = Stated::parse(miles, DistanceUnit::Miles).unwrap();
        logbook.act(rig, Act::Odometer(miles)).unwrap();
    }
    let path = folder.join("small.zip");
    logbook
        .backup()
        .unwrap()
        .write(&path, None, &mut |_| Go::On)
        .unwrap();
    let mut lines = Vec::new();
    logbook.export(&mut lines).unwrap();
    (std::fs::read(path).unwrap(), lines)
}

/// Changes one to four places: a bit, a byte, a stretch cut out, doubled, cut off or put in.
fn mutated(bytes: &[u8], dice: &mut Dice) -> Vec<u8> {
    let mut bytes = bytes.to_vec();
    for _ in 0..=dice.below(4) {
        if bytes.is_empty() {
            break;
        }
        let at = dice.below(bytes.len());
        let to = (at + 1 + dice.below(64)).min(bytes.len());
        match dice.below(7) {
            0 => bytes[at] ^= 1 << dice.below(8),
            1 => bytes[at] = dice.below(256) as u8,
            2 => drop(bytes.drain(at..to)),
            3 => {
                let part = bytes[at..to].to_vec();
                bytes.splice(at..at, part);
            }
            4 => bytes.truncate(at),
            5 => bytes[at..to].fill([0, 0x20, 0x30, 0xff][dice.below(4)]),
            _ => {
                let other = dice.below(bytes.len());
                bytes.swap(at, other);
            }
        }
    }
    bytes
}

/// Gives each line that still has the form of an entry the digest that fits, so that the change
/// gets past the chain.
fn chained_anew(bytes: &[u8]) -> Vec<u8> {
    let mut head = Head::START;
    let mut out = Vec::new();
    for line in bytes.split_inclusive(|byte| *byte == b'\n') {
        let body = line
            .get(85..line.len().saturating_sub(2))
            .unwrap_or_default();
        if line.starts_with(br#"{"digest":""#) && !body.is_empty() {
            head = head.then(body);
            let digest = head.digest.to_string();
            out.extend_from_slice(format!(r#"{{"digest":"{digest}","entry":"#).as_bytes());
            out.extend_from_slice(body);
            out.extend_from_slice(b"}\n");
        } else if line.starts_with(br#"{"end""#) {
            let Head { seq, digest } = head;
            out.extend_from_slice(
                format!(r#"{{"end":{{"digest":"{digest}","seq":{seq}}}}}"#).as_bytes(),
            );
            out.push(b'\n');
        } else {
            out.extend_from_slice(line);
        }
    }
    out
}
