//! Killed for good, again and again, in whatever it does. `BAYWALK_LONG=1` kills 10,000 times.
//!
//! A kill can't show what a power cut loses: the system keeps what was written. It shows that every
//! act that was told is there, and that what was begun stands whole or not at all.

use super::{Shell, WREN, said};
use serde_json::Value;
use std::io::{BufRead, BufReader};
use std::process::{Child, Stdio};
use std::time::{Duration, Instant};

/// How many kills: some in each run, many in the long one.
fn kills(short: usize, long: usize) -> usize {
    match std::env::var_os("BAYWALK_LONG") {
        Some(_) => long,
        None => short,
    }
}

/// Lets it run for some microseconds, then kills it; gives the number of the last entry that it told.
fn kill(mut child: Child, micros: u64) -> u64 {
    let printed = BufReader::new(child.stdout.take().unwrap());
    let reads = std::thread::spawn(move || {
        let lines = printed.split(b'\n').map_while(Result::ok);
        let told = lines.filter_map(|line| serde_json::from_slice::<Value>(&line).ok());
        told.filter_map(|told| told["seq"].as_u64())
            .last()
            .unwrap_or(0)
    });
    std::thread::sleep(Duration::from_micros(micros));
    child.kill().unwrap();
    child.wait().unwrap();
    reads.join().unwrap()
}

/// The longest that a walk runs before it is killed, in microseconds: a part of what a whole one takes
/// here and now, so that a slow machine tells acts too.
fn longest() -> u64 {
    let shell = Shell::new();
    let script = shell.write("wren.jsonl", WREN);
    let begun = Instant::now();
    assert!(shell.replay(&script).status.success());
    let whole = u64::try_from(begun.elapsed().as_micros()).unwrap();
    (whole / 8).max(90_000)
}

#[test]
fn every_act_that_was_told_before_a_kill_is_there() {
    let mut rng = fastrand::Rng::with_seed(7);
    let (mut killed, mut told_in_all) = (0, 0);
    let kills = kills(150, 9_000);
    let longest = longest();
    while killed < kills {
        let shell = Shell::new();
        let script = shell.write("wren.jsonl", WREN);
        let walk = ["--json", "walk", "--script", script.to_str().unwrap()];
        let mut told = 0;
        while killed < kills {
            let child = shell
                .command(&walk)
                .stdout(Stdio::piped())
                .stderr(Stdio::null())
                .spawn()
                .unwrap();
            told = kill(child, rng.u64(2_000..longest)).max(told);
            killed += 1;
            if told == 0 && !shell.store().join("baywalk.db").exists() {
                continue;
            }
            let there = shell.head().0;
            assert!(there >= told, "{told} told, {there} there, kill {killed}");
            if there > 650 {
                told_in_all += told;
                break;
            }
        }
        told_in_all += told;
    }
    assert!(
        told_in_all > 0,
        "no act was told before a kill: the run is void"
    );
}

#[test]
fn a_backup_that_is_killed_leaves_none_or_a_whole_one() {
    let mut rng = fastrand::Rng::with_seed(8);
    let shell = Shell::new();
    let script = shell.write("wren.jsonl", WREN);
    assert!(shell.replay(&script).status.success());
    let to = shell.path("wren.zip");
    let (mut whole, mut none) = (0, 0);
    for _ in 0..kills(20, 500) {
        let child = shell
            .command(&["backup", to.to_str().unwrap()])
            .stdout(Stdio::piped())
            .spawn()
            .unwrap();
        kill(child, rng.u64(500..60_000));
        if to.exists() {
            let look = shell.run(&["restore", to.to_str().unwrap(), "--look"]);
            assert!(look.status.success(), "{}", said(&look));
            std::fs::remove_file(&to).unwrap();
            whole += 1;
        } else {
            none += 1;
        }
    }
    assert!(shell.head().0 > 600);
    assert!(whole + none > 0 && none > 0, "{whole} whole, {none} none");
}

#[test]
fn a_photo_that_is_killed_on_its_way_is_entered_whole_or_not_at_all() {
    let mut rng = fastrand::Rng::with_seed(9);
    let shell = Shell::new();
    let opening: Vec<&str> = WREN.lines().take(24).collect();
    let script = shell.write("part.jsonl", &(opening.join("\n") + "\n"));
    assert!(shell.replay(&script).status.success());
    let file = shell.path("bay.png");
    std::fs::write(&file, super::photos::PIXEL).unwrap();
    for _ in 0..kills(20, 500) {
        let child = shell
            .command(&["photo", "add", "F", file.to_str().unwrap()])
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .unwrap();
        kill(child, rng.u64(500..40_000));
        let verified: Value = serde_json::from_str(&shell.ok(&["verify", "--json"])).unwrap();
        assert_eq!(verified["whole"], true);
        assert_eq!(verified["photos"]["missing"], 0, "{verified}");
    }
}

#[test]
fn a_recovery_that_is_killed_can_be_done_again() {
    let mut rng = fastrand::Rng::with_seed(10);
    for _ in 0..kills(4, 100) {
        let shell = Shell::new();
        let opening: Vec<&str> = WREN.lines().take(300).collect();
        let script = shell.write("part.jsonl", &(opening.join("\n") + "\n"));
        assert!(shell.replay(&script).status.success());
        let (head, backup) = (shell.head(), shell.path("part.zip"));
        shell.ok(&["backup", backup.to_str().unwrap()]);
        super::kept_safe::spoil(&shell);
        let recover = ["recover", "--backup", backup.to_str().unwrap()];
        let child = shell
            .command(&recover)
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .unwrap();
        kill(child, rng.u64(500..80_000));
        if !shell.run(&["verify"]).status.success() {
            shell.ok(&recover);
        }
        assert!(shell.head().0 >= head.0);
    }
}
