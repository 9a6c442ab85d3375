//! How long a backup takes beside its peers, in one run: `cp -r` and a sync, one file of the same
//! bytes, `sha256sum`. `cargo run --release -p baywalk-tests --example backup_bench [FOLDER]`.

#![expect(
    clippy::unwrap_used,
    clippy::print_stdout,
    reason = "an example that can't go on stops with the reason, and prints what it measured"
)]

mod store;

use baywalk_logbook::backup::{Go, Step, check};
use baywalk_logbook::{Logbook, SystemClock};
use std::fs::File;
use std::io::Write;
use std::path::Path;
use std::process::Command;
use std::time::{Duration, Instant};

const ROUNDS: usize = 9;

/// One round, each part in seconds.
#[derive(Default, Clone)]
struct Round {
    copied: f64,
    one_file: f64,
    written: f64,
    read_back: f64,
    checked: f64,
    summed: f64,
    chain: f64,
    verified: f64,
}

fn main() {
    let folder = std::env::args()
        .nth(1)
        .map_or_else(std::env::temp_dir, Into::into);
    let folder = tempfile::tempdir_in(folder).unwrap();
    let at = |name: &str| folder.path().join(name);
    store::make(&at("store"), &at("lines"));
    let logbook = Logbook::open(&at("store"), Box::new(SystemClock::new())).unwrap();
    let rounds: Vec<Round> = (0..ROUNDS)
        .map(|_| round(&logbook, folder.path()))
        .collect();
    let median = |part: fn(&Round) -> f64| {
        let mut parts: Vec<f64> = rounds.iter().map(part).collect();
        parts.sort_by(f64::total_cmp);
        parts.get(ROUNDS / 2).copied().unwrap_or_default()
    };
    let (copied, one) = (median(|r| r.copied), median(|r| r.one_file));
    let (written, back) = (median(|r| r.written), median(|r| r.read_back));
    let (checked, summed) = (median(|r| r.checked), median(|r| r.summed));
    let load = std::fs::read_to_string("/proc/loadavg").unwrap_or_default();
    println!("load of the machine: {}", load.trim());
    println!(
        "store: {} entries, {} MB",
        logbook.digest().seq,
        size(&at("store")) / 1_000_000
    );
    println!("cp -r and sync              {copied:.3} s");
    println!("one file of all, synced     {one:.3} s");
    println!("backup written and synced   {written:.3} s");
    println!("  ÷ cp -r and sync          {:.2}", written / copied);
    println!("  ÷ one file                {:.2}", written / one);
    println!("read back                   {back:.3} s");
    println!("  ÷ written                 {:.2}", back / written);
    println!("written and read back       {:.3} s", written + back);
    println!(
        "  ÷ cp -r and sync          {:.2}",
        (written + back) / copied
    );
    println!("sha256sum of the backup     {summed:.3} s");
    println!("read back ÷ sha256sum       {:.2}", back / summed);
    println!("checked to each entry       {checked:.3} s");
    println!("  ÷ sha256sum               {:.2}", checked / summed);
    println!("chain of the open logbook   {:.3} s", median(|r| r.chain));
    println!(
        "whole of it verified        {:.3} s",
        median(|r| r.verified)
    );
}

fn round(logbook: &Logbook, folder: &Path) -> Round {
    let (store, copy) = (folder.join("store"), folder.join("copy"));
    let (one, backup) = (folder.join("one"), folder.join("backup.zip"));
    let mut round = Round {
        copied: timed(|| {
            run("cp", &["-r", text(&store), text(&copy)]);
            run("sync", &["-f", text(&copy)]);
        }),
        one_file: timed(|| one_file(&store, &one)),
        ..Round::default()
    };
    std::fs::remove_dir_all(&copy).unwrap();
    std::fs::remove_file(&one).unwrap();
    let job = logbook.backup().unwrap();
    let begun = Instant::now();
    let mut turned: Option<Duration> = None;
    job.write(&backup, None, &mut |progress| {
        if progress.step == Step::Checking {
            turned.get_or_insert_with(|| begun.elapsed());
        }
        Go::On
    })
    .unwrap();
    let all = begun.elapsed();
    let turned = turned.unwrap();
    (round.written, round.read_back) = (turned.as_secs_f64(), (all - turned).as_secs_f64());
    round.summed = timed(|| run("sha256sum", &[text(&backup)]));
    round.checked = timed(|| drop(check(&backup, None, &mut |_| Go::On).unwrap()));
    round.chain = timed(|| assert!(logbook.verify_chain().unwrap().broken.is_none()));
    round.verified = timed(|| assert!(logbook.verify().unwrap().broken.is_none()));
    std::fs::remove_file(&backup).unwrap();
    round
}

fn timed(work: impl FnOnce()) -> f64 {
    let begun = Instant::now();
    work();
    begun.elapsed().as_secs_f64()
}

fn run(name: &str, args: &[&str]) {
    assert!(
        Command::new(name)
            .args(args)
            .output()
            .unwrap()
            .status
            .success()
    );
}

fn text(path: &Path) -> &str {
    path.to_str().unwrap()
}

/// Everything in a folder, one behind the other, in one file.
fn one_file(folder: &Path, to: &Path) {
    let mut out = File::create(to).unwrap();
    for path in files(folder) {
        out.write_all(&std::fs::read(path).unwrap()).unwrap();
    }
    out.sync_all().unwrap();
}

fn size(folder: &Path) -> u64 {
    files(folder)
        .iter()
        .map(|path| path.metadata().unwrap().len())
        .sum()
}

fn files(folder: &Path) -> Vec<std::path::PathBuf> {
    let entries = std::fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path());
    entries
        .flat_map(|path| {
            if path.is_dir() {
                files(&path)
            } else {
                vec![path]
            }
        })
        .collect()
}
